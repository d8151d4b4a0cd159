package org.ellwand.demo;

/**
 * The tip. Foam fills the canal; the flange leaves a slit. That the better seal gains 10 to 20 dB below 500 Hz is common
 * practice, no source.
 */
enum Fit {
    FOAM("foam") {
        @Override
        double leakDb(Ear ear, double frequencyHz) {
            return Double.NEGATIVE_INFINITY;
        }
    },
    FLANGE("flange") {
        @Override
        double leakDb(Ear ear, double frequencyHz) {
            return new SlitLeak(ear.slitMm()).gainDb(frequencyHz);
        }
    };

    private final String label;

    Fit(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }

    abstract double leakDb(Ear ear, double frequencyHz);
}
