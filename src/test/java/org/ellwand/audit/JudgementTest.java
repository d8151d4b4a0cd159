package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Conditions;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;

/** What is said with a judgement, and in which order its cells are told. */
class JudgementTest {
    private static final Interval LIMIT = Interval.of(15, 21, Unit.DB);

    /** The one of the small audit: mean attenuation of 15 to 21 dB, passed at 17.9 dB. */
    private static Judgement judgement() {
        return SmallAudit.audit().products().get(0).claims().get(0).plain().orElseThrow();
    }

    private static CellResult cell(String setting, double value, OptionalDouble probability) {
        return new CellResult(
                Conditions.of(Map.of("setting", setting)),
                1,
                value,
                Bound.MEASURED,
                OptionalDouble.empty(),
                probability,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static List<String> settings(List<CellResult> cells) {
        return cells.stream()
                .map(c -> c.conditions().get("setting").orElseThrow())
                .toList();
    }

    /** 16, 20.5 and 18 dB lie 1, 0.5 and 3 dB inside; 14 and 22.5 dB lie 1 and 1.5 dB beyond. */
    @Test
    void theLeastProbableFirstAndOfEqualsTheOneNearestToAnEndOrFarthestBeyond() {
        List<CellResult> cells = List.of(
                cell("inside 1", 16, OptionalDouble.of(0.5)),
                cell("inside 0.5", 20.5, OptionalDouble.of(0.5)),
                cell("sure", 18, OptionalDouble.of(0.99)),
                cell("unknown", 30, OptionalDouble.empty()),
                cell("beyond 1", 14, OptionalDouble.of(0.5)),
                cell("beyond 1.5", 22.5, OptionalDouble.of(0.5)),
                cell("doubtful", 18, OptionalDouble.of(0.2)));
        Judgement judgement = judgement().withCells(cells);
        assertThat(judgement.cells()).isEqualTo(cells);
        assertThat(settings(judgement.leastProbable(9)))
                .containsExactly("doubtful", "beyond 1.5", "beyond 1", "inside 0.5", "inside 1", "sure", "unknown");
        assertThat(settings(judgement.leastProbable(2))).containsExactly("doubtful", "beyond 1.5");
    }

    @Test
    void whatHasNoProbabilityCountsAsSure() {
        Comparator<CellResult> order = Judgement.order(LIMIT);
        CellResult unknown = cell("unknown", 18, OptionalDouble.empty());
        assertThat(order.compare(unknown, cell("sure", 18, OptionalDouble.of(1))))
                .isZero();
        assertThat(order.compare(unknown, cell("less", 18, OptionalDouble.of(0.999))))
                .isPositive();
    }

    @Test
    void anotherVerdictKeepsTheNumbers() {
        Remark because = Remark.of("no-reading");
        Judgement other = judgement().with(Verdict.UNTESTED, because);
        assertThat(other.verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(other.reasons()).containsExactly(because);
        assertThat(other.value()).isEqualTo(judgement().value());
        assertThat(other.probability()).isEqualTo(judgement().probability());
        assertThat(other.lower()).isEqualTo(judgement().lower());
        assertThat(other.upper()).isEqualTo(judgement().upper());
        assertThat(other.cells()).isEqualTo(judgement().cells());
        assertThat(other.remarks()).isEqualTo(judgement().remarks());
    }

    @Test
    void moreRemarksStandBehindItsOwn() {
        Remark more = Remark.of("no-reading");
        Judgement noted = judgement().noted(List.of(more));
        assertThat(noted.remarks())
                .containsExactlyElementsOf(Stream.concat(judgement().remarks().stream(), Stream.of(more))
                        .toList());
        assertThat(noted.verdict()).isEqualTo(Verdict.PASS);
        assertThat(noted.notes())
                .containsExactly(
                        "speaks not of people, but of the ears measured: crew-01-left",
                        "no reading under these conditions");
        Judgement same = judgement();
        assertThat(same.noted(List.of())).isSameAs(same);
    }

    @Test
    void reasonsStandInOneLine() {
        assertThat(judgement().reason()).isEmpty();
        Judgement marginal = judgement().with(Verdict.MARGINAL, Remark.of("no-reading"));
        assertThat(marginal.reason()).contains("no reading under these conditions");
        Judgement two = new Judgement(
                marginal.rule(),
                marginal.text(),
                Verdict.MARGINAL,
                marginal.probability(),
                marginal.value(),
                marginal.correction(),
                marginal.point(),
                marginal.standardUncertainty(),
                marginal.lower(),
                marginal.upper(),
                List.of(Remark.of("no-reading"), Remark.of("one-ear")),
                List.of(),
                List.of());
        assertThat(two.reason())
                .contains("no reading under these conditions; one ear tells nothing of others: measure more");
    }

    /** The verdict of a claim is that of its plain rule; one without a rule says why in the auditor's words. */
    @Test
    void aClaimIsWhatItsPlainRuleCameTo() {
        ProductAudit product = SmallAudit.audit().products().get(0);
        assertThat(product.claims().get(0).verdict()).isEqualTo(Verdict.PASS);
        assertThat(product.claims().get(0).reason()).isEmpty();
        assertThat(product.claims().get(0).notes()).containsExactly("differs under: strict");
        assertThat(product.claims().get(2).verdict()).isEqualTo(Verdict.UNTESTED);
        assertThat(product.claims().get(2).reason()).contains("needs an impulse source");
        assertThat(product.count(Verdict.PASS)).isEqualTo(1);
        assertThat(product.count(Verdict.MARGINAL)).isZero();
        ClaimAudit marginal = new ClaimAudit(
                product.claims().get(2).claim(),
                Optional.of(judgement().with(Verdict.MARGINAL, Remark.of("no-reading"))),
                List.of(),
                List.of());
        assertThat(marginal.verdict()).isEqualTo(Verdict.MARGINAL);
        assertThat(marginal.reason()).contains("no reading under these conditions");
    }
}
