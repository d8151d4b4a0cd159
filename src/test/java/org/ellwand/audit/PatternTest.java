package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Weighting;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.measurement.Subtracted;
import org.ellwand.pairing.Cell;
import org.ellwand.quantity.CellFormula;
import org.ellwand.quantity.CurvePart;
import org.ellwand.quantity.Formula;
import org.ellwand.quantity.Outcome;
import org.ellwand.quantity.ReadingIndex;
import org.junit.jupiter.api.Test;

/** Subjects whose numbers hang alike on their readings are told from those that do not; levels are invented. */
class PatternTest {
    private static final Resolution OCTAVE = Resolution.OCTAVE;
    private static final List<Band> BANDS = List.of(new Band(OCTAVE, 0), new Band(OCTAVE, 1));
    private static final String OUTPUT =
            "quantity: output level, referred to: eardrum, level: 94 dB SPL, bands: 1 kHz to 2 kHz, statistic: mean, limit: ";
    private static final String EACH = OUTPUT + "at most 85 dB SPL, units: each";
    private static final String ATTENUATION =
            "quantity: attenuation, level: 94 dB SPL, bands: 1 kHz to 2 kHz, statistic: mean, limit: at least 15 dB, units: each";

    private final ReadingIndex index = new ReadingIndex();
    private final Surroundings surroundings = new Surroundings();

    private static Bench bench() {
        return new Bench("yard", OCTAVE)
                .cause("insertion", 0.5, SharedBy.INSERTION, false)
                .cause("reading", 0.2, SharedBy.READING, true);
    }

    private static Bench worn(Bench bench, String... conditions) {
        for (String one : conditions) {
            bench.reading("device=Skerry, stimulus=n94, " + one, 1000, 60, 61);
        }
        return bench;
    }

    /** The subjects of a rule; all that a test makes count their readings and know their sessions together. */
    private List<Subject> subjects(String rule, Session... sessions) {
        List<Subject> subjects = Workings.of(rule, Outcome.MEAN, sessions).preparation().ready().stream()
                .map(Ready::subject)
                .toList();
        subjects.forEach(subject -> subject.cells().forEach(surroundings::add));
        return subjects;
    }

    private Optional<Pattern> maybe(Subject subject, Outcome outcome) {
        List<Reading> readings = new ArrayList<>();
        for (Cell cell : subject.cells()) {
            cell.insertions().forEach(i -> readings.addAll(i.takes()));
            readings.addAll(cell.openEar());
        }
        readings.forEach(index::of);
        Formula.Task task = new Formula.Task(OCTAVE, BANDS, outcome, Weighting.Z);
        return Pattern.of(
                subject, subject.formula().computation(task, index), index.positions(readings), index, surroundings);
    }

    private Pattern pattern(Subject subject) {
        return maybe(subject, Outcome.MEAN).orElseThrow();
    }

    private List<Pattern> patterns(String rule, Session... sessions) {
        return subjects(rule, sessions).stream().map(this::pattern).toList();
    }

    private static void areAlike(Pattern one, Pattern other) {
        assertThat(one).isEqualTo(other).hasSameHashCodeAs(other);
    }

    private static void areTold(Pattern one, Pattern other) {
        assertThat(one).isNotEqualTo(other);
        assertThat(other).isNotEqualTo(one);
    }

    /** Forty insertions each: more than there is room for at first. The open ear stands behind the first unit's readings. */
    @Test
    void unitsThatWereMeasuredAlikeAreAlike() {
        Bench bench = bench().reading("device=open ear, stimulus=n94", 1000, 80, 80);
        for (int i = 1; i <= 40; i++) {
            worn(bench, "unit=A, insertion=" + i, "unit=B, insertion=" + i, "unit=C, insertion=" + i);
        }
        List<Pattern> made = patterns(ATTENUATION, bench.session());
        areAlike(made.get(1), made.get(2));
        areTold(made.get(0), made.get(1));
        assertThat(made.get(0)).isNotEqualTo("a pattern");
    }

    @Test
    void anotherNumberOfInsertionsIsTold() {
        Session session = worn(bench(), "unit=A, insertion=1", "unit=B, insertion=1", "unit=B, insertion=2")
                .session();
        List<Pattern> made = patterns(EACH, session);
        areTold(made.get(0), made.get(1));
    }

    /** One insertion in two takes weighs its readings as two insertions do, but shares its error. */
    @Test
    void takesAreToldFromInsertions() {
        Session session = worn(
                        bench(),
                        "unit=A, insertion=1, take=1",
                        "unit=A, insertion=1, take=2",
                        "unit=B, insertion=1",
                        "unit=B, insertion=2",
                        "unit=C, insertion=1",
                        "unit=C, insertion=2")
                .session();
        List<Pattern> made = patterns(EACH, session);
        areTold(made.get(0), made.get(1));
        areAlike(made.get(1), made.get(2));
    }

    /** The same levels in the same list of bands, measured in another sitting. */
    @Test
    void anotherSessionIsTold() {
        Session one = worn(bench(), "unit=A, insertion=1").session();
        CurveReading first = one.readings().get(0);
        Session other = new Bench("quay", OCTAVE)
                .session()
                .withReadings(List.of(new CurveReading(
                        first.conditions().with("session", "quay").with("unit", "B"),
                        first.values(),
                        first.spectrum(),
                        first.place())));
        List<Pattern> made = patterns(EACH, one, other);
        assertThat(made).hasSize(2);
        areTold(made.get(0), made.get(1));
    }

    /** 500 Hz too: the bands that are judged stand elsewhere among those of the reading. */
    @Test
    void otherBandsAreTold() {
        Session session = worn(bench(), "unit=A, insertion=1")
                .reading("device=Skerry, stimulus=n94, unit=B, insertion=1", 500, 59, 60, 61)
                .session();
        List<Pattern> made = patterns(EACH, session);
        areTold(made.get(0), made.get(1));
    }

    private static final Session SIDES = worn(
                    bench(),
                    "setting=flood, ear=a, unit=A, insertion=1",
                    "setting=ebb, ear=a, unit=A, insertion=2",
                    "setting=slack, ear=a, unit=A, insertion=1",
                    "setting=flood, ear=b, unit=A, insertion=7",
                    "setting=flood, ear=a, unit=B, insertion=8")
            .session();

    private Pattern between(String condition, String names, String where) {
        List<Pattern> made =
                patterns(OUTPUT + "at most 3 dB, between: {" + condition + ": [" + names + "]}, " + where, SIDES);
        assertThat(made).hasSize(1);
        return made.get(0);
    }

    /** Two readings, one less the other: what they share is not theirs alone. */
    @Test
    void whatTwoReadingsShareIsTold() {
        Pattern apart = between("setting", "flood, ebb", "ear: a, unit: A");
        Pattern inOneInsertion = between("setting", "flood, slack", "ear: a, unit: A");
        Pattern inTwoEars = between("ear", "a, b", "setting: flood, unit: A");
        Pattern ofTwoUnits = between("unit", "A, B", "setting: flood, ear: a");
        List<Pattern> all = List.of(apart, inOneInsertion, inTwoEars, ofTwoUnits);
        for (Pattern one : all) {
            for (Pattern other : all) {
                assertThat(one.equals(other)).isEqualTo(one == other);
            }
        }
        areAlike(apart, between("setting", "flood, ebb", "ear: a, unit: A"));
    }

    /** Which reading is taken off which, and with what factor. */
    @Test
    void signsAndFactorsOfTheReadingsAreTold() {
        areTold(
                between("setting", "flood, ebb", "ear: a, unit: A"),
                between("setting", "ebb, flood", "ear: a, unit: A"));
        Session session = worn(bench(), "insertion=1").session();
        Subject subject = subjects(OUTPUT + "at most 85 dB SPL", session).get(0);
        areAlike(pattern(times(subject, 1)), pattern(times(subject, 1)));
        areTold(pattern(times(subject, 1)), pattern(times(subject, -1)));
        areTold(pattern(times(subject, 1)), pattern(times(subject, 0.5)));
    }

    private static Subject times(Subject subject, double factor) {
        CurvePart part = new CurvePart(1, factor, 0, 0, 0, Optional.empty(), Optional.empty());
        Formula formula = new CellFormula(subject.cells().get(0), Optional.empty(), List.of(part));
        return new Subject(subject.conditions(), subject.cells(), subject.insertions(), formula, subject.repeats());
    }

    /** Of two insertions on either side one is the same in unit A, and none in unit B. */
    @Test
    void anInsertionThatBothSidesShareIsTold() {
        Session session = worn(
                        bench(),
                        "setting=flood, unit=A, insertion=1",
                        "setting=flood, unit=A, insertion=2",
                        "setting=ebb, unit=A, insertion=2",
                        "setting=ebb, unit=A, insertion=3",
                        "setting=flood, unit=B, insertion=1",
                        "setting=flood, unit=B, insertion=2",
                        "setting=ebb, unit=B, insertion=3",
                        "setting=ebb, unit=B, insertion=4")
                .session();
        List<Pattern> made = patterns(OUTPUT + "at most 3 dB, between: {setting: [flood, ebb]}, units: each", session);
        assertThat(made).hasSize(2);
        areTold(made.get(0), made.get(1));
    }

    /** The same readings in other groups: how many, with which weight, and which of them belong to which. */
    @Test
    void otherRepeatsAreTold() {
        Session session = worn(bench(), "insertion=1", "insertion=2").session();
        Subject subject = subjects(OUTPUT + "at most 85 dB SPL", session).get(0);
        Repeats repeats = subject.repeats().get(0);
        List<Repeats.Member> members = repeats.members();
        List<Repeats.Member> turned = List.of(members.get(1), members.get(0));
        Repeats halved = new Repeats(repeats.key(), repeats.kind(), 0.5, members, repeats.other());
        List<List<Repeats>> others = List.of(
                List.of(),
                List.of(repeats, repeats),
                List.of(halved),
                List.of(Repeats.of(repeats.key(), repeats.kind(), turned)),
                List.of(Repeats.of(repeats.key(), repeats.kind(), members.subList(0, 1))));
        for (List<Repeats> other : others) {
            areTold(pattern(subject), pattern(with(subject, other)));
        }
        areAlike(
                pattern(subject), pattern(with(subject, List.of(Repeats.of("another name", repeats.kind(), members)))));
    }

    private static Subject with(Subject subject, List<Repeats> repeats) {
        return new Subject(subject.conditions(), subject.cells(), subject.insertions(), subject.formula(), repeats);
    }

    /** What a level moves, and how far: the bands of a curve, or its mean, or its slope. */
    @Test
    void otherNumbersAreTold() {
        Subject subject = subjects(
                        OUTPUT + "at most 85 dB SPL",
                        worn(bench(), "insertion=1").session())
                .get(0);
        areAlike(pattern(subject), pattern(subject));
        areTold(pattern(subject), maybe(subject, Outcome.CURVE).orElseThrow());
        areTold(pattern(subject), maybe(subject, Outcome.SLOPE).orElseThrow());
        Formula twice = new Formula.Mean(List.of(subject.formula(), subject.formula()));
        areTold(
                pattern(subject),
                pattern(new Subject(subject.conditions(), subject.cells(), 1, twice, subject.repeats())));
    }

    /** A sum of energies moves with the levels themselves. */
    @Test
    void whatIsNotLinearHasNoPattern() {
        Session session = worn(bench(), "insertion=1").session();
        assertThat(maybe(subjects(OUTPUT + "at most 85 dB SPL", session).get(0), Outcome.OVERALL))
                .isEmpty();
    }

    /** What was subtracted from a reading moves with another one, which no pattern knows. */
    @Test
    void aReadingWhoseBackgroundWasLookedAtHasNoPattern() {
        Session session = worn(bench(), "insertion=1", "insertion=2").session();
        CurveReading last = session.readings().get(1);
        Session subtracted = session.withReadings(List.of(
                session.readings().get(0),
                last.with(last.spectrum(), new Subtracted(List.of(last), Map.of(), Map.of()))));
        assertThat(maybe(subjects(OUTPUT + "at most 85 dB SPL", session).get(0), Outcome.MEAN))
                .isPresent();
        assertThat(maybe(subjects(OUTPUT + "at most 85 dB SPL", subtracted).get(0), Outcome.MEAN))
                .isEmpty();
    }

    /** Numbers of units tell patterns apart where their hashes do: most of them should. */
    @Test
    void hashesOfOtherPatternsDiffer() {
        List<Integer> hashes = IntStream.rangeClosed(1, 6)
                .mapToObj(insertions -> {
                    Bench bench = bench();
                    IntStream.rangeClosed(1, insertions).forEach(i -> worn(bench, "insertion=" + i));
                    return patterns(OUTPUT + "at most 85 dB SPL", bench.session())
                            .get(0)
                            .hashCode();
                })
                .toList();
        assertThat(hashes).doesNotHaveDuplicates();
    }
}
