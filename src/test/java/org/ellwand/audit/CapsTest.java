package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.SharedBy;
import org.ellwand.quantity.Formula;
import org.ellwand.words.Remark;
import org.junit.jupiter.api.Test;

/** What is missing for a firm verdict about 30 dB that are said to be at least 10 dB. */
class CapsTest {
    private static final String RULE =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean, limit: at least 10 dB";
    private static final String DIFFERENCE = "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz, statistic: mean,"
            + " between: {setting: [flood, ebb]}, limit: at least 5 dB";

    private final Bench bench = new Bench("yard", Resolution.OCTAVE);

    private CapsTest declared(SharedBy sharedBy) {
        bench.cause(sharedBy.name(), 0.1, sharedBy, false);
        return this;
    }

    private CapsTest openEar(String which, double levelDb) {
        bench.openEar(which, levelDb);
        return this;
    }

    private CapsTest worn(String which, double levelDb) {
        bench.worn(which, levelDb);
        return this;
    }

    private CapsTest soft(String which, double levelDb) {
        bench.reading("stimulus=n62, " + which, 1000, levelDb);
        return this;
    }

    private List<String> missing(String rule) {
        Judgement judgement = Bench.judge(rule, bench.session());
        List<String> keys = judgement.reasons().stream().map(Remark::key).toList();
        assertThat(judgement.verdict()).isEqualTo(keys.isEmpty() ? Verdict.PASS : Verdict.MARGINAL);
        return keys;
    }

    @Test
    void oneOfEverythingAndNothingDeclared() {
        openEar("take=1", 80).worn("insertion=1", 50);
        assertThat(missing(RULE)).containsExactly("one-insertion", "one-open-ear-take");
    }

    @Test
    void declaredSizesServe() {
        openEar("take=1", 80).worn("insertion=1", 50).declared(SharedBy.INSERTION);
        assertThat(missing(RULE)).containsExactly("one-open-ear-take");
        declared(SharedBy.READING);
        assertThat(missing(RULE)).isEmpty();
    }

    @Test
    void repeatsServe() {
        openEar("take=1", 80).worn("insertion=1", 50).worn("insertion=2", 50.1);
        assertThat(missing(RULE)).containsExactly("one-open-ear-take");
        openEar("take=2", 80.1);
        assertThat(missing(RULE)).isEmpty();
    }

    @Test
    void anInsertionThatIsDeclaredDoesNotServeForTheReading() {
        openEar("take=1", 80).worn("insertion=1", 50).declared(SharedBy.READING);
        assertThat(missing(RULE)).containsExactly("one-insertion");
    }

    /** In one insertion both settings share it; two of them paired tell what readings scatter by. */
    @Test
    void ofTwoSettingsInsertionAndOpenEarMayCancel() {
        openEar("take=1", 80).worn("setting=flood, insertion=1", 50).worn("setting=ebb, insertion=1", 60);
        assertThat(missing(DIFFERENCE)).containsExactly("one-open-ear-take");
        worn("setting=flood, insertion=2", 50.1).worn("setting=ebb, insertion=2", 60);
        assertThat(missing(DIFFERENCE)).isEmpty();
    }

    @Test
    void insertionsOfTheirOwnDoNotCancel() {
        openEar("take=1", 80).worn("setting=flood, insertion=1", 50).worn("setting=ebb, insertion=2", 60);
        assertThat(missing(DIFFERENCE)).containsExactly("one-insertion", "one-open-ear-take");
    }

    @Test
    void oneEarTellsOfOthersWhereACauseIsDeclared() {
        String mean = RULE + ", ears: mean";
        openEar("head=a", 80)
                .worn("head=a, insertion=1", 50)
                .declared(SharedBy.INSERTION)
                .declared(SharedBy.READING);
        assertThat(missing(mean)).containsExactly("one-ear-undeclared");
        declared(SharedBy.EAR);
        assertThat(missing(mean)).isEmpty();
        assertThat(missing(RULE + ", ears: share of 90 %")).containsExactly("one-ear");
        assertThat(missing(RULE + ", ears: each")).isEmpty();
    }

    @Test
    void oneUnitTellsOfOthersWhereACauseIsDeclared() {
        String mean = RULE + ", units: mean";
        openEar("take=1", 80)
                .worn("unit=A, insertion=1", 50)
                .declared(SharedBy.INSERTION)
                .declared(SharedBy.READING);
        assertThat(missing(mean)).containsExactly("one-unit-undeclared");
        declared(SharedBy.UNIT);
        assertThat(missing(mean)).isEmpty();
        assertThat(missing(RULE + ", units: share of 90 %")).containsExactly("one-unit");
    }

    /** Units that were held against one open ear: its error is in all of them alike, and their scatter does not show it. */
    @Test
    void theOpenEarOfALotIsMissed() {
        openEar("take=1", 80)
                .worn("unit=A, insertion=1", 50)
                .worn("unit=B, insertion=1", 51)
                .worn("unit=C, insertion=1", 52);
        assertThat(missing(RULE + ", units: mean")).containsExactly("one-open-ear-take");
        openEar("take=2", 80.1);
        assertThat(missing(RULE + ", units: mean")).isEmpty();
    }

    /** Heads have open ears of their own, whose errors scatter with them. */
    @Test
    void theOpenEarsOfHeadsAreSeen() {
        for (String head : List.of("a", "b", "c", "d")) {
            openEar("head=" + head + ", ear=" + head, 80)
                    .worn("head=" + head + ", ear=" + head + ", insertion=1", 50 + (head.equals("a") ? 0.5 : 0));
        }
        assertThat(missing(RULE + ", ears: mean")).isEmpty();
    }

    /** Two heads have two open ears; so have two sides of a comparison, each held against its own. */
    @Test
    void theOpenEarsOfTwoHeadsAreSeenInADifference() {
        for (String head : List.of("a", "b")) {
            String who = "head=" + head + ", ear=" + head;
            openEar(who, 80)
                    .worn(who + ", setting=flood, insertion=1", head.equals("a") ? 50.1 : 50)
                    .worn(who + ", setting=ebb, insertion=1", 60);
        }
        assertThat(missing(DIFFERENCE + ", ears: mean")).isEmpty();
    }

    /** Each sound has its open ear, the same for all units: what it reads wrong is in all their differences. */
    @Test
    void theOpenEarsOfALotAreMissedInADifference() {
        String rule = "quantity: attenuation, bands: 1 kHz, statistic: mean, between: {level: [94 dB SPL, 62 dB SPL]},"
                + " limit: at least 5 dB, units: mean";
        openEar("take=1", 80).soft("device=open ear, take=1", 48);
        for (String unit : List.of("A", "B", "C")) {
            worn("unit=" + unit + ", insertion=1", unit.equals("A") ? 50.1 : 50)
                    .soft("device=Skerry, unit=" + unit + ", insertion=1", 28);
        }
        assertThat(missing(rule)).containsExactly("one-open-ear-take");
        openEar("take=2", 80.1).soft("device=open ear, take=2", 48.1);
        assertThat(missing(rule)).isEmpty();
    }

    /** Its gain is taken off once: the one open ear does not cancel, though quiet and sound share the insertions. */
    @Test
    void theOpenEarOfAnInputNoiseIsMissed() {
        bench.quiet("hush");
        openEar("take=1", 80);
        for (int insertion = 1; insertion <= 3; insertion++) {
            worn("insertion=" + insertion, 60 + insertion / 10.0);
            bench.reading("device=Skerry, stimulus=hush, insertion=" + insertion, 1000, 20);
        }
        String rule = "quantity: equivalent input noise, bands: 1 kHz, limit: at most 60 dB(A)";
        assertThat(missing(rule)).containsExactly("one-open-ear-take");
        openEar("take=2", 80.1);
        assertThat(missing(rule)).isEmpty();
    }

    /** Nothing tells how the sizes were found: no probability, whatever else is there. */
    @Test
    void unknownSizesTellTheSideOnly() {
        bench.unknown();
        openEar("take=1", 80).worn("insertion=1", 50);
        Judgement judgement = Bench.judge(RULE, bench.session());
        assertThat(judgement.reasons()).extracting(Remark::key).containsExactly("uncertainty-not-stated-inside");
        assertThat(judgement.probability()).isEmpty();
        assertThat(judgement.verdict()).isEqualTo(Verdict.MARGINAL);
    }

    /** Two ears of one head are one person, and called so. */
    @Test
    void twoEarsOfAHeadTellNothingOfOtherHeads() {
        openEar("head=a, ear=left", 80)
                .openEar("head=a, ear=right", 80)
                .worn("head=a, ear=left, insertion=1", 50)
                .worn("head=a, ear=right, insertion=1", 50)
                .declared(SharedBy.INSERTION)
                .declared(SharedBy.READING);
        assertThat(missing(RULE + ", ears: mean")).containsExactly("one-head-undeclared");
    }

    @Test
    void missingBandsAreNamedOnceAndInOrder() {
        Subject subject = new Subject(Conditions.of(Map.of()), List.of(), 1, new Formula.Mean(List.of()), List.of());
        Band two = Band.nearest(Resolution.OCTAVE, 2000);
        Band four = Band.nearest(Resolution.OCTAVE, 4000);
        Ready one = new Ready(subject, Resolution.OCTAVE, List.of(), List.of(four, two), Map.of());
        Ready other = new Ready(subject, Resolution.OCTAVE, List.of(), List.of(four), Map.of());
        assertThat(Caps.missing(List.of(one, other)).figures()).containsEntry("hz", List.of(2000.0, 4000.0));
    }
}
