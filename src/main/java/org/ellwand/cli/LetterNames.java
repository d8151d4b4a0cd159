package org.ellwand.cli;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.ellwand.claim.Product;

/**
 * What the letters are called: after the claims file, in letters that every file system takes. Two files may come to the same
 * name that way (in other scripts, or with capitals); then the later ones are numbered, so that no letter replaces another.
 */
final class LetterNames {
    private final Map<String, String> byFile;

    private LetterNames(Map<String, String> byFile) {
        this.byFile = byFile;
    }

    /** @param products all of the folder, so that a letter is called the same whoever else is asked */
    static LetterNames of(List<Product> products) {
        Map<String, String> byFile = new HashMap<>();
        Set<String> taken = new HashSet<>();
        for (Product product : products) {
            String plain = plain(product.file());
            String name = plain;
            for (int number = 2; !taken.add(name); number++) {
                name = plain + "-" + number;
            }
            byFile.put(product.file(), name);
        }
        return new LetterNames(byFile);
    }

    /** The name without its ending. */
    String of(Product product) {
        String name = byFile.get(product.file());
        if (name == null) {
            throw new IllegalArgumentException(product.file() + " is not one of these");
        }
        return name;
    }

    private static String plain(String file) {
        String name = file.substring(file.lastIndexOf('/') + 1).replaceFirst("\\.ya?ml$", "");
        return "letter-" + name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.-]+", "-");
    }
}
