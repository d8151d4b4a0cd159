package org.ellwand.audit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.check.Finding;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Edition;
import org.ellwand.claim.Product;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Statistic;
import org.ellwand.input.Place;
import org.ellwand.measurement.Conditions;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;

/** An audit made by hand, with one claim of every kind; product, maker and figures are invented. */
public final class SmallAudit {
    public static final String PRIVATE_QUOTE = "Between us, flood is nearer 12 dB.";

    private static final Place PLACE = new Place("claims/skerry.yaml", 10, 5);
    private static final Edition BOX = new Edition("box-2025", "The box", "2025", Optional.empty(), Map.of(), true);
    private static final Edition LETTER =
            new Edition("letter-2026", "A letter", "2026-02", Optional.empty(), Map.of(), false);

    private SmallAudit() {}

    public static Audit audit() {
        Product product = product("Skerry Tide", List.of(passing(), failing(), untested()));
        Finding leak = new Finding(
                "leak",
                "yard-crew-01",
                "setting=flood",
                List.of(100.0, 125.0),
                Remark.of("less-than-best").with("low", 2.0).with("behind", 7.5).with("threshold", 6.0),
                Finding.Errs.HIDES_ATTENUATION,
                Finding.Consequence.BOUNDED);
        ProductAudit audited =
                new ProductAudit(product, List.of(claim(passing()), claim(failing()), claim(untested())));
        Audit.Input input = new Audit.Input("claims/skerry.yaml", "00ff");
        return new Audit(List.of(input), List.of(audited), List.of(), List.of(leak));
    }

    private static ClaimAudit claim(Claim claim) {
        return switch (claim.id()) {
            case "flood" ->
                new ClaimAudit(
                        claim,
                        Optional.of(pass()),
                        List.of(otherwise()),
                        List.of(Remark.of("differs-under").with("rules", "strict")));
            case "flood-letter" -> new ClaimAudit(claim, Optional.of(fail()), List.of(), List.of());
            default -> new ClaimAudit(claim, Optional.empty(), List.of(), List.of());
        };
    }

    private static Claim passing() {
        return claim("flood", BOX, "Flood takes 15 dB off.", Optional.empty(), Optional.of(rule("plain", 15, 21)));
    }

    private static Claim failing() {
        return claim(
                "flood-letter",
                LETTER,
                PRIVATE_QUOTE,
                Optional.of("The maker gives 12 dB."),
                Optional.of(rule("plain", Double.NEGATIVE_INFINITY, 12)));
    }

    private static Claim untested() {
        return claim("bang", BOX, "Tames any <bang> & clang.", Optional.empty(), Optional.empty());
    }

    public static Product product(String name, List<Claim> claims) {
        return new Product(
                "claims/skerry.yaml",
                name,
                Optional.of("Brackwater Instruments"),
                Optional.empty(),
                0.95,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(BOX, LETTER),
                claims);
    }

    private static Claim claim(
            String id, Edition edition, String quote, Optional<String> paraphrase, Optional<Rule> rule) {
        Optional<String> because = rule.isPresent() ? Optional.empty() : Optional.of("needs an impulse source");
        return new Claim(
                id,
                edition,
                id,
                quote,
                paraphrase,
                rule,
                because,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                PLACE);
    }

    private static Rule rule(String name, double lower, double upper) {
        return new Rule(
                name,
                "attenuation",
                Interval.of(lower, upper, Unit.DB),
                Optional.of(Statistic.MEAN),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                Map.of("quantity", "attenuation", "limit", "18 dB"),
                Map.of("tolerance", "3 dB"),
                Map.of(),
                PLACE);
    }

    private static Judgement pass() {
        CellResult cell = new CellResult(
                Conditions.of(Map.of("setting", "flood", "ear", "crew-01-left")),
                3,
                17.9,
                Bound.MEASURED,
                OptionalDouble.of(0.8),
                OptionalDouble.of(0.987),
                List.of(point(OptionalDouble.of(125)), point(OptionalDouble.of(31.5))),
                List.of(),
                List.of(),
                List.of(),
                List.of(new Contribution("insertion", "yard-crew-01/1", 0.7)));
        return judgement(rule("plain", 15, 21), Verdict.PASS, 0.987, 17.9, List.of(), List.of(cell));
    }

    private static Point point(OptionalDouble hz) {
        return new Point(
                hz,
                OptionalDouble.empty(),
                17.9,
                OptionalDouble.of(1.1),
                OptionalDouble.of(15.75),
                OptionalDouble.of(20.05),
                OptionalDouble.of(0.97),
                Bound.MEASURED);
    }

    private static Judgement fail() {
        return judgement(rule("plain", Double.NEGATIVE_INFINITY, 12), Verdict.FAIL, 0.004, 17.9, List.of(), List.of());
    }

    private static Judgement otherwise() {
        Remark reason =
                Remark.of("on-the-limit-however-many").with("insertions", 3).with("u", new Measure(0.8, "dB"));
        return judgement(rule("strict", 20, 21), Verdict.MARGINAL, 0.62, -0.0, List.of(reason), List.of());
    }

    private static Judgement judgement(
            Rule rule,
            Verdict verdict,
            double probability,
            double value,
            List<Remark> reasons,
            List<CellResult> cells) {
        return new Judgement(
                rule,
                "mean attenuation of " + rule.name(),
                verdict,
                OptionalDouble.of(probability),
                OptionalDouble.of(value),
                OptionalDouble.empty(),
                Optional.of(point(OptionalDouble.empty())),
                OptionalDouble.of(0.8),
                OptionalDouble.of(16.3),
                OptionalDouble.of(19.5),
                reasons,
                cells,
                List.of(Remark.of("ears-not-people").with("names", "crew-01-left")));
    }
}
