package org.ellwand.plan;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ellwand.amount.Interval;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Population;
import org.ellwand.claim.Product;
import org.ellwand.claim.Rule;
import org.ellwand.input.InputException;

/** How many heads or samples settle a statement about people or products. */
final class Others {
    /** More heads or samples than a panel has are not planned (20 is the larger panel of a hearing-protector standard: from memory). */
    private static final int MOST_WEARERS = 40;

    /** A panel that tells less often than this is not advised. */
    private static final double EVEN = 0.5;

    /** A statement about all that was made from one. */
    private static final Set<String> OF_ONE = Set.of(
            "one-ear", "one-ear-undeclared", "one-head", "one-head-undeclared", "one-unit", "one-unit-undeclared");

    private final Product product;
    private final Trials trials;

    Others(Product product, Trials trials) {
        this.product = product;
        this.trials = trials;
    }

    /**
     * A statement about people or products is settled by more of them: their mean is judged by the scatter that
     * they show, and of a share the factor of a normal tolerance interval tells. Where one alone was measured, a few are to show their
     * scatter first. Nothing where the rule speaks of those measured.
     */
    Optional<Outlook> of(ClaimAudit audited, Rule rule, Judgement plain) throws InputException {
        boolean heads = rule.ears().filter(Population::isBeyondTheMeasured).isPresent();
        boolean samples = rule.units().filter(Population::isBeyondTheMeasured).isPresent();
        if (!heads && !samples) {
            return Optional.empty();
        }
        Population population = (heads ? rule.ears() : rule.units()).orElseThrow();
        Outlook.Advice advice = heads ? Outlook.Advice.HEADS : Outlook.Advice.SAMPLES;
        int measured = heads ? Math.max(count("head"), 1) : Math.max(count("unit"), 1);
        if (population instanceof Population.Share share) {
            String wearer = heads ? "head" : "unit";
            return ofShare(audited.claim(), wearer, share.percent() / 100, measured)
                    .map(found -> new Outlook(
                            audited,
                            advice,
                            Outlooks.USUAL,
                            OptionalDouble.of(found.chance()),
                            "",
                            OptionalDouble.empty(),
                            found.wearers()));
        }
        Optional<Uncertain> seen = Uncertain.seen(plain, heads ? "heads" : "units");
        if (seen.isEmpty() && measured == 1 && plain.reasons().stream().anyMatch(r -> OF_ONE.contains(r.key()))) {
            return Optional.of(some(audited, advice));
        }
        if (seen.isEmpty() || plain.standardUncertainty().isEmpty()) {
            return Optional.empty();
        }
        Needs needs = new Needs(plain, product.confidence());
        double value = plain.value().orElseThrow();
        for (int n = measured + 1; n <= MOST_WEARERS; n++) {
            double firm = seen.get().firm(needs.chance(), value, n);
            if (firm >= Outlooks.WANTED) {
                return Optional.of(new Outlook(
                        audited,
                        advice,
                        Outlooks.USUAL,
                        OptionalDouble.of(firm),
                        needs.wouldPass(),
                        OptionalDouble.empty(),
                        n));
            }
        }
        return Optional.empty();
    }

    /** Whether a rule speaks of people or products beyond those that are measured. */
    static boolean areSpokenOf(Rule rule) {
        return Stream.concat(rule.ears().stream(), rule.units().stream()).anyMatch(Population::isBeyondTheMeasured);
    }

    /** Where nothing was measured: nothing is told from one, so a few are to show their scatter, and of a share as many as it needs. */
    static Outlook first(ClaimAudit audited, Rule rule) {
        boolean heads = rule.ears().filter(Population::isBeyondTheMeasured).isPresent();
        return new Outlook(
                audited,
                heads ? Outlook.Advice.FIRST_HEADS : Outlook.Advice.FIRST_SAMPLES,
                Outlooks.USUAL,
                OptionalDouble.empty(),
                "",
                OptionalDouble.empty(),
                Outlooks.USUAL);
    }

    /** One tells no scatter: the fewest by which it shows, as of insertions. */
    private static Outlook some(ClaimAudit audited, Outlook.Advice advice) {
        return new Outlook(
                audited, advice, Outlooks.USUAL, OptionalDouble.empty(), "", OptionalDouble.empty(), Outlooks.USUAL);
    }

    /** How many, and how often they tell the share. */
    private record OfShare(int wearers, double chance) {}

    /** How many tell that a share of all lies inside, if mean and scatter of those measured are the true ones. */
    private Optional<OfShare> ofShare(Claim claim, String wearer, double share, int measured) throws InputException {
        Judgement each = trials.fromMeasured(product, Alone.ofEach(claim));
        double[] values = each.cells().stream()
                .collect(Collectors.groupingBy(
                        cell -> cell.conditions().get(wearer).orElse(""),
                        TreeMap::new,
                        Collectors.averagingDouble(CellResult::value)))
                .values()
                .stream()
                .mapToDouble(d -> d)
                .toArray();
        Interval limit = each.rule().limit();
        double mean = Arrays.stream(values).average().orElse(0);
        double squares = Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum();
        if (values.length < 2 || squares == 0 || !limit.contains(mean)) {
            return Optional.empty();
        }
        double deviation = Math.sqrt(squares / (values.length - 1));
        ShareChance chance = new ShareChance(
                (mean - limit.lower()) / deviation, (limit.upper() - mean) / deviation, share, product.confidence());
        return IntStream.rangeClosed(measured + 1, MOST_WEARERS)
                .mapToObj(n -> new OfShare(n, chance.of(n)))
                .filter(found -> found.chance() >= Outlooks.WANTED
                        || (found.wearers() == MOST_WEARERS && found.chance() >= EVEN))
                .findFirst();
    }

    /** How many heads, or samples, the product was measured with. */
    private int count(String condition) {
        return Wanted.known(condition, product.name(), trials.measured()).size();
    }
}
