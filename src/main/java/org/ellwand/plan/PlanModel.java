package org.ellwand.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.RuleText;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Population;
import org.ellwand.claim.Rule;
import org.ellwand.measurement.Stimulus;
import org.ellwand.words.Sentences;

/** The plan as its template sees it; {@code templates/README.md} documents it. */
public final class PlanModel {
    private final double seconds;
    private final Sentences sentences;

    private PlanModel(double seconds, Sentences sentences) {
        this.seconds = seconds;
        this.sentences = sentences;
    }

    /**
     * All that the template sees.
     *
     * @param plans one a product
     * @param seconds duration of a reading
     * @param sentences what rules and reasons are worded in
     * @return the model's keys with their values
     */
    public static Map<String, Object> of(List<Plan> plans, double seconds, Sentences sentences) {
        PlanModel model = new PlanModel(seconds, sentences);
        Map<String, Object> top = new LinkedHashMap<>();
        top.put("seconds", Text.number(seconds, 1).replaceFirst("\\.0$", ""));
        top.put("wanted", Text.percent(Outlooks.WANTED));
        top.put("most", Outlooks.MOST);
        top.put("products", plans.stream().map(model::product).toList());
        return top;
    }

    private Object product(Plan plan) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("name", plan.product().product().name());
        model.put("decided", plan.decided());
        model.put("confidence", Text.percent(plan.product().product().confidence()));
        List<Object> claims = new ArrayList<>();
        for (Outlook outlook : plan.outlooks()) {
            claims.add(claim(plan, outlook));
        }
        model.put("claims", claims);
        model.put("unsaid", plan.unsaid().stream().map(one -> unsaid(plan, one)).toList());
        model.put("sittings", sittings(plan));
        Bench bench = Bench.of(plan);
        model.put("bench", List.copyOf(bench.files().keySet()));
        model.put("panel", List.copyOf(PanelFile.files(plan).keySet()));
        model.put("programmes", new EarExposure(bench.programmes(), seconds).model());
        return model;
    }

    private static Object unsaid(Plan plan, Unsaid unsaid) {
        return Map.of(
                "condition", unsaid.condition(),
                "value", unsaid.value(),
                "values", List.copyOf(unsaid.values()),
                "claims",
                        unsaid.claims().stream()
                                .map(claim -> plan.product().claims().indexOf(claim) + 1)
                                .toList());
    }

    private Object claim(Plan plan, Outlook outlook) {
        Claim claim = outlook.audited().claim();
        Optional<Judgement> plain = outlook.audited().plain();
        Unit unit = claim.rule().map(rule -> rule.limit().unit()).orElse(Unit.NONE);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("number", plan.product().claims().indexOf(outlook.audited()) + 1);
        model.put("id", claim.id());
        model.put("words", claim.words());
        model.put("verbatim", claim.edition().mayBeQuoted());
        model.put("rule", claim.rule().map(rule -> RuleText.of(rule, sentences)).orElse(""));
        model.put("verdict", outlook.audited().verdict().word());
        model.put("reason", outlook.audited().reason(sentences).orElse(""));
        model.put("value", value(plain.map(Judgement::value).orElse(OptionalDouble.empty()), unit));
        model.put("uncertainty", size(plain.map(Judgement::standardUncertainty).orElse(OptionalDouble.empty()), unit));
        model.put("advice", outlook.advice().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        model.put("insertions", outlook.insertions());
        model.put(
                "chance",
                outlook.chance().isPresent() ? Text.percent(outlook.chance().getAsDouble()) : "");
        model.put("wouldPass", outlook.wouldPass());
        model.put("figure", size(outlook.figure(), unit));
        model.put("wearers", outlook.wearers());
        model.put("shareNeeds", shareNeeds(plan, claim));
        model.put("sessions", sessions(plan, claim));
        model.put("comparesSessions", comparesSessions(claim));
        return model;
    }

    /** The sessions that a claim names, where all of them are there: another sitting is none of them. */
    private static List<String> sessions(Plan plan, Claim claim) {
        Set<String> named = Sittings.named(claim);
        return plan.measured().containsAll(named) ? List.copyOf(named) : List.of();
    }

    private static boolean comparesSessions(Claim claim) {
        return claim.rule().stream()
                .flatMap(rule -> rule.between().stream())
                .anyMatch(between -> between.condition().equals("session"));
    }

    private static String size(OptionalDouble value, Unit unit) {
        return value.isPresent() ? Outlooks.size(value.getAsDouble(), unit) : "";
    }

    /** One decimal of a level, two of anything else. */
    private static String value(OptionalDouble value, Unit unit) {
        boolean level = unit.isLevel() || unit == Unit.DB;
        return value.isPresent() ? Text.amount(value.getAsDouble(), level ? 1 : 2, unit) : "";
    }

    /** Of a share it is known how many ears (or samples) are the least. */
    private static int shareNeeds(Plan plan, Claim claim) {
        return claim.rule().stream()
                .flatMap(rule -> Stream.concat(rule.ears().stream(), rule.units().stream()))
                .filter(Population.Share.class::isInstance)
                .mapToInt(share -> Chance.noneOutside(
                        ((Population.Share) share).percent() / 100,
                        plan.product().product().confidence()))
                .max()
                .orElse(0);
    }

    /** Sittings of the same steps stand together: each is for an ear of its own. */
    private List<Object> sittings(Plan plan) {
        Map<List<Object>, List<Sitting>> alike = new LinkedHashMap<>();
        plan.sittings()
                .forEach(sitting -> alike.computeIfAbsent(Steps.of(sitting), k -> new ArrayList<>())
                        .add(sitting));
        List<Object> models = new ArrayList<>();
        alike.forEach((steps, sittings) -> models.add(sitting(plan, steps, sittings)));
        return models;
    }

    private Object sitting(Plan plan, List<Object> steps, List<Sitting> alike) {
        Sitting sitting = alike.get(0);
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("ids", alike.stream().map(Sitting::file).toList());
        model.put("another", sitting.defaults().containsValue("another-ear"));
        model.put("like", sitting.like().map(session -> session.id()).orElse(""));
        model.put("sizes", sitting.uncertainty().isPresent() ? "declared" : "typical");
        model.put("readings", sitting.readings().size());
        model.put("minutes", Text.number(sitting.readings().size() * seconds / 60, 0));
        model.put("steps", steps);
        model.put("open", new EarExposure(openEar(sitting), seconds).model());
        model.put("openAtEveryLevel", new EarExposure(unspared(sitting), seconds).model());
        model.put("otherEar", new EarExposure(all(sitting), seconds).model());
        model.put("floor", floor(plan, sitting));
        return model;
    }

    private static List<Stimulus> openEar(Sitting sitting) {
        return sitting.readings().stream()
                .filter(PlannedReading::isOpenEar)
                .map(PlannedReading::stimulus)
                .toList();
    }

    /** What the open ear would hear, were it read under every sound that is read in place. */
    private static List<Stimulus> unspared(Sitting sitting) {
        return sitting.readings().stream()
                .filter(reading -> reading.insertion().isPresent())
                .map(PlannedReading::stimulus)
                .distinct()
                .flatMap(sound -> Stream.of(sound, sound))
                .toList();
    }

    private static List<Stimulus> all(Sitting sitting) {
        return sitting.readings().stream().map(PlannedReading::stimulus).toList();
    }

    /** The level that the largest claimed attenuation needs, by the background of the earlier sitting. */
    private static Object floor(Plan plan, Sitting sitting) {
        OptionalDouble claimed = plan.outlooks().stream()
                .filter(Outlook::isPlanned)
                .flatMap(outlook -> outlook.audited().claim().rule().stream())
                .filter(rule -> rule.quantity().equals("attenuation")
                        && rule.between().isEmpty()
                        && rule.limit().unit() == Unit.DB)
                .map(Rule::limit)
                .mapToDouble(PlanModel::claimed)
                .max();
        Optional<Stimulus> sound =
                openEar(sitting).stream().filter(one -> !one.isQuiet()).findFirst();
        OptionalDouble needed =
                claimed.isPresent() && sound.isPresent() && sitting.like().isPresent()
                        ? Floor.neededDb(sitting.like().get(), sound.get(), claimed.getAsDouble())
                        : OptionalDouble.empty();
        OptionalDouble typical = claimed.isPresent() && needed.isEmpty()
                ? OptionalDouble.of(Floor.typicalDb(claimed.getAsDouble()))
                : OptionalDouble.empty();
        return Map.of(
                "typical", typical.isPresent() ? Text.number(Math.ceil(typical.getAsDouble()), 0) : "",
                "claimed", claimed.isPresent() ? Text.amount(claimed.getAsDouble(), 0, Unit.DB) : "",
                "kind", sound.map(Stimulus::kind).orElse(""),
                "level", needed.isPresent() ? Text.number(Math.ceil(needed.getAsDouble()), 0) : "");
    }

    private static double claimed(Interval limit) {
        return limit.hasUpper() ? limit.upper() : limit.lower();
    }
}
