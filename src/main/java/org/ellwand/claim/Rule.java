package org.ellwand.claim;

import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Interval;
import org.ellwand.input.Place;

/**
 * A claim made testable: what the sentence states and what the auditor assumed, together.
 *
 * @param name {@code plain}, or the name the auditor gave another interpretation
 * @param quantity name of the quantity, e.g. {@code attenuation}
 * @param limit where the value must lie
 * @param statistic what is made of the bands; absent where the quantity has one number only
 * @param bands over which bands; absent where the quantity has none
 * @param resolution absent: as measured
 * @param weighting frequency weighting of an overall level
 * @param where conditions the readings must meet, by name (setting, fit, firmware, ear, side, unit, session, and those
 *     that sessions declare), those of the edition included
 * @param stimulus kind of the stimulus
 * @param level absent: not restricted
 * @param referredToField output level only: each band less the open-ear gain
 * @param between compares two values of one condition; absent where nothing is compared
 * @param ratio whether {@code between} divides instead of subtracting; the limit is then a plain number
 * @param ears absent: nothing said
 * @param units how several samples count; absent: nothing said
 * @param of name of the figure or the rating
 * @param reference what a response is relative to
 * @param target what a response is compared with
 * @param method the keys that say how a single quantity is computed ({@code method}, {@code drop}, {@code within},
 *     {@code criterion}, …): their form is checked, their text kept, and the quantities that need them use it
 * @param stated the keys the sentence fixes, as written; empty for an other interpretation
 * @param assumed the keys the auditor added, as written; for an other interpretation the keys it overrides
 * @param table a maker's own printed table, as written
 * @param place where it begins in the claims file
 */
public record Rule(
        String name,
        String quantity,
        Interval limit,
        Optional<Statistic> statistic,
        Optional<BandChoice> bands,
        Optional<Resolution> resolution,
        Optional<Weighting> weighting,
        Map<String, Choice> where,
        Optional<String> stimulus,
        Optional<LevelChoice> level,
        boolean referredToField,
        Optional<Between> between,
        boolean ratio,
        Optional<Population> ears,
        Optional<Population> units,
        Optional<String> of,
        Optional<Reference> reference,
        Optional<Target> target,
        Map<String, String> method,
        Map<String, String> stated,
        Map<String, String> assumed,
        Map<String, String> table,
        Place place) {
    /** {@return this rule about each ear and each unit that was measured, where it spoke of people or products} */
    public Rule ofEach() {
        return copy(
                statistic,
                weighting,
                where,
                ears.map(some -> new Population.Each()),
                units.map(some -> new Population.Each()));
    }

    /**
     * {@return this rule about readings that meet these conditions}
     *
     * @param conditions all of them, by name
     */
    public Rule under(Map<String, Choice> conditions) {
        return copy(statistic, weighting, Map.copyOf(conditions), ears, units);
    }

    /**
     * {@return this rule with another statistic and weighting}
     *
     * @param other the statistic
     * @param weighted the weighting; empty for none
     */
    public Rule with(Statistic other, Optional<Weighting> weighted) {
        return copy(Optional.of(other), weighted, where, ears, units);
    }

    /**
     * {@return this rule with another statistic and weighting}
     *
     * @param other the statistic
     * @param weighted the weighting
     */
    public Rule with(Statistic other, Weighting weighted) {
        return with(other, Optional.of(weighted));
    }

    /** This rule, where these parts may be others. */
    private Rule copy(
            Optional<Statistic> made,
            Optional<Weighting> weighted,
            Map<String, Choice> conditions,
            Optional<Population> people,
            Optional<Population> samples) {
        return new Rule(
                name,
                quantity,
                limit,
                made,
                bands,
                resolution,
                weighted,
                conditions,
                stimulus,
                level,
                referredToField,
                between,
                ratio,
                people,
                samples,
                of,
                reference,
                target,
                method,
                stated,
                assumed,
                table,
                place);
    }
}
