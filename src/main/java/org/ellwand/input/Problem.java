package org.ellwand.input;

/** One thing wrong with the input: where, what was found, and what is accepted there. */
public record Problem(Place place, String text) implements Comparable<Problem> {
    @Override
    public int compareTo(Problem other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return place + ": " + text;
    }
}
