package org.ellwand.quantity;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ellwand.acoustics.AttenuationTable;
import org.ellwand.acoustics.NoiseReductionRating;
import org.ellwand.acoustics.ProtectionPerformance;
import org.ellwand.acoustics.SingleNumberRating;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.claim.QuantityForm;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.statistics.Sample;

/**
 * A printed rating of a hearing protector, worked out anew: SNR, H, M, L by ISO 4869-2, NRR by 40 CFR 211.207. It takes a
 * maker's own table of means and standard deviations, or attenuations at the hearing threshold of each subject of a panel. A
 * microphone's insertion loss is another quantity and is never turned into one.
 */
public final class Rating implements Quantity {
    @Override
    public QuantityForm form() {
        return new QuantityForm(
                "rating",
                Dimension.LEVEL_DIFFERENCE,
                Map.of("of", "ratings differ", "method", "each rating has its own rule of calculation"),
                Set.of(
                        "performance",
                        "table",
                        "setting",
                        "fit",
                        "firmware",
                        "ear",
                        "side",
                        "head",
                        "unit",
                        "session",
                        "tolerance",
                        "sense"),
                "dB",
                "SNR, H, M, L by ISO 4869-2; NRR by 40 CFR 211.207: re-computed, then compared with the printed figure");
    }

    /**
     * {@return by whose rule a rating is computed}
     *
     * @param rule of a rating
     */
    public RatingMethod method(Rule rule) {
        return RatingMethod.of(rule);
    }

    /**
     * The table that a rule carries.
     *
     * @param rule of a rating, with a {@code table}
     * @return means and deviations in dB
     * @throws InputException where it does not hold the frequencies of the method, or the method needs each subject
     */
    public AttenuationTable table(Rule rule) throws InputException {
        RatingMethod method = method(rule);
        if (method == RatingMethod.ISO_2018) {
            throw new InputException(
                    rule.place(),
                    "'method: " + method.text()
                            + "' finds the rating of each subject and then their mean and deviation;"
                            + " a 'table' of means and deviations by frequency does not hold the subjects: give their"
                            + " attenuation in a session ('layout: attenuation') instead of the table, or name another"
                            + " method");
        }
        return PrintedTable.of(rule, method);
    }

    /**
     * {@return the rating in dB, not rounded, of a table that holds the frequencies of the method}
     *
     * @param rule of a rating
     * @param table mean and deviation at each frequency of the method
     */
    public double ofDb(Rule rule, AttenuationTable table) {
        if (method(rule) == RatingMethod.CFR) {
            return new NoiseReductionRating(table).ratingDb();
        }
        return formula(rule).ofDb(table.assumedProtectionDb(factor(rule)));
    }

    /**
     * {@return the rating in dB, not rounded, of at least two subjects measured at the frequencies of the method}
     *
     * @param rule of a rating
     * @param panel at least two subjects
     */
    public double ofDb(Rule rule, Panel panel) {
        Panel wanted = panel.only(method(rule).frequenciesHz());
        if (method(rule) != RatingMethod.ISO_2018) {
            return ofDb(rule, AttenuationTable.ofSubjects(wanted.attenuationsDb()));
        }
        List<Double> each =
                wanted.attenuationsDb().stream().map(formula(rule)::ofDb).toList();
        Sample sample = Sample.of(each);
        return sample.mean() - factor(rule) * sample.deviation();
    }

    private static SingleNumberRating formula(Rule rule) {
        return SingleNumberRating.valueOf(rule.of().orElseThrow());
    }

    private static double factor(Rule rule) {
        String performance = rule.method().getOrDefault("performance", "");
        try {
            return ProtectionPerformance.factor(
                    (int) Phrases.amount(performance).value());
        } catch (PhraseException e) {
            throw new IllegalStateException("the claims reader accepted '" + performance + "'", e);
        }
    }
}
