package org.ellwand.sound;

import org.ellwand.acoustics.Band;

/** Sums up the energy of one band. */
final class BandMeter {
    /** Time after which nothing is left in a filter, as a multiple of one over its bandwidth. */
    private static final double RINGS_FOR = 6;

    private final Band band;
    private final int step;
    private final double rateHz;
    private final BandPass filter;
    private double energy;

    /** @param rateHz of the sound, as on the ladder's first step or twice that */
    BandMeter(Band band, double rateHz) {
        this.band = band;
        this.step = Ladder.stepFor(band.upperEdgeHz(), rateHz);
        this.rateHz = Math.scalb(Ladder.topRateHz(rateHz), -step);
        this.filter = new BandPass(band.lowerEdgeHz(), band.upperEdgeHz(), this.rateHz);
    }

    Band band() {
        return band;
    }

    int step() {
        return step;
    }

    /** How long it rings on when the sound has ended, in s. */
    double ringsS() {
        return RINGS_FOR / (band.upperEdgeHz() - band.lowerEdgeHz());
    }

    void feed(Ladder ladder) {
        energy += filter.energy(ladder.samples(step), ladder.count(step));
    }

    /** Energy so far: squares of full scale, times s. */
    double energy() {
        return energy / rateHz;
    }
}
