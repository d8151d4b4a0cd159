package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.claim.Choice;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.claim.Rule;

/**
 * Which of two settings takes more off, as the maker says: where two claims about attenuation (or insertion gain) made by one statistic
 * of single settings name limits of which both ends lie higher for one setting, or where a claim compares two settings. Where claims
 * contradict each other nothing is said.
 */
final class ClaimedOrder {
    private static final double LEAST_DB = 1;

    private final Set<Pair> said = new TreeSet<>();

    private ClaimedOrder() {}

    /** Two settings of a product. */
    record Pair(String stronger, String weaker) implements Comparable<Pair> {
        private Pair turned() {
            return new Pair(/* stronger= */ weaker, /* weaker= */ stronger);
        }

        @Override
        public int compareTo(Pair other) {
            int first = stronger.compareTo(other.stronger);
            return first != 0 ? first : weaker.compareTo(other.weaker);
        }
    }

    static List<Pair> of(Product product) {
        ClaimedOrder order = new ClaimedOrder();
        List<Rule> rules = product.claims().stream()
                .map(Claim::rule)
                .flatMap(Optional::stream)
                .filter(rule -> isOfAttenuation(rule) && rule.limit().unit() == Unit.DB)
                .toList();
        rules.forEach(order::compared);
        order.ranked(rules);
        List<Pair> agreed = new ArrayList<>(order.said);
        agreed.removeIf(pair -> order.said.contains(pair.turned()));
        return agreed;
    }

    private static boolean isOfAttenuation(Rule rule) {
        return rule.quantity().equals("attenuation") || rule.quantity().equals("insertion gain");
    }

    /** What a rule wants of the attenuation, in dB. */
    private static double[] ends(Rule rule) {
        Interval limit = rule.limit();
        return rule.quantity().equals("attenuation")
                ? new double[] {limit.lower(), limit.upper()}
                : new double[] {-limit.upper(), -limit.lower()};
    }

    private void compared(Rule rule) {
        rule.between().filter(between -> between.condition().equals("setting")).ifPresent(between -> {
            Pair pair = new Pair(between.first(), between.second());
            if (ends(rule)[0] >= LEAST_DB) {
                said.add(pair);
            } else if (ends(rule)[1] <= -LEAST_DB) {
                said.add(pair.turned());
            }
        });
    }

    private void ranked(List<Rule> rules) {
        Map<String, List<Rule>> byStatistic = new TreeMap<>();
        rules.stream()
                .filter(rule -> rule.between().isEmpty() && setting(rule).isPresent())
                .forEach(rule -> byStatistic
                        .computeIfAbsent(rule.statistic().map(Enum::name).orElse(""), k -> new ArrayList<>())
                        .add(rule));
        byStatistic.values().forEach(alike -> alike.forEach(one -> alike.forEach(other -> ranked(one, other))));
    }

    private void ranked(Rule one, Rule other) {
        String setting = setting(one).orElseThrow();
        String than = setting(other).orElseThrow();
        if (!setting.equals(than) && isHigher(ends(one)[0], ends(other)[0]) && isHigher(ends(one)[1], ends(other)[1])) {
            said.add(new Pair(setting, than));
        }
    }

    /** An end that both lack tells nothing against it; one that is lacked by one only does. */
    private static boolean isHigher(double end, double than) {
        return end == than
                ? Double.isInfinite(end)
                : Double.isFinite(end) && Double.isFinite(than) && end - than >= LEAST_DB;
    }

    private static Optional<String> setting(Rule rule) {
        return rule.where().get("setting") instanceof Choice.OneOf some
                        && some.names().size() == 1
                ? Optional.of(some.names().get(0))
                : Optional.empty();
    }
}
