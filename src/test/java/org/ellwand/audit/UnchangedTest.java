package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What must not change a judgement, over statistics and sittings with seeds. */
class UnchangedTest {
    private static final String WHERE = "quantity: attenuation, level: 94 dB SPL, bands: 125 Hz to 8 kHz, ";
    private static final String FLOOD = WHERE + "setting: flood, ";
    private static final List<String> LINEAR = List.of(
            FLOOD + "statistic: mean, limit: at least 19 dB",
            FLOOD + "statistic: every band, limit: at least 17 dB",
            FLOOD + "statistic: median, limit: at least 19.5 dB",
            FLOOD + "statistic: slope, limit: at most 0.1 dB/octave",
            FLOOD + "statistic: spread, limit: at most 4 dB",
            FLOOD + "statistic: highest, limit: at least 21 dB",
            WHERE + "between: {setting: [flood, ebb]}, statistic: mean, limit: 8 dB ± 0.3 dB");
    private static final List<String> ENERGIES = List.of(
            FLOOD + "statistic: overall, weighting: A, limit: at least 19 dB",
            FLOOD + "resolution: octave, statistic: every band, limit: at least 18 dB");
    private static final List<Sittings> SITTINGS =
            List.of(new Sittings(true, 3, 1, 0.8, 0.6), new Sittings(false, 4, 3, 0.8, 0.6));
    private static final double ROUNDING = 1e-9;

    static Stream<Arguments> linear() {
        return cases(LINEAR);
    }

    static Stream<Arguments> all() {
        return Stream.concat(cases(LINEAR), cases(ENERGIES));
    }

    private static Stream<Arguments> cases(List<String> rules) {
        return rules.stream()
                .flatMap(rule -> SITTINGS.stream().map(s -> Arguments.of(rule, s, rule.hashCode() + " " + s)));
    }

    private static void same(Judgement one, Judgement other, double tolerance) {
        assertThat(one.verdict()).isNotEqualTo(Verdict.UNTESTED);
        assertThat(other.verdict()).isEqualTo(one.verdict());
        close(other.value(), one.value(), tolerance);
        close(other.standardUncertainty(), one.standardUncertainty(), tolerance);
        close(other.lower(), one.lower(), tolerance);
        close(other.upper(), one.upper(), tolerance);
        close(other.probability(), one.probability(), tolerance);
    }

    private static void close(OptionalDouble actual, OptionalDouble expected, double tolerance) {
        assertThat(actual.orElseThrow()).isCloseTo(expected.orElseThrow(), within(tolerance));
    }

    /** A wrong calibration of the whole session is nothing to a difference. */
    @ParameterizedTest
    @MethodSource("all")
    void raisingEveryLevel(String rule, Sittings sittings, String noise) {
        Judgement before = Bench.judge(rule, sittings.session("crew-01", noise));
        // Energies drawn far from 0 dB differ by rounding, which a quantile found by halving may show.
        same(before, Bench.judge(rule, sittings.session("crew-01", noise, 7.3, false)), 1e-6);
    }

    @ParameterizedTest
    @MethodSource("linear")
    void orderOfReadings(String rule, Sittings sittings, String noise) {
        Judgement before = Bench.judge(rule, sittings.session("crew-01", noise));
        same(before, Bench.judge(rule, sittings.session("crew-01", noise, 0, true)), ROUNDING);
    }

    @ParameterizedTest
    @MethodSource("all")
    void orderOfSessions(String rule, Sittings sittings, String noise) {
        Session first = sittings.session("crew-01", noise);
        Session second = sittings.session("crew-02", noise + " second");
        same(Bench.judge(rule, first, second), Bench.judge(rule, second, first), ROUNDING);
    }

    @ParameterizedTest
    @MethodSource("linear")
    void nameOfTheSession(String rule, Sittings sittings, String noise) {
        Judgement before = Bench.judge(rule, sittings.session("crew-01", noise));
        same(before, Bench.judge(rule, sittings.session("yard-9", noise)), ROUNDING);
    }

    /** Draws included: nothing at all may differ. */
    @ParameterizedTest
    @MethodSource("all")
    void furtherClaim(String rule, Sittings sittings, String noise) throws InputException {
        Session session = sittings.session("crew-01", noise);
        Product alone = Bench.product(rule);
        Claim further = Bench.product(ENERGIES.get(0)).claims().get(0);
        Judgement before =
                audit(alone, session).products().get(0).claims().get(0).plain().orElseThrow();
        Product more = alone.withClaims(List.of(further, alone.claims().get(0)));
        assertThat(audit(more, session).products().get(0).claims().get(1).plain())
                .contains(before);
    }

    @ParameterizedTest
    @MethodSource("all")
    void sameInputsGiveTheSameBytes(String rule, Sittings sittings, String noise) throws InputException {
        byte[] first = AuditJson.write(audit(Bench.product(rule), sittings.session("crew-01", noise)));
        byte[] second = AuditJson.write(audit(Bench.product(rule), sittings.session("crew-01", noise)));
        assertThat(second).isEqualTo(first);
    }

    private static Audit audit(Product product, Session session) throws InputException {
        return new Auditor(AuditOptions.standard()).audit(List.of(product), List.of(session), List.of());
    }
}
