package org.ellwand.check;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * One curve under two names. Two readings do not agree in every band to the last digit: with 0.1 dB of reading error and
 * levels kept to 0.1 dB, ten bands do so once in some hundred thousand times. It is a slip of copying, and nobody can say
 * which of the two was measured. (Ten bands: common practice, no source.) A curve of a few different levels only is a
 * number written down, not a copied curve, and is not accused. Accuses fewer than 1 in 1000 sound sessions.
 */
final class Copies implements DataCheck {
    /** So many bands that agree exactly are no chance. */
    private static final int BANDS = 10;

    @Override
    public String name() {
        return "copied readings";
    }

    @Override
    public String needs() {
        return "two readings of ten bands";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.asRead();
        Tally tally = new Tally(this, session);
        Map<Numbers, CurveReading> seen = new HashMap<>();
        List<CurveReading> curves =
                session.readings().stream().filter(Copies::isCurve).toList();
        for (CurveReading reading : curves) {
            CurveReading before = seen.putIfAbsent(new Numbers(numbers(reading)), reading);
            if (before != null) {
                add(tally, before, reading);
            }
        }
        if (curves.size() > 1) {
            tally.looked();
        }
        return tally.done();
    }

    private static boolean isCurve(CurveReading reading) {
        return reading.spectrum().bandList().size() >= BANDS && isOfMany(numbers(reading));
    }

    /** Whether there are enough different numbers among some. */
    private static boolean isOfMany(double[] numbers) {
        double[] different = new double[BANDS / 2];
        int count = 0;
        for (int i = 0; i < numbers.length && count < different.length; i++) {
            boolean known = false;
            for (int k = 0; k < count; k++) {
                known |= different[k] == numbers[i];
            }
            if (!known) {
                different[count++] = numbers[i];
            }
        }
        return count == different.length;
    }

    private static double[] numbers(CurveReading reading) {
        return Sheets.curve(reading).numbers();
    }

    /** Numbers that are looked up by their values. */
    private static final class Numbers {
        private final double[] values;
        private final int hash;

        Numbers(double[] values) {
            this.values = values;
            this.hash = Arrays.hashCode(values);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Numbers those && hash == those.hash && Arrays.equals(values, those.values);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    private static void add(Tally tally, CurveReading before, CurveReading reading) {
        int bands = reading.spectrum().bandList().size();
        tally.add(
                reading.conditions(),
                List.of(),
                Errs.EITHER,
                Consequence.UNUSABLE,
                new Measure(bands, BANDS, "bands"),
                Remark.of("copied")
                        .with("bands", bands)
                        .with("place", before.place().toString())
                        .with("threshold", BANDS));
    }
}
