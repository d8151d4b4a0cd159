package org.ellwand.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Supplier;
import org.ellwand.acoustics.Band;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Verdict;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Uncertainty;
import org.ellwand.quantity.Quantities;
import org.ellwand.quantity.SpectralQuantity;
import org.ellwand.statistics.NormalErrors;

/** Works out for the claims of a product what a firm verdict needs, with the judge's own uncertainty. */
final class Outlooks {
    /** How often a planned sitting is to decide (the usual power of a test). */
    static final double WANTED = 0.8;

    /** More insertions nobody takes in one sitting (common practice, no source). */
    static final int MOST = 20;

    /** Insertions where nothing tells how many are needed (3 to 5 are usual: common practice, no source). */
    static final int USUAL = 3;

    /** Nothing is declared of these numbers: what they scatter by is seen in repeats alone. */
    private static final Set<String> BY_REPEATS = Set.of("level drift", "gain steadiness");

    /** Numbers that a decibel multiplies, wherever they lie: an error of theirs is a share of the value. */
    private static final Set<String> MULTIPLIED = Set.of("noise dose", "permissible duration");

    private final Product product;
    private final Trials trials;
    private final Uncertainty first;
    private final List<MoreInsertions> asking = new ArrayList<>();

    /** @param first sizes for what was never measured */
    Outlooks(Product product, Trials trials, Uncertainty first) {
        this.product = product;
        this.trials = trials;
        this.first = first;
    }

    /** Claims that are to be told what is said of them from more insertions before their outlook is known. */
    List<MoreInsertions> asking() {
        return List.copyOf(asking);
    }

    /** The outlook of a claim, known once those {@link #asking} were told. */
    Supplier<Outlook> of(ClaimAudit audited) throws InputException {
        Optional<Outlook> known = known(audited);
        if (known.isPresent()) {
            return known::orElseThrow;
        }
        MoreInsertions more =
                new MoreInsertions(product, audited, audited.plain().orElseThrow());
        asking.add(more);
        return more::outlook;
    }

    /** Absent where it depends on what more insertions would make of the claim. */
    private Optional<Outlook> known(ClaimAudit audited) throws InputException {
        Optional<Rule> rule = audited.claim().rule();
        if (rule.isEmpty()) {
            return Optional.of(simple(audited, Outlook.Advice.OUT_OF_REACH));
        }
        if (!(Quantities.named(rule.get().quantity()) instanceof SpectralQuantity)) {
            return Optional.of(other(audited));
        }
        if (isTooLoud(rule.get())) {
            return Optional.of(simple(audited, Outlook.Advice.FIXTURE));
        }
        Judgement plain = audited.plain().orElseThrow();
        if (plain.verdict() == Verdict.UNTESTED) {
            return Optional.of(first(audited, rule.get()));
        }
        Optional<Outlook> others = new Others(product, trials).of(audited, rule.get(), plain);
        if (others.isPresent()) {
            return others;
        }
        return MoreInsertions.isOfSize(plain) && plain.standardUncertainty().isPresent()
                ? Optional.empty()
                : Optional.of(complete(audited));
    }

    static Outlook complete(ClaimAudit audited) {
        return new Outlook(audited, Outlook.Advice.COMPLETE, USUAL, OptionalDouble.empty(), "", OptionalDouble.empty());
    }

    private static Outlook simple(ClaimAudit audited, Outlook.Advice advice) {
        return new Outlook(audited, advice, 0, OptionalDouble.empty(), "", OptionalDouble.empty());
    }

    /** A single figure on its limit needs a better reading, not another ear; traces tell their spread by repeats. */
    private Outlook other(ClaimAudit audited) {
        Judgement plain = audited.plain().orElseThrow();
        if (BY_REPEATS.contains(plain.rule().quantity())) {
            return isTooLoud(plain.rule()) ? simple(audited, Outlook.Advice.FIXTURE) : traces(audited, plain);
        }
        if (plain.value().isEmpty()) {
            boolean loud = plain.rule().quantity().equals("harmonic distortion") && isTooLoud(plain.rule());
            return simple(audited, loud ? Outlook.Advice.FIXTURE : Outlook.Advice.OTHER);
        }
        if (plain.standardUncertainty().isEmpty()) {
            return simple(audited, Outlook.Advice.STATE);
        }
        return new Outlook(
                audited,
                Outlook.Advice.SMALLER,
                0,
                OptionalDouble.empty(),
                needs(plain).wouldPass(),
                OptionalDouble.of(needs(plain).chance().neededU(plain.value().getAsDouble())));
    }

    private static boolean isTooLoud(Rule rule) {
        return new Sounds(Map.of()).isTooLoud(rule);
    }

    /** New ones are judged by themselves, and their mean by the scatter that they show. */
    private Outlook traces(ClaimAudit audited, Judgement plain) {
        Optional<Uncertain> seen = Uncertain.seen(plain, "insertions");
        if (seen.isEmpty()
                || plain.standardUncertainty().isEmpty()
                || plain.value().isEmpty()) {
            return new Outlook(
                    audited, Outlook.Advice.TRACES, USUAL, OptionalDouble.empty(), "", OptionalDouble.empty());
        }
        Chance chance = needs(plain).chance();
        double value = plain.value().getAsDouble();
        for (int n = USUAL; n <= MOST; n++) {
            double firm = seen.get().firm(chance, value, n);
            if (firm >= WANTED) {
                return new Outlook(
                        audited,
                        Outlook.Advice.TRACES,
                        n,
                        OptionalDouble.of(firm),
                        needs(plain).wouldPass(),
                        OptionalDouble.empty());
            }
        }
        return new Outlook(
                audited,
                Outlook.Advice.SMALLER,
                0,
                OptionalDouble.empty(),
                needs(plain).wouldPass(),
                OptionalDouble.of(chance.neededU(value)));
    }

    /** Nothing was measured: the value is taken in the middle of a limit, or at a distance from its one end. */
    private Outlook first(ClaimAudit audited, Rule rule) {
        if (Others.areSpokenOf(rule)) {
            return Others.first(audited, rule);
        }
        Interval limit = Needs.limit(rule);
        Chance chance = Chance.ofOne(limit, product.confidence());
        OptionalDouble u = OptionalDouble.empty();
        for (int n = USUAL; n <= MOST; n++) {
            u = uOfFirst(audited.claim(), n);
            if (u.isEmpty() || MULTIPLIED.contains(rule.quantity()) || !limit.hasLower() || !limit.hasUpper()) {
                break;
            }
            double firm = chance.firm((limit.lower() + limit.upper()) / 2, u.getAsDouble());
            if (firm >= WANTED) {
                return new Outlook(
                        audited, Outlook.Advice.FIRST, n, OptionalDouble.of(firm), "", OptionalDouble.empty());
            }
        }
        return new Outlook(audited, Outlook.Advice.FIRST_MARGIN, USUAL, OptionalDouble.empty(), "", margin(rule, u));
    }

    /** How far from its limit a value is told. */
    private OptionalDouble margin(Rule rule, OptionalDouble u) {
        if (u.isEmpty()) {
            return u;
        }
        double margin = (NormalErrors.z(product.confidence()) + NormalErrors.z(WANTED)) * u.getAsDouble();
        if (!MULTIPLIED.contains(rule.quantity())) {
            return OptionalDouble.of(margin);
        }
        Interval limit = rule.limit();
        return OptionalDouble.of(
                limit.hasUpper() ? limit.upper() * -Math.expm1(-margin) : limit.lower() * Math.expm1(margin));
    }

    /**
     * From flat curves, which are as uncertain as others; of what decibels multiply, as a share of the value. Empty where the quantity makes
     * nothing of flat curves, and where its uncertainty is that of a slope which they do not have.
     */
    private OptionalDouble uOfFirst(Claim claim, int insertions) {
        if (claim.rule().filter(rule -> Sounds.isBetweenLevels(rule)).isPresent()) {
            return OptionalDouble.empty();
        }
        Sitting sitting = new SittingPlan(
                        product.name(), Optional.empty(), trials.measured(), List.of(new Wanted(claim, insertions)))
                .of(Wearer.unknown());
        Set<String> named = Sittings.named(claim);
        List<Session> flat = (named.isEmpty() ? Set.of(sitting.id()) : named)
                .stream()
                        .map(id -> Sitting.joined(id, List.of(sitting)).session(first, Outlooks::flatDb))
                        .toList();
        try {
            Judgement judged = Trials.from(product, claim, flat);
            if (!MULTIPLIED.contains(judged.rule().quantity())) {
                return judged.standardUncertainty();
            }
            double value = judged.value().orElse(0);
            return value > 0 && judged.standardUncertainty().isPresent()
                    ? OptionalDouble.of(judged.standardUncertainty().getAsDouble() / value)
                    : OptionalDouble.empty();
        } catch (InputException e) {
            return OptionalDouble.empty(); // The rule asks for what this sitting does not have; the audit has told.
        }
    }

    private static double flatDb(PlannedReading reading, Band band) {
        return reading.stimulus().isQuiet() ? 0 : reading.isOpenEar() ? 70 : 60;
    }

    private Needs needs(Judgement plain) {
        return new Needs(plain, product.confidence());
    }

    /** A size of two significant digits, at least one decimal. */
    static String size(double value, Unit unit) {
        int decimals = (int) Math.ceil(1 - Math.log10(Math.max(value, 1e-6)));
        return Text.amount(value, Math.max(1, Math.min(decimals, 4)), unit);
    }
}
