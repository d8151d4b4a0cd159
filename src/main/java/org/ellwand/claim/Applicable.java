package org.ellwand.claim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.amount.Interval;
import org.ellwand.amount.IntervalPhrase;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;

/**
 * Sorts out which of the given keys a rule can use. A key the claim wrote itself and cannot be used is a problem; a
 * borrowed one is left out.
 */
final class Applicable {
    private final QuantityForm form;
    private final Set<String> declaredConditions;
    private final Problems problems;
    private Given given;

    private Applicable(QuantityForm form, Given given, Set<String> declaredConditions, Problems problems) {
        this.form = form;
        this.given = given;
        this.declaredConditions = declaredConditions;
        this.problems = problems;
    }

    static Given of(QuantityForm form, Given given, Set<String> declaredConditions, Problems problems) {
        Applicable applicable = new Applicable(form, given, declaredConditions, problems);
        applicable.keepUsable();
        applicable.keepMeaningful();
        return applicable.given;
    }

    private void keepUsable() {
        for (String key : List.copyOf(given.items().keySet())) {
            if (!isUsable(key)) {
                drop(
                        key,
                        "'" + key + "' cannot be used by " + form.name() + ": it uses " + String.join(", ", usable()));
            }
        }
    }

    private boolean isUsable(String key) {
        return usable().contains(key)
                || (declaredConditions.contains(key) && form.usable().contains("setting"));
    }

    private Set<String> usable() {
        Set<String> usable = new TreeSet<>(form.usable());
        usable.addAll(form.needed().keySet());
        usable.add(RuleKey.QUANTITY.text());
        usable.add(RuleKey.LIMIT.text());
        usable.remove("table");
        return usable;
    }

    private void keepMeaningful() {
        keepComparison();
        keepWeighting();
        keepLevel();
        keepLimit();
        keepPerformance();
    }

    /** Another interpretation by a method that fixes its own performance leaves a borrowed one without a purpose. */
    private void keepPerformance() {
        boolean fixed = given.glance(RuleKey.METHOD)
                .filter(MethodReader.NRR_METHOD::equals)
                .isPresent();
        if (fixed
                && given.item(RuleKey.PERFORMANCE.text())
                        .filter(Given.Item::own)
                        .isEmpty()) {
            given = given.without(RuleKey.PERFORMANCE.text());
        }
    }

    private void keepComparison() {
        if (!given.has(RuleKey.BETWEEN)) {
            drop(RuleKey.COMPARED_BY.text(), "'compared by' needs 'between': there is nothing to compare");
        }
        compared(given)
                .filter(c -> !c.equals(RuleKey.LEVEL.text()))
                .ifPresent(condition ->
                        drop(condition, "'between' compares '" + condition + "' already: leave this key out"));
    }

    /** The condition that {@code between} compares. */
    static Optional<String> compared(Given given) {
        return given.value(RuleKey.BETWEEN)
                .flatMap(node -> Comparisons.read(node, new Problems()).map(Between::condition));
    }

    private void keepWeighting() {
        Optional<String> statistic = given.glance(RuleKey.STATISTIC);
        if (form.needed().containsKey(RuleKey.STATISTIC.text())
                && statistic.filter("overall"::equals).isEmpty()) {
            drop(RuleKey.WEIGHTING.text(), "'weighting' is for 'statistic: overall': single bands have none");
        }
    }

    private void keepLevel() {
        if (isQuiet(given)) {
            drop(RuleKey.LEVEL.text(), "'stimulus: quiet' has no level: leave 'level' out");
        }
        if (compared(given).filter(RuleKey.LEVEL.text()::equals).isPresent()) {
            drop(RuleKey.LEVEL.text(), "'between' compares 'level' already: leave this key out");
        } else if (unit(RuleKey.LEVEL).filter(unit -> unit == Unit.DB).isEmpty()) {
            drop(RuleKey.LEVEL_WEIGHTING.text(), "'level weighting' completes a level in bare dB: here is none");
        }
    }

    static boolean isQuiet(Given given) {
        return given.glance(RuleKey.STIMULUS).filter("quiet"::equals).isPresent();
    }

    private void keepLimit() {
        Optional<IntervalPhrase> limit = phrase(RuleKey.LIMIT);
        if (limit.isEmpty()) {
            return;
        }
        if (limit.get().bare().isEmpty()) {
            String why = "' says how a bare number is meant: the limit '"
                    + given.glance(RuleKey.LIMIT).orElse("") + "' is none";
            drop(RuleKey.TOLERANCE.text(), "'tolerance" + why);
            drop(RuleKey.SENSE.text(), "'sense" + why);
        }
        if (limit.get().interval().unit() != Unit.DB) {
            drop(RuleKey.LIMIT_WEIGHTING.text(), "'limit weighting' completes a limit in bare dB: here is none");
        } else if (isDifference() && !isOfSounds()) {
            drop(
                    RuleKey.LIMIT_WEIGHTING.text(),
                    "'limit weighting' completes a level in bare dB: the limit is a difference here, leave this key out");
        }
    }

    private boolean isDifference() {
        return given.has(RuleKey.BETWEEN)
                || given.glance(RuleKey.STATISTIC).filter("spread"::equals).isPresent();
    }

    /** Whether what is looked for is the level of a test sound: between two of those, dB SPL and dB(A) may differ. */
    private boolean isOfSounds() {
        return form.needed().containsKey(RuleKey.DROP.text()) || form.needed().containsKey(RuleKey.CRITERION.text());
    }

    private Optional<Unit> unit(RuleKey key) {
        return phrase(key).map(IntervalPhrase::interval).map(Interval::unit);
    }

    private Optional<IntervalPhrase> phrase(RuleKey key) {
        try {
            Optional<String> text = given.glance(key);
            return text.isPresent() ? Optional.of(Phrases.interval(text.get())) : Optional.empty();
        } catch (PhraseException e) {
            return Optional.empty(); // Told where the key is read.
        }
    }

    private void drop(String key, String problem) {
        given.item(key)
                .filter(Given.Item::own)
                .ifPresent(item -> problems.add(item.entry().keyPlace(), problem));
        given = given.without(key);
    }

    /** What the rule lacks. */
    static List<String> missing(QuantityForm form, Given given) {
        List<String> texts = new ArrayList<>();
        if (!given.has(RuleKey.LIMIT)) {
            texts.add("a rule needs 'limit': " + RuleKey.LIMIT.description());
        }
        new TreeMap<>(form.needed()).forEach((key, why) -> {
            if (given.item(key).isEmpty() && !isSpared(key, given)) {
                texts.add(form.name() + " needs '" + key + "': " + why);
            }
        });
        if (given.glance(RuleKey.STATISTIC).filter("overall"::equals).isPresent()
                && form.usable().contains(RuleKey.WEIGHTING.text())
                && !given.has(RuleKey.WEIGHTING)) {
            texts.add("'statistic: overall' needs 'weighting': a sum over bands depends on it");
        }
        return texts;
    }

    private static boolean isSpared(String key, Given given) {
        return key.equals(RuleKey.LEVEL.text())
                && (isQuiet(given) || compared(given).filter(key::equals).isPresent());
    }

    /** Notes what the rule lacks, and where the auditor may say it. */
    static void refuseMissing(QuantityForm form, Given given, Place place, Problems problems) {
        missing(form, given)
                .forEach(text -> problems.add(
                        place, text + " (under 'stated' if the sentence says it, under 'assumed' if not)"));
    }
}
