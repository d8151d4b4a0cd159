package org.ellwand.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bound;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.input.Place;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;
import org.junit.jupiter.api.Test;

/** Subjects of one layout are made ready alike: which bands serve is asked once for all of them. */
class BandLayoutTest {
    private static final Resolution OCTAVE = Resolution.OCTAVE;
    private static final List<Band> BANDS = List.of(new Band(OCTAVE, 0), new Band(OCTAVE, 1));
    private static final List<Band> OTHERS = List.of(new Band(OCTAVE, 0), new Band(OCTAVE, 2));
    private static final Session SESSION = new Bench("yard", OCTAVE).session();

    private static Reading reading(Spectrum spectrum) {
        return new CurveReading(
                Conditions.of(Map.of("session", "yard")), Reading.Values.LEVELS, spectrum, Place.ofFile("made.csv"));
    }

    private static Reading measured(List<Band> bands, double... levelsDb) {
        return reading(Spectrum.measured(OCTAVE, bands, levelsDb));
    }

    private static final Reading ONE = measured(BANDS, 60, 61);
    private static final Reading OTHER = measured(BANDS, 70, 71);
    private static final Reading ELSEWHERE = measured(OTHERS, 60, 61);
    private static final Reading BOUNDED = reading(new Spectrum(
            OCTAVE,
            Map.of(BANDS.get(0), Spectrum.Level.measured(60), BANDS.get(1), new Spectrum.Level(61, Bound.AT_MOST))));

    /** Insertions of one take each. */
    private static Cell cell(List<Reading> inPlace, List<Reading> openEar, List<Reading> field) {
        return cell(inPlace.stream().map(List::of), openEar, field);
    }

    private static Cell cell(Stream<List<Reading>> takes, List<Reading> openEar, List<Reading> field) {
        List<Insertion> insertions =
                takes.map(t -> new Insertion("1", Optional.of("1"), t)).toList();
        return new Cell(
                SESSION, Conditions.of(Map.of()), insertions, Reading.Values.LEVELS, openEar, field, 0, List.of());
    }

    private static BandLayout layout(Cell... cells) {
        return BandLayout.of(List.of(cells), OCTAVE);
    }

    private static final BandLayout PLAIN = layout(cell(List.of(ONE), List.of(ONE), List.of(ONE)));

    private static void areLike(boolean expected, BandLayout other) {
        assertThat(PLAIN.isMeasuredLike(other)).isEqualTo(expected);
        assertThat(other.isMeasuredLike(PLAIN)).isEqualTo(expected);
    }

    @Test
    void otherLevelsInTheSameBandsAreAlike() {
        areLike(true, layout(cell(List.of(OTHER), List.of(OTHER), List.of(OTHER))));
    }

    @Test
    void otherBandsOfAnyReadingAreNot() {
        areLike(false, layout(cell(List.of(ELSEWHERE), List.of(ONE), List.of(ONE))));
        areLike(false, layout(cell(List.of(ONE), List.of(ELSEWHERE), List.of(ONE))));
        areLike(false, layout(cell(List.of(ONE), List.of(ONE), List.of(ELSEWHERE))));
    }

    /** Which list it is, is what is asked: to compare what lists hold would cost more than it spares. */
    @Test
    void anotherListOfTheSameBandsCountsAsAnother() {
        Reading apart = measured(List.of(new Band(OCTAVE, 0), new Band(OCTAVE, 1)), 60, 61);
        areLike(false, layout(cell(List.of(apart), List.of(ONE), List.of(ONE))));
    }

    @Test
    void whatOnlyBoundsALevelIsAskedEachTime() {
        assertThat(PLAIN.isMeasured()).isTrue();
        List<BandLayout> bounded = List.of(
                layout(cell(List.of(BOUNDED), List.of(ONE), List.of(ONE))),
                layout(cell(List.of(ONE), List.of(BOUNDED), List.of(ONE))),
                layout(cell(List.of(ONE), List.of(ONE), List.of(BOUNDED))),
                layout(cell(List.of(BOUNDED, ONE), List.of(ONE), List.of(ONE))));
        for (BandLayout one : bounded) {
            assertThat(one.isMeasured()).isFalse();
            assertThat(one.isMeasuredLike(one)).isFalse();
            areLike(false, one);
        }
    }

    /** The same readings, shared out otherwise. */
    @Test
    void otherNumbersOfReadingsAreNotAlike() {
        BandLayout two = layout(cell(List.of(ONE, ONE), List.of(ONE), List.of(ONE)));
        BandLayout twoTakes = layout(cell(Stream.of(List.of(ONE, ONE)), List.of(ONE), List.of(ONE)));
        BandLayout openEars = layout(cell(List.of(ONE), List.of(ONE, ONE), List.of(ONE)));
        BandLayout fields = layout(cell(List.of(ONE), List.of(ONE), List.of(ONE, ONE)));
        List<BandLayout> all = List.of(PLAIN, two, twoTakes, openEars, fields);
        for (BandLayout one : all) {
            for (BandLayout other : all) {
                assertThat(one.isMeasuredLike(other)).isEqualTo(one == other);
            }
        }
        Cell cell = cell(List.of(ONE), List.of(ONE), List.of(ONE));
        areLike(false, layout(cell, cell));
    }

    @Test
    void anotherResolutionIsNotAlike() {
        Cell cell = cell(List.of(ONE), List.of(ONE), List.of(ONE));
        areLike(false, BandLayout.of(List.of(cell), Resolution.THIRD_OCTAVE));
    }
}
