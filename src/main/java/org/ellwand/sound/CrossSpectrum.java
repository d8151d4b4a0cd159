package org.ellwand.sound;

import java.io.IOException;
import org.ellwand.input.InputException;

/**
 * Spectra of a sound and of what became of it, averaged over pieces of about half a second under Hann's window that overlap
 * by half (Welch's method).
 */
final class CrossSpectrum {
    private final double rateHz;
    private final int length;
    private final double[] window;
    private final double[] reference;
    private final double[] response;
    private final double[] real;
    private final double[] imaginary;
    private int pieces;

    private CrossSpectrum(double rateHz) {
        this.rateHz = rateHz;
        this.length = Spectra.lengthFor((int) (rateHz / 2));
        this.window = Spectra.hann(length);
        this.reference = new double[length / 2];
        this.response = new double[length / 2];
        this.real = new double[length / 2];
        this.imaginary = new double[length / 2];
    }

    /** Of two parts of one sampling rate, over the shorter of them. */
    static CrossSpectrum of(RecordedPart reference, RecordedPart response) throws IOException, InputException {
        CrossSpectrum cross = new CrossSpectrum(reference.file().rateHz());
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
        for (int k = 0; k < length / 2; k++) {
            reference[k] += a[0][k] * a[0][k] + a[1][k] * a[1][k];
            response[k] += b[0][k] * b[0][k] + b[1][k] * b[1][k];
            real[k] += a[0][k] * b[0][k] + a[1][k] * b[1][k];
            imaginary[k] += a[0][k] * b[1][k] - a[1][k] * b[0][k];
        }
        pieces++;
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
        double[][] parts = new double[2][length];
        for (int k = (int) Math.ceil(200 * length / rateHz); k < 8000 * length / rateHz; k++) {
            double size = Math.hypot(real[k], imaginary[k]);
            if (size > 0) {
                parts[0][k] = real[k] / size;
                parts[1][k] = imaginary[k] / size;
            }
        }
        double[] correlation = Spectra.inverse(parts);
        int best = 0;
        for (int i = 0; i < length; i++) {
            best = Math.abs(correlation[i]) > Math.abs(correlation[best]) ? i : best;
        }
        return (best < length / 2 ? best : best - length) / rateHz;
    }

    /** Power between two frequencies: of the reference, of the response, and of that part of the response that follows the reference. */
    double[] powers(double fromHz, double toHz) {
        double[] powers = new double[3];
        int to = (int) Math.min(length / 2.0, Math.ceil(toHz * length / rateHz));
        for (int k = (int) Math.ceil(fromHz * length / rateHz); k < to; k++) {
            powers[0] += reference[k];
            powers[1] += response[k];
            if (reference[k] > 0) {
                powers[2] += (real[k] * real[k] + imaginary[k] * imaginary[k]) / reference[k];
            }
        }
        return powers;
    }
}
