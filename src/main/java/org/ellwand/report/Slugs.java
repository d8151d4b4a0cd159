package org.ellwand.report;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Hands out names for files and anchors: small letters, digits and hyphens, no name twice. */
final class Slugs {
    private final Set<String> taken = new HashSet<>();

    String of(String text) {
        String plain = plain(text);
        String name = plain;
        for (int number = 2; !taken.add(name); number++) {
            name = plain + "-" + number;
        }
        return name;
    }

    private static String plain(String text) {
        String plain =
                text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String shortened = plain.length() > 80 ? plain.substring(0, 80) : plain;
        return shortened.isEmpty() ? "x" : shortened;
    }
}
