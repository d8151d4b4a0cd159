package org.ellwand.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Point;
import org.ellwand.audit.Verdict;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Population;
import org.ellwand.claim.Product;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Uncertainty;
import org.ellwand.quantity.Quantities;
import org.ellwand.quantity.SpectralQuantity;
import org.ellwand.statistics.NormalErrors;
import org.ellwand.statistics.ToleranceFactor;
import org.ellwand.words.Remark;

/** Works out for the claims of a product what a firm verdict needs, with the judge's own uncertainty. */
final class Outlooks {
    /** How often a planned sitting is to decide (the usual power of a test). */
    static final double WANTED = 0.8;

    /** More insertions nobody takes in one sitting (common practice, no source). */
    static final int MOST = 20;

    /** Insertions where nothing tells how many are needed (3 to 5 are usual: common practice, no source). */
    static final int USUAL = 3;

    /** More heads or samples than a panel has are not planned (20 is the larger panel of a hearing-protector standard: from memory). */
    static final int MOST_WEARERS = 40;

    private static final int FEW = 4;
    private static final int TRIALS = 10_000;

    /** Reasons that a further sitting alone takes away. */
    private static final Set<String> OF_SIZE =
            Set.of("too-few-insertions", "on-the-limit", "on-the-limit-however-many", "too-wide");

    private final Product product;
    private final List<Session> sessions;
    private final Uncertainty first;

    /** @param first sizes for what was never measured */
    Outlooks(Product product, List<Session> sessions, Uncertainty first) {
        this.product = product;
        this.sessions = sessions;
        this.first = first;
    }

    Outlook of(ClaimAudit audited) throws InputException {
        Optional<Rule> rule = audited.claim().rule();
        if (rule.isEmpty()) {
            return simple(audited, Outlook.Advice.OUT_OF_REACH);
        }
        if (!(Quantities.named(rule.get().quantity()) instanceof SpectralQuantity)) {
            return other(audited);
        }
        if (new Sounds(Map.of())
                .of(rule.get()).stream().allMatch(sound -> Loudness.fieldDb(sound) > Loudness.MOST_ON_PEOPLE_DB)) {
            return simple(audited, Outlook.Advice.FIXTURE);
        }
        Judgement plain = audited.plain().orElseThrow();
        if (plain.verdict() == Verdict.UNTESTED) {
            return first(audited, rule.get());
        }
        boolean ofSize = plain.reasons().stream().map(Remark::key).allMatch(OF_SIZE::contains);
        Optional<Outlook> others = others(audited, rule.get(), plain);
        if (others.isPresent()) {
            return others.get();
        }
        return ofSize && plain.standardUncertainty().isPresent()
                ? marginal(audited, plain)
                : new Outlook(
                        audited, Outlook.Advice.COMPLETE, USUAL, OptionalDouble.empty(), "", OptionalDouble.empty());
    }

    /**
     * A statement about people or products is settled by more of them: their mean is as uncertain as their scatter over the
     * root of their number, and of a share the factor of a normal tolerance interval tells. Nothing where the rule speaks of those
     * measured, or where one alone tells no scatter.
     */
    private Optional<Outlook> others(ClaimAudit audited, Rule rule, Judgement plain) throws InputException {
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
                    .map(n ->
                            new Outlook(audited, advice, USUAL, OptionalDouble.empty(), "", OptionalDouble.empty(), n));
        }
        if (measured < 2 || plain.standardUncertainty().isEmpty()) {
            return Optional.empty();
        }
        double value = plain.value().orElseThrow();
        double u = plain.standardUncertainty().getAsDouble();
        for (int n = measured + 1; n <= MOST_WEARERS; n++) {
            double firm = chance(plain).firm(value, u * Math.sqrt((double) measured / n));
            if (firm >= WANTED) {
                return Optional.of(new Outlook(
                        audited, advice, USUAL, OptionalDouble.of(firm), wouldPass(plain), OptionalDouble.empty(), n));
            }
        }
        return Optional.empty();
    }

    /**
     * How many must be measured for a share of all to lie inside, if mean and scatter of those measured stay: k of that many
     * (one-sided; for two ends the nearer one by the two-sided factor) reaches no further than the end.
     */
    private Optional<Integer> ofShare(Claim claim, String wearer, double share, int measured) throws InputException {
        Judgement each = judged(Alone.ofEach(claim), sessions);
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
        double nearest = Math.min(
                limit.hasLower() ? mean - limit.lower() : Double.POSITIVE_INFINITY,
                limit.hasUpper() ? limit.upper() - mean : Double.POSITIVE_INFINITY);
        double reach = nearest / Math.sqrt(squares / (values.length - 1));
        boolean twoEnds = limit.hasLower() && limit.hasUpper();
        return IntStream.rangeClosed(measured + 1, MOST_WEARERS)
                .filter(n -> (twoEnds
                                ? ToleranceFactor.twoSided(n, share, product.confidence())
                                : ToleranceFactor.oneSided(n, share, product.confidence()))
                        <= reach)
                .boxed()
                .findFirst();
    }

    /** How many heads, or samples, the product was measured with. */
    private int count(String condition) {
        return Wanted.known(condition, product.name(), sessions).size();
    }

    private static Outlook simple(ClaimAudit audited, Outlook.Advice advice) {
        return new Outlook(audited, advice, 0, OptionalDouble.empty(), "", OptionalDouble.empty());
    }

    /** A single figure on its limit needs a better reading, not another ear. */
    private Outlook other(ClaimAudit audited) {
        Judgement plain = audited.plain().orElseThrow();
        if (plain.value().isEmpty()) {
            return simple(audited, Outlook.Advice.OTHER);
        }
        if (plain.standardUncertainty().isEmpty()) {
            return simple(audited, Outlook.Advice.STATE);
        }
        return new Outlook(
                audited,
                Outlook.Advice.SMALLER,
                0,
                OptionalDouble.empty(),
                wouldPass(plain),
                OptionalDouble.of(chance(plain).neededU(plain.value().getAsDouble())));
    }

    private Outlook marginal(ClaimAudit audited, Judgement plain) throws InputException {
        double value = plain.point().map(Point::value).orElse(plain.value().orElseThrow());
        Uncertain u = Uncertain.of(FEW, u(audited.claim(), FEW), MOST, u(audited.claim(), MOST));
        int firm = firm(audited.claim());
        Chance chance = firm > MOST ? chance(plain) : chance(plain).seen(value, u.of(firm));
        for (int n = firm; n <= MOST; n++) {
            if (chance.firm(value, u.of(n)) >= WANTED) {
                return new Outlook(
                        audited,
                        Outlook.Advice.INSERTIONS,
                        n,
                        OptionalDouble.of(chance.firm(value, u.of(n))),
                        wouldPass(plain),
                        OptionalDouble.empty());
            }
        }
        return new Outlook(
                audited,
                Outlook.Advice.SMALLER,
                0,
                OptionalDouble.of(chance.firm(value, u.of(MOST))),
                wouldPass(plain),
                OptionalDouble.of(chance.neededU(value)));
    }

    private double u(Claim claim, int insertions) throws InputException {
        return judged(claim, repeated(insertions)).standardUncertainty().orElseThrow();
    }

    /** How many insertions would decide, were the value to stay: with whatever else the rule asks of its points. */
    private int firm(Claim claim) throws InputException {
        int insertions = 2;
        while (insertions <= MOST && judged(claim, repeated(insertions)).verdict() == Verdict.MARGINAL) {
            insertions += 2;
        }
        return insertions;
    }

    private List<Session> repeated(int insertions) {
        return sessions.stream()
                .map(session -> Repeated.of(session, insertions))
                .toList();
    }

    private Judgement judged(Claim claim, List<Session> from) throws InputException {
        Auditor auditor = new Auditor(new AuditOptions(TRIALS));
        return auditor.audit(List.of(Alone.of(product, claim)), from, List.of())
                .products()
                .get(0)
                .claims()
                .get(0)
                .plain()
                .orElseThrow();
    }

    /** Nothing was measured: the value is taken in the middle of a limit, or at a distance from its one end. */
    private Outlook first(ClaimAudit audited, Rule rule) {
        Interval limit = limit(rule);
        Chance chance = Chance.ofOne(limit, product.confidence());
        OptionalDouble u = OptionalDouble.empty();
        for (int n = USUAL; n <= MOST; n++) {
            u = uOfFirst(audited.claim(), n);
            if (u.isEmpty() || !limit.hasLower() || !limit.hasUpper()) {
                break;
            }
            double firm = chance.firm((limit.lower() + limit.upper()) / 2, u.getAsDouble());
            if (firm >= WANTED) {
                return new Outlook(
                        audited, Outlook.Advice.FIRST, n, OptionalDouble.of(firm), "", OptionalDouble.empty());
            }
        }
        OptionalDouble margin = u.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of((NormalErrors.z(product.confidence()) + NormalErrors.z(WANTED)) * u.getAsDouble());
        return new Outlook(audited, Outlook.Advice.FIRST_MARGIN, USUAL, OptionalDouble.empty(), "", margin);
    }

    /** From flat curves, which are as uncertain as others; empty where the quantity makes nothing of them. */
    private OptionalDouble uOfFirst(Claim claim, int insertions) {
        Sitting sitting = SittingPlan.of(
                product.name(), Optional.empty(), Wearer.unknown(), sessions, List.of(new Wanted(claim, insertions)));
        Session flat = sitting.session(
                first, (reading, band) -> reading.stimulus().isQuiet() ? 0 : reading.isOpenEar() ? 70 : 60);
        try {
            return judged(claim, List.of(flat)).standardUncertainty();
        } catch (InputException e) {
            return OptionalDouble.empty(); // The rule asks for what this sitting does not have; the audit has told.
        }
    }

    /** Of a spread every pair of bands is judged, in both directions. */
    private static Interval limit(Rule rule) {
        Interval limit = rule.limit();
        boolean pairs = rule.statistic().filter(s -> s == Statistic.SPREAD).isPresent() && limit.hasUpper();
        return pairs ? Interval.of(-limit.upper(), limit.upper(), limit.unit()) : limit;
    }

    /** How many numbers a claim was judged by. */
    private static int points(Judgement plain) {
        Statistic statistic = plain.rule().statistic().orElse(Statistic.MEAN);
        int points = 0;
        for (CellResult cell : plain.cells()) {
            int bands = cell.bands().size();
            points += switch (statistic) {
                case EVERY_BAND, LOWEST, HIGHEST, MEDIAN -> bands;
                case SPREAD -> bands * (bands - 1);
                case MEAN, SLOPE, OVERALL -> 1;
            };
        }
        return Math.max(points, 1);
    }

    private Chance chance(Judgement plain) {
        return Chance.ofSeveral(limit(plain.rule()), product.confidence(), points(plain));
    }

    private String wouldPass(Judgement plain) {
        Interval limit = limit(plain.rule());
        double value = plain.point().map(Point::value).orElse(plain.value().orElseThrow());
        double u = plain.standardUncertainty().orElseThrow();
        double z = NormalErrors.z(product.confidence());
        int decimals = Math.max(1, (int) Math.ceil(-Math.log10(Math.max(u, 1e-6))));
        double step = Math.pow(10, -decimals);
        if (limit.hasLower() && limit.hasUpper()) {
            double half = chance(plain).tolerance(value, u);
            return "± " + Text.amount(Math.ceil(half / step) * step, decimals, limit.unit());
        }
        return limit.hasLower()
                ? "at least " + Text.amount(Math.floor((value - z * u) / step) * step, decimals, limit.unit())
                : "at most " + Text.amount(Math.ceil((value + z * u) / step) * step, decimals, limit.unit());
    }

    /** A size of two significant digits, at least one decimal. */
    static String size(double value, Unit unit) {
        int decimals = (int) Math.ceil(1 - Math.log10(Math.max(value, 1e-6)));
        return Text.amount(value, Math.max(1, Math.min(decimals, 4)), unit);
    }
}
