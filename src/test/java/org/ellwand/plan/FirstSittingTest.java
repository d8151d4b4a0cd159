package org.ellwand.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.ellwand.amount.Unit;
import org.ellwand.audit.Audit;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.Verdict;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.measurement.TypicalProbeTube;
import org.ellwand.measurement.Uncertainty;
import org.ellwand.quantity.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is planned of an invented earplug before anything was measured, and what an audit makes of it. */
class FirstSittingTest {
    private static final String OTHERS = """
              - id: loud
                edition: box
                quote: "20 dB at 90 dB."
                stated: {quantity: attenuation, setting: flood, limit: 20 dB}
                assumed: {tolerance: 4 dB, bands: 125 Hz to 8 kHz, level: 90 dB SPL, statistic: mean}
              - id: soft
                edition: box
                quote: "10 dB at little."
                stated: {quantity: attenuation, setting: flood, limit: at least 10 dB}
                assumed: {bands: 250 Hz to 4 kHz, level: 65 to 70 dB SPL, statistic: mean}
            """;

    @TempDir
    Path temp;

    private Audit audit(String claims, List<Session> sessions) throws Exception {
        Files.createDirectories(temp.resolve("claims"));
        Files.createDirectories(temp.resolve("measurements"));
        Files.writeString(
                temp.resolve("claims/skerry.yaml"),
                "product: Skerry\neditions: [{id: box, source: The box, dated: 2025}]\nclaims:\n" + claims);
        List<Product> products = new ClaimsReader(Quantities.forms(), Set.of()).readAll(temp);
        return new Auditor(new AuditOptions(10_000)).audit(products, sessions, List.of());
    }

    private Plan plan(String claims) throws Exception {
        return Plan.of(audit(claims, List.of())).get(0);
    }

    /** The sitting with a product whose output is told by the level of pink noise outside, in dB SPL both. */
    private static Session filled(Sitting sitting, ToDoubleFunction<Double> outputDb) {
        return sitting.session(new Uncertainty.Declared(TypicalProbeTube.causes(), true), (reading, band) -> {
            double outsideDb = outsideDb(reading.stimulus());
            return (reading.insertion().isPresent() ? outputDb.applyAsDouble(outsideDb) : outsideDb) - 13;
        });
    }

    private static double outsideDb(Stimulus sound) {
        return sound.levelIn(Unit.DB_SPL).orElse(15.0);
    }

    private static Judgement plain(Audit audit, int claim) {
        return audit.products().get(0).claims().get(claim).plain().orElseThrow();
    }

    /**
     * A product that lets nothing out above 80 dB SPL takes L − 80 dB off at L: the 2 dB that the claim asks for are there from 82 dB SPL on.
     * Other claims ask for 65, 70 and 90 dB SPL alone, and between 70 and 90 a straight line reaches 2 dB at 74.
     */
    @Test
    void anOnsetHasLevelsOfItsOwnWhateverOtherClaimsAskFor() throws Exception {
        String claims = OTHERS + """
                  - id: onset
                    edition: box
                    quote: "From 82 dB."
                    stated: {quantity: onset level, setting: flood, limit: 82 dB SPL}
                    assumed: {tolerance: 5 dB, bands: 250 Hz to 4 kHz, drop: 2 dB, statistic: mean, stimulus: pink noise}
                """;
        Plan plan = plan(claims);
        Sitting sitting = plan.sittings().get(0);
        assertThat(sitting.stimuli())
                .extracting(sound -> sound.levelIn(Unit.DB_SPL).orElse(0.0))
                .containsExactly(0.0, 65.0, 70.0, 72.0, 77.0, 82.0, 87.0, 90.0, 92.0);
        Audit audit = audit(claims, List.of(filled(sitting, outside -> Math.min(outside, 80))));
        assertThat(plain(audit, 2).value().orElseThrow()).isCloseTo(82, within(0.3));
        // How far from its limit it is told depends on how its curve rises, which nobody knows yet.
        assertThat(plan.outlooks().get(2).figure()).isEmpty();
        assertThat(plan.outlooks().get(2).chance()).isEmpty();
    }

    /** A range is read at its own ends, though another claim asks for a level between them. */
    @Test
    void aRangeIsReadAtItsEnds() throws Exception {
        String claims = """
                  - id: middle
                    edition: box
                    quote: "20 dB at 80 dB."
                    stated: {quantity: attenuation, setting: flood, limit: 20 dB}
                    assumed: {tolerance: 4 dB, bands: 125 Hz to 8 kHz, level: 80 dB SPL, statistic: mean}
                  - id: wide
                    edition: box
                    quote: "At any level."
                    stated: {quantity: attenuation, setting: flood, limit: at least 10 dB}
                    assumed: {bands: 250 Hz to 4 kHz, level: 70 to 95 dB SPL, statistic: mean}
                """;
        assertThat(plan(claims).sittings().get(0).stimuli())
                .extracting(sound -> sound.levelIn(Unit.DB_SPL).orElse(0.0))
                .containsExactly(0.0, 70.0, 80.0, 95.0);
    }

    /**
     * A decibel multiplies a dose, by 2^(1/3) where three double it: its error is a share. A value v is told from its limit L where ln(L / v)
     * is (1.645 + 0.842) of that share, as the audit of a filled-in sitting finds it.
     */
    @Test
    void aDoseIsToldByAShareOfItsLimit() throws Exception {
        String claims = """
                  - id: dose
                    edition: box
                    quote: "Safe all day."
                    stated: {quantity: noise dose, limit: at most 100 %}
                    assumed: {bands: 125 Hz to 8 kHz, duration: 8 h, exposure: NIOSH 98-126, level: 95 dB SPL, referred to: field,
                              setting: flood, stimulus: pink noise}
                """;
        Plan plan = plan(claims);
        double told = plan.outlooks().get(0).figure().orElseThrow();
        Judgement filled = plain(audit(claims, List.of(filled(plan.sittings().get(0), outside -> outside - 11))), 0);
        double share =
                filled.standardUncertainty().orElseThrow() / filled.value().orElseThrow();
        assertThat(told).isCloseTo(100 * (1 - Math.exp(-(1.6449 + 0.8416) * share)), within(3.0));
        assertThat(filled.value().orElseThrow()).isBetween(100 - told, 100.0);
        assertThat(filled.verdict()).isEqualTo(Verdict.MARGINAL);
    }

    /** ln(1 − 0.95) / ln(0.9) is 28.4: the smallest sample that shows nine tenths of all with none outside. */
    @Test
    void oneEarIsNotSaidToTellOfOthers() throws Exception {
        String share = """
                  - id: all
                    edition: box
                    quote: "For nearly everybody."
                    stated: {quantity: attenuation, setting: flood, limit: at least 12 dB}
                    assumed: {bands: 125 Hz to 8 kHz, level: 80 dB SPL, statistic: mean, ears: share of 90 %}
                """;
        Plan plan = plan(share);
        Outlook outlook = plan.outlooks().get(0);
        assertThat(outlook.advice()).isEqualTo(Outlook.Advice.FIRST_HEADS);
        assertThat(outlook.figure()).isEmpty();
        assertThat(Chance.noneOutside(0.9, 0.95)).isEqualTo(29);
        assertThat(plan.sittings()).hasSize(1);
        Judgement ofOne = plain(audit(share, List.of(filled(plan.sittings().get(0), outside -> outside - 40))), 0);
        assertThat(ofOne.verdict()).isEqualTo(Verdict.MARGINAL);

        Plan ofUnits = plan(share.replace("ears: share of 90 %", "units: mean"));
        assertThat(ofUnits.outlooks().get(0).advice()).isEqualTo(Outlook.Advice.FIRST_SAMPLES);
    }
}
