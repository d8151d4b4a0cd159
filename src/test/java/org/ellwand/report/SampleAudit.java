package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.audit.Audit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.ProductAudit;
import org.ellwand.audit.Verdict;
import org.ellwand.check.Finding;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Edition;
import org.ellwand.claim.Product;
import org.ellwand.claim.Reply;
import org.ellwand.claim.Rule;
import org.ellwand.claim.Sample;
import org.ellwand.claim.Statistic;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;

/** An audit made by hand with every kind of verdict and with texts that mean harm. Product and figures are invented. */
final class SampleAudit {
    static final String HOSTILE =
            "<script>alert(1)</script> | `rm` {onclick=x} [a](javascript:b) *c* \u202Ed\u0007 & \"e\"";
    static final String FORMULA = "=cmd|' /C calc'!A0";
    static final String SECRET = "Between us, flood is nearer twelve.";

    private static final Edition PAGE = new Edition(
            "web-2026-05",
            "Product page",
            "2026-05-04",
            Optional.of("sources/page.pdf"),
            Map.of("firmware", "2.1"),
            true);
    private static final Edition LETTER =
            new Edition("letter-2026", "Letter from the maker", "2026-08", Optional.empty(), Map.of(), false);
    private static final Conclusions SAID = new Conclusions();

    private SampleAudit() {}

    static Audit audit() {
        return new Audit(
                List.of(
                        new Audit.Input("claims/skerry-tide.yaml", "00ff".repeat(16)),
                        new Audit.Input("measurements/yard-crew-01.yaml", "10ef".repeat(16))),
                List.of(new ProductAudit(product("Skerry Tide"), claims())),
                SampleSessions.all(),
                List.of(bounded(), hostileFinding()));
    }

    /** Of one claim with these words. */
    static Audit quoting(String quote) {
        Audit one = audit();
        List<ClaimAudit> claims = List.of(audited("flood", PAGE, quote, SAID.pass(), List.of()));
        return new Audit(
                one.inputs(),
                List.of(new ProductAudit(product("Skerry Tide"), claims)),
                one.sessions(),
                one.findings());
    }

    /** With a second product that shares a topic with the first. */
    static Audit two() {
        Audit one = audit();
        ProductAudit second = new ProductAudit(
                product("Skerry Ebb"), List.of(audited("flood", PAGE, "Takes off 18 dB.", SAID.marginal(), List.of())));
        return new Audit(one.inputs(), List.of(one.products().get(0), second), one.sessions(), one.findings());
    }

    private static List<ClaimAudit> claims() {
        return List.of(
                audited("flood", PAGE, "Flood takes 18 dB off.", SAID.pass(), List.of(SAID.strict(), SAID.generous())),
                audited("step", PAGE, HOSTILE, SAID.marginal(), List.of()),
                audited("letter-flood", LETTER, SECRET, SAID.fail(), List.of()),
                audited("sum", PAGE, FORMULA, SAID.overall(), List.of()),
                audited("natural", PAGE, "Quiet sounds pass.", SAID.missing(), List.of()),
                audited("battery", PAGE, "30 hours.", SAID.battery(), List.of()),
                new ClaimAudit(untested(), Optional.empty(), List.of(), List.of()));
    }

    private static ClaimAudit audited(
            String id, Edition edition, String quote, Judgement plain, List<Judgement> otherwise) {
        List<Remark> notes = otherwise.isEmpty()
                ? List.of()
                : List.of(Remark.of("differs-under").with("rules", "strict (marginal)"));
        return new ClaimAudit(
                claim(id, edition, quote, Optional.of(plain.rule())), Optional.of(plain), otherwise, notes);
    }

    private static Claim untested() {
        return claim("bang", PAGE, "Stops a bang.", Optional.empty());
    }

    private static Claim claim(String id, Edition edition, String quote, Optional<Rule> rule) {
        boolean full = id.equals("flood") || id.equals("step");
        return new Claim(
                id,
                edition,
                topic(id),
                quote,
                edition.mayBeQuoted() ? Optional.empty() : Optional.of("The maker gives 12 dB for flood."),
                rule,
                rule.isPresent() ? Optional.empty() : Optional.of("needs an impulse source and a test fixture"),
                full
                        ? Optional.of("The page gives no tolerance; 3 dB is what two careful sittings differ by.")
                        : Optional.empty(),
                List.of(),
                full ? Optional.of("It felt like less.") : Optional.empty(),
                full ? Optional.of("2026-09-01") : Optional.empty(),
                full ? Optional.of(new Reply("2026-10-02", "We stand by it.\nTwice.")) : Optional.empty(),
                Optional.empty(),
                SampleRules.PLACE);
    }

    private static String topic(String id) {
        return switch (id) {
            case "step" -> FORMULA;
            case "letter-flood", "natural" -> "flood";
            default -> id;
        };
    }

    private static Product product(String name) {
        return new Product(
                "claims/skerry-tide.yaml",
                name,
                Optional.of("Brackwater Instruments"),
                Optional.of("Level-dependent earplug for boatyard crews (invented)"),
                0.95,
                List.of(new Sample("SN-0007", Optional.of("bought in a shop, 2026-04"))),
                Optional.of("Nobody paid for this."),
                Optional.of("Take the plain one."),
                Optional.of("2026-08-30"),
                Optional.of(new Reply("2026-10-03", "Thank you.")),
                List.of(PAGE, LETTER),
                List.of());
    }

    private static Finding bounded() {
        return new Finding(
                "background noise",
                "yard-crew-01",
                "setting=flood, stimulus=pink-94",
                List.of(4000.0, 8000.0),
                Remark.of("background-bounds").with("above", 4.1).with("threshold", 6.0),
                Finding.Errs.HIDES_ATTENUATION,
                Finding.Consequence.BOUNDED);
    }

    private static Finding hostileFinding() {
        return new Finding(
                "leak",
                "yard-crew-09",
                "ear=" + HOSTILE,
                List.of(),
                Remark.of("recording-clipped").with("file", HOSTILE).with("said", HOSTILE),
                Finding.Errs.EITHER,
                Finding.Consequence.NOTED);
    }

    /** What each rule came to. */
    private static final class Conclusions {
        Judgement pass() {
            return of(
                    SampleRules.attenuation("plain", Statistic.MEAN, Interval.of(15, 21, Unit.DB)),
                    "mean attenuation, flood, 125 Hz to 8 kHz, 90 to 100 dB SPL: 15 to 21 dB",
                    Verdict.PASS,
                    17.9,
                    0.52,
                    0.99234,
                    List.of(
                            SampleCells.curve("left", "pink-94", 17.9, 0.52, 0.99234),
                            SampleCells.curve("right", "pink-94", 19.6, 0.55, 0.9951)));
        }

        Judgement strict() {
            return of(
                    SampleRules.attenuation("strict", Statistic.EVERY_BAND, Interval.of(16, 20, Unit.DB)),
                    "attenuation in every band, flood: 16 to 20 dB",
                    Verdict.MARGINAL,
                    15.7,
                    1.1,
                    0.41,
                    List.of());
        }

        Judgement generous() {
            return of(
                    SampleRules.attenuation("generous", Statistic.HIGHEST, Interval.atLeast(18, Unit.DB)),
                    "highest attenuation, flood: at least 18 dB",
                    Verdict.PASS,
                    19.8,
                    0.6,
                    0.99995,
                    List.of());
        }

        Judgement marginal() {
            return of(
                    SampleRules.difference(Interval.of(6, 8, Unit.DB)),
                    "mean attenuation, flood less ebb (setting): 6 to 8 dB",
                    Verdict.MARGINAL,
                    7.9,
                    0.049,
                    0.9497,
                    List.of(SampleCells.curve("left", "pink-94", 7.9, 0.049, 0.9497)));
        }

        Judgement fail() {
            return of(
                    SampleRules.attenuation("plain", Statistic.EVERY_BAND, Interval.atMost(12, Unit.DB)),
                    "attenuation in every band, flood: at most 12 dB",
                    Verdict.FAIL,
                    17.9,
                    0.52,
                    0.00004,
                    List.of(SampleCells.curve("left", "pink-94", 17.9, 0.52, 0.00004)));
        }

        Judgement overall() {
            return of(
                    SampleRules.overall(Interval.atLeast(15, Unit.DB)),
                    "A-weighted overall attenuation, flood: at least 15 dB",
                    Verdict.FAIL,
                    -3.04,
                    0.6,
                    0.0023,
                    List.of(
                            SampleCells.number(Map.of("ear", "left", "setting", "flood"), -3.04, 0.6, 0.0023),
                            SampleCells.number(Map.of("ear", "right", "setting", "flood"), 14.97, 0.6, 0.45)));
        }

        Judgement missing() {
            Rule rule = SampleRules.gain(Interval.of(-3, 3, Unit.DB));
            return new Judgement(
                    rule,
                    "insertion gain in every band, flood: \u22123 to 3 dB",
                    Verdict.UNTESTED,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    List.of(Remark.of("no-reading")),
                    List.of(),
                    List.of());
        }

        Judgement battery() {
            return of(
                    SampleRules.battery(Interval.atLeast(30, Unit.HOUR)),
                    "figure (battery life): at least 30 h",
                    Verdict.FAIL,
                    19.2,
                    0.5,
                    0.0001,
                    List.of(SampleCells.number(Map.of("unit", "SN-0007"), 19.2, 0.5, 0.0001)));
        }

        private static Judgement of(
                Rule rule,
                String text,
                Verdict verdict,
                double value,
                double u,
                double probability,
                List<CellResult> cells) {
            Remark reason = Remark.of("on-the-limit")
                    .with("u", new Measure(u, rule.limit().unit().symbol()));
            boolean everyBand =
                    rule.statistic().filter(s -> s == Statistic.EVERY_BAND).isPresent();
            return new Judgement(
                    rule,
                    text,
                    verdict,
                    OptionalDouble.of(probability),
                    OptionalDouble.of(value),
                    OptionalDouble.of(everyBand ? 0.4 : 0),
                    Optional.of(SampleCells.point(
                            everyBand ? OptionalDouble.of(2000) : OptionalDouble.empty(), value, u, probability)),
                    OptionalDouble.of(u),
                    OptionalDouble.of(value - 1.96 * u),
                    OptionalDouble.of(value + 1.96 * u),
                    verdict == Verdict.MARGINAL ? List.of(reason) : List.of(),
                    cells,
                    List.of(Remark.of("ears-not-people").with("names", List.of("crew-01-left", "crew-02-left"))));
        }
    }
}
