package org.ellwand.sound;

import java.io.IOException;
import org.ellwand.input.InputException;

/**
 * Spectra of a sound and of what became of it, averaged over pieces of about half a second under Hann's window that overlap
 * by half (Welch's method). Where sound and response were recorded on two clocks the delay grows along the recording: a drift, as a share of
 * the time, is taken off each piece before it is added.
 */
final class CrossSpectrum {
    private static final double LOWEST_HZ = 200;
    private static final double HIGHEST_HZ = 8000;

    private final double rateHz;
    private final double drift;
    private final int piecesAStretch;
    private final int length;
    private final double[] window;
    private final double[] reference;
    private final double[] response;
    private final double[] real;
    private final double[] imaginary;
    private final Turn turn;
    private int pieces;

    private CrossSpectrum(double rateHz, double drift, int piecesAStretch) {
        this.rateHz = rateHz;
        this.drift = drift;
        this.piecesAStretch = piecesAStretch;
        this.length = Spectra.lengthFor((int) (rateHz / 2));
        this.window = Spectra.hann(length);
        this.reference = new double[length / 2];
        this.response = new double[length / 2];
        this.real = new double[length / 2];
        this.imaginary = new double[length / 2];
        this.turn = new Turn(length / 2);
    }

    /** How the phase turns from one stretch to the next, summed over all: what the path itself turns cancels. */
    private static final class Turn {
        final double[] real;
        final double[] imaginary;
        private double[] nowReal;
        private double[] nowImaginary;
        private double[] lastReal;
        private double[] lastImaginary;
        private int stretches;

        Turn(int lines) {
            real = new double[lines];
            imaginary = new double[lines];
            nowReal = new double[lines];
            nowImaginary = new double[lines];
            lastReal = new double[lines];
            lastImaginary = new double[lines];
        }

        void add(int line, double re, double im) {
            nowReal[line] += re;
            nowImaginary[line] += im;
        }

        void endStretch() {
            for (int k = 0; k < real.length && stretches > 0; k++) {
                real[k] += lastReal[k] * nowReal[k] + lastImaginary[k] * nowImaginary[k];
                imaginary[k] += lastReal[k] * nowImaginary[k] - lastImaginary[k] * nowReal[k];
            }
            lastReal = nowReal;
            lastImaginary = nowImaginary;
            nowReal = new double[real.length];
            nowImaginary = new double[real.length];
            stretches++;
        }
    }

    /**
     * Of two parts of one sampling rate, over the shorter of them.
     *
     * @param drift by which the delay grows, in s a second
     * @param piecesAStretch so many make a stretch, from one to the next of which a further drift is looked for
     */
    static CrossSpectrum of(RecordedPart reference, RecordedPart response, double drift, int piecesAStretch)
            throws IOException, InputException {
        CrossSpectrum cross = new CrossSpectrum(reference.file().rateHz(), drift, piecesAStretch);
        int half = cross.length / 2;
        double[] x = new double[cross.length];
        double[] y = new double[cross.length];
        double[] next = new double[half];
        try (SampleReader first = reference.open();
                SampleReader second = response.open()) {
            for (int filled = 0; shift(first, x, next) && shift(second, y, next); filled++) {
                if (filled > 0) {
                    cross.add(x, y);
                }
            }
        }
        return cross;
    }

    /** Moves a piece on by half of it; false where there is no whole half left. */
    private static boolean shift(SampleReader reader, double[] piece, double[] next)
            throws IOException, InputException {
        if (reader.read(next) < next.length) {
            return false;
        }
        System.arraycopy(piece, next.length, piece, 0, next.length);
        System.arraycopy(next, 0, piece, next.length, next.length);
        return true;
    }

    private void add(double[] x, double[] y) {
        double[][] a = Spectra.forward(windowed(x), length);
        double[][] b = Spectra.forward(windowed(y), length);
        double grownS = drift * pieces * length / (2 * rateHz);
        for (int k = 0; k < length / 2; k++) {
            reference[k] += a[0][k] * a[0][k] + a[1][k] * a[1][k];
            response[k] += b[0][k] * b[0][k] + b[1][k] * b[1][k];
            double re = a[0][k] * b[0][k] + a[1][k] * b[1][k];
            double im = a[0][k] * b[1][k] - a[1][k] * b[0][k];
            double angle = 2 * Math.PI * k * rateHz / length * grownS;
            double cosine = drift == 0 ? 1 : Math.cos(angle);
            double sine = drift == 0 ? 0 : Math.sin(angle);
            double alignedRe = re * cosine - im * sine;
            double alignedIm = re * sine + im * cosine;
            real[k] += alignedRe;
            imaginary[k] += alignedIm;
            turn.add(k, alignedRe, alignedIm);
        }
        pieces++;
        if (pieces % piecesAStretch == 0) {
            turn.endStretch();
        }
    }

    private double[] windowed(double[] piece) {
        double[] product = new double[length];
        for (int i = 0; i < length; i++) {
            product[i] = piece[i] * window[i];
        }
        return product;
    }

    int pieces() {
        return pieces;
    }

    /** How far the response lags behind, in s: where the correlation is greatest, every frequency from 200 Hz to 8 kHz counted alike. */
    double delayS() {
        return delayS(real, imaginary);
    }

    private double delayS(double[] re, double[] im) {
        double[][] parts = new double[2][length];
        for (int k = lowest(); k < HIGHEST_HZ * length / rateHz; k++) {
            double size = Math.hypot(re[k], im[k]);
            if (size > 0) {
                parts[0][k] = re[k] / size;
                parts[1][k] = im[k] / size;
            }
        }
        double[] correlation = Spectra.inverse(parts);
        int best = 0;
        for (int i = 0; i < length; i++) {
            best = Math.abs(correlation[i]) > Math.abs(correlation[best]) ? i : best;
        }
        return (best < length / 2 ? best : best - length) / rateHz;
    }

    private int lowest() {
        return (int) Math.ceil(LOWEST_HZ * length / rateHz);
    }

    /**
     * By how much the delay still grows, in s a second: the delay from one stretch to the next, to the sample where the correlation of their
     * cross spectra is greatest, and from there by the slope of the phase, fitted by least squares.
     */
    double drift() {
        if (turn.stretches < 2) {
            return 0;
        }
        double coarseS = delayS(turn.real, turn.imaginary);
        double products = 0;
        double squares = 0;
        for (int k = lowest(); k < HIGHEST_HZ * length / rateHz; k++) {
            double turnsPerS = 2 * Math.PI * k * rateHz / length;
            double angle =
                    Math.IEEEremainder(Math.atan2(turn.imaginary[k], turn.real[k]) + turnsPerS * coarseS, 2 * Math.PI);
            double weight = Math.sqrt(Math.hypot(turn.real[k], turn.imaginary[k]));
            products -= weight * turnsPerS * angle;
            squares += weight * turnsPerS * turnsPerS;
        }
        double fineS = squares > 0 ? products / squares : 0;
        return 2 * (coarseS + fineS) * rateHz / ((double) piecesAStretch * length);
    }

    /**
     * What a drift within a piece leaves of the amplitude that follows: the transform of the squared window at the cycles by which the delay grows
     * from its beginning to its end, re that at none. At least a half: what drifts faster is left as it is.
     */
    private double kept(int line) {
        // Hann's window squared is 3/8 + 1/2 cos + 1/8 cos of twice the angle.
        double cycles = drift * line;
        double kept = sinc(cycles)
                + 2.0 / 3 * (sinc(cycles - 1) + sinc(cycles + 1))
                + 1.0 / 6 * (sinc(cycles - 2) + sinc(cycles + 2));
        return drift == 0 ? 1 : Math.max(0.5, kept);
    }

    private static double sinc(double x) {
        return x == 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
    }

    /** Power between two frequencies: of the reference, of the response, and of that part of the response that follows the reference. */
    double[] powers(double fromHz, double toHz) {
        double[] powers = new double[3];
        int to = (int) Math.min(length / 2.0, Math.ceil(toHz * length / rateHz));
        for (int k = (int) Math.ceil(fromHz * length / rateHz); k < to; k++) {
            powers[0] += reference[k];
            powers[1] += response[k];
            if (reference[k] > 0) {
                double kept = kept(k);
                powers[2] += (real[k] * real[k] + imaginary[k] * imaginary[k]) / (reference[k] * kept * kept);
            }
        }
        return powers;
    }
}
