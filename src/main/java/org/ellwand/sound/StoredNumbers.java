package org.ellwand.sound;

import java.util.Arrays;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Named rows of numbers as a text that reads back the same, and that is known to be whole. */
final class StoredNumbers {
    private static final String END = "end";

    private StoredNumbers() {}

    static String text(SortedMap<String, double[]> numbers) {
        StringBuilder text = new StringBuilder();
        numbers.forEach((name, row) -> text.append(name)
                .append(' ')
                .append(Arrays.stream(row).mapToObj(Double::toString).collect(Collectors.joining(" ")))
                .append('\n'));
        return text.append(END).append('\n').toString();
    }

    /** Empty where the text is not whole. */
    static Optional<SortedMap<String, double[]>> read(String text) {
        SortedMap<String, double[]> numbers = new TreeMap<>();
        for (String line : text.split("\n", -1)) {
            if (line.equals(END)) {
                return Optional.of(numbers);
            }
            String[] words = line.strip().split(" ", -1);
            try {
                numbers.put(
                        words[0],
                        Arrays.stream(words)
                                .skip(1)
                                .mapToDouble(Double::parseDouble)
                                .toArray());
            } catch (NumberFormatException e) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }
}
