package org.ellwand.input;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Holds that what a folder is made of lies in it, links followed: a folder from somebody else must not bring to print what stands
 * elsewhere on the machine. The folder itself may be reached by any link: its user named it.
 */
public final class Inside {
    private Inside() {}

    /**
     * Holds it of a file or a folder.
     *
     * @param folder what it is to lie in
     * @param relative path below it, with forward slashes
     * @param shown what messages call it
     * @throws InputException where links lead out of the folder
     * @throws IOException where it is not there
     */
    public static void check(Path folder, String relative, String shown) throws InputException, IOException {
        if (!folder.resolve(relative).toRealPath().startsWith(folder.toRealPath())) {
            throw new InputException(
                    Place.ofFile(shown),
                    "is reached through a link that leaves the folder; put the file itself here, nothing outside is read");
        }
    }
}
