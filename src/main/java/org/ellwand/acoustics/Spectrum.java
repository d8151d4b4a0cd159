package org.ellwand.acoustics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Levels or level differences over the bands of one resolution. Bands that were not measured are simply not in it. */
public final class Spectrum {
    private final Resolution resolution;
    private final List<Band> bandList;
    private final double[] levelsDb;
    private final List<Bound> bounds;

    /**
     * One band's number.
     *
     * @param levelDb dB
     * @param bound whether it is the value or only bounds it
     */
    public record Level(double levelDb, Bound bound) {
        /**
         * Refuses what is not finite.
         *
         * @param levelDb dB
         * @param bound whether it is the value or only bounds it
         * @throws IllegalArgumentException where the level is infinite or NaN
         */
        public Level {
            if (!Double.isFinite(levelDb)) {
                throw new IllegalArgumentException("a level is a finite number");
            }
        }

        /**
         * {@return a number that is the value itself}
         *
         * @param levelDb in dB, finite
         */
        public static Level measured(double levelDb) {
            return new Level(levelDb, Bound.MEASURED);
        }
    }

    /**
     * A spectrum of these bands.
     *
     * @param resolution of every band
     * @param levels in dB by band
     * @throws IllegalArgumentException where a band is of another resolution
     */
    public Spectrum(Resolution resolution, Map<Band, Level> levels) {
        this(resolution, sorted(levels));
    }

    private Spectrum(Resolution resolution, SortedMap<Band, Level> levels) {
        this(
                resolution,
                List.copyOf(levels.keySet()),
                levels.values().stream().mapToDouble(Level::levelDb).toArray(),
                bounds(levels.values()));
    }

    private Spectrum(Resolution resolution, List<Band> bandList, double[] levelsDb, List<Bound> bounds) {
        for (Band band : bandList) {
            if (band.resolution() != resolution) {
                throw new IllegalArgumentException(band + " is not a band of " + resolution.text());
            }
        }
        this.resolution = resolution;
        this.bandList = bandList;
        this.levelsDb = levelsDb;
        this.bounds = bounds;
    }

    private static SortedMap<Band, Level> sorted(Map<Band, Level> levels) {
        return new TreeMap<>(levels);
    }

    /** Nothing where all are measured. */
    private static List<Bound> bounds(Collection<Level> levels) {
        boolean measured = levels.stream().allMatch(level -> level.bound() == Bound.MEASURED);
        return measured ? List.of() : levels.stream().map(Level::bound).toList();
    }

    /**
     * A spectrum of measured levels. Spectra of the same bands may share their list.
     *
     * @param resolution of every band
     * @param bands ascending
     * @param levelsDb one for each band, in dB
     * @return the spectrum; array and list are copied
     * @throws IllegalArgumentException where there is not one finite level for each band
     */
    public static Spectrum measured(Resolution resolution, List<Band> bands, double[] levelsDb) {
        boolean finite = bands.size() == levelsDb.length;
        for (double level : levelsDb) {
            finite &= Double.isFinite(level);
        }
        if (!finite) {
            throw new IllegalArgumentException("one finite level for each band");
        }
        return new Spectrum(resolution, List.copyOf(bands), levelsDb.clone(), List.of());
    }

    /**
     * {@return a spectrum of measured levels at nominal or exact frequencies}
     *
     * @param resolution the set that the bands belong to
     * @param levelDbByHz levels in dB by frequency in Hz; each goes to the nearest band
     */
    public static Spectrum of(Resolution resolution, Map<Double, Double> levelDbByHz) {
        Map<Band, Level> levels = new TreeMap<>();
        levelDbByHz.forEach((hz, level) -> levels.put(Band.nearest(resolution, hz), Level.measured(level)));
        return new Spectrum(resolution, levels);
    }

    /** {@return the width of its bands} */
    public Resolution resolution() {
        return resolution;
    }

    /** {@return its bands, lowest first; a new set} */
    public SortedSet<Band> bands() {
        return Collections.unmodifiableSortedSet(new TreeSet<>(bandList));
    }

    /** {@return its bands, lowest first; spectra of the same bands may share the list} */
    public List<Band> bandList() {
        return bandList;
    }

    /**
     * {@return the place of a band among the bands, lowest first; negative where it is not there}
     *
     * @param band of this resolution
     */
    public int indexOf(Band band) {
        return Collections.binarySearch(bandList, band);
    }

    /** {@return all levels in dB, lowest band first; a new array} */
    public double[] levelsDb() {
        return Arrays.copyOf(levelsDb, levelsDb.length);
    }

    /** {@return whether every level is the value and none only bounds it} */
    public boolean isMeasured() {
        return bounds.isEmpty();
    }

    /**
     * {@return the number of a band; empty where the band is not there}
     *
     * @param band of this resolution
     */
    public Optional<Level> at(Band band) {
        int at = indexOf(band);
        return at < 0 ? Optional.empty() : Optional.of(level(at));
    }

    private Level level(int at) {
        return new Level(levelsDb[at], boundOf(at));
    }

    /**
     * {@return the level in dB at a place among the bands}
     *
     * @param at from 0, lowest band first
     */
    public double levelDb(int at) {
        return levelsDb[at];
    }

    /**
     * {@return whether the number at a place among the bands is the value or only bounds it}
     *
     * @param at from 0, lowest band first
     */
    public Bound boundOf(int at) {
        return bounds.isEmpty() ? Bound.MEASURED : bounds.get(at);
    }

    /** {@return the levels by band, lowest band first; a new map} */
    public SortedMap<Band, Level> levels() {
        SortedMap<Band, Level> levels = new TreeMap<>();
        for (int i = 0; i < levelsDb.length; i++) {
            levels.put(bandList.get(i), level(i));
        }
        return Collections.unmodifiableSortedMap(levels);
    }

    /**
     * {@return the energy sum over the bands of a coarser resolution} A coarse band exists only where all of its fine
     * bands do. A sum with a member that is only "at least" is itself "at least", likewise "at most"; a sum with both
     * says nothing and is left out.
     *
     * @param coarser a resolution of wider bands, or this one
     * @throws IllegalArgumentException where the other resolution is finer than this one
     */
    public Spectrum sumTo(Resolution coarser) {
        if (coarser == resolution) {
            return this;
        }
        if (!coarser.isCoarserThan(resolution)) {
            throw new IllegalArgumentException(resolution.text() + " levels have no " + coarser.text() + " sums");
        }
        Map<Band, List<Level>> members = new TreeMap<>();
        levels().forEach((band, level) -> members.computeIfAbsent(band.within(coarser), b -> new ArrayList<>())
                .add(level));
        Map<Band, Level> sums = new TreeMap<>();
        int wanted = resolution.bandsPerOctave() / coarser.bandsPerOctave();
        members.forEach((band, fine) -> {
            if (fine.size() == wanted) {
                sum(fine).ifPresent(level -> sums.put(band, level));
            }
        });
        return new Spectrum(coarser, sums);
    }

    private static Optional<Level> sum(List<Level> fine) {
        Set<Bound> bounds = EnumSet.noneOf(Bound.class);
        fine.forEach(level -> bounds.add(level.bound()));
        bounds.remove(Bound.MEASURED);
        if (bounds.size() > 1) {
            return Optional.empty();
        }
        double sumDb = Energy.sumDb(fine.stream().mapToDouble(Level::levelDb).toArray());
        return Optional.of(new Level(sumDb, bounds.stream().findFirst().orElse(Bound.MEASURED)));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Spectrum that
                && resolution == that.resolution
                && bandList.equals(that.bandList)
                && Arrays.equals(levelsDb, that.levelsDb)
                && bounds.equals(that.bounds);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * resolution.hashCode() + Arrays.hashCode(levelsDb)) + bandList.hashCode();
    }

    @Override
    public String toString() {
        return resolution.text() + " " + levels();
    }
}
