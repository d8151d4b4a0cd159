package org.ellwand.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Takes out of texts what no output can carry: control characters (XML 1.0, section 2.2, forbids most of them), halves
 * of surrogate pairs, and marks that turn the direction of the text around them.
 */
final class Clean {
    private Clean() {}

    static String text(String text) {
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints().map(Clean::replaced).filter(point -> point >= 0).forEach(clean::appendCodePoint);
        return clean.toString();
    }

    /** The same maps and lists with every text cleaned. */
    static Object deep(Object value) {
        if (value instanceof String text) {
            return text(text);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(Clean::deep).toList();
        }
        return value instanceof Map<?, ?> map ? map(map) : value;
    }

    static Map<String, Object> map(Map<?, ?> map) {
        Map<String, Object> clean = new LinkedHashMap<>();
        map.forEach((name, value) -> clean.put(name.toString(), deep(value)));
        return clean;
    }

    private static int replaced(int point) {
        if (point == '\n') {
            return point;
        }
        if (point == '\t' || point == 0x85 || point == 0x2028 || point == 0x2029) {
            return ' ';
        }
        return isUnprintable(point) ? -1 : point;
    }

    private static boolean isUnprintable(int point) {
        return Character.isISOControl(point)
                || (point >= 0xD800 && point <= 0xDFFF)
                || (point >= 0x202A && point <= 0x202E)
                || (point >= 0x2066 && point <= 0x2069)
                || (point & 0xFFFE) == 0xFFFE;
    }
}
