package org.ellwand.statistics;

/** What counts as a share or a confidence where neither nothing nor all can be said. */
final class Shares {
    private Shares() {}

    static void requireProper(String what, double value) {
        if (!(value > 0 && value < 1)) {
            throw new IllegalArgumentException(what + " lies between 0 and 1, not at " + value);
        }
    }

    static void requireSample(int count) {
        if (count < 2) {
            throw new IllegalArgumentException("fewer than two values have no scatter");
        }
    }
}
