package org.ellwand.acoustics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;

/** Levels or level differences over the bands of one resolution. Bands that were not measured are simply not in it. */
public final class Spectrum {
    private final Resolution resolution;
    private final NavigableMap<Band, Level> levels;
    private final List<Band> bandList;

    /**
     * One band's number.
     *
     * @param levelDb dB
     * @param bound whether it is the value or only bounds it
     */
    public record Level(double levelDb, Bound bound) {
        public Level {
            if (!Double.isFinite(levelDb)) {
                throw new IllegalArgumentException("a level is a finite number");
            }
        }

        public static Level measured(double levelDb) {
            return new Level(levelDb, Bound.MEASURED);
        }
    }

    public Spectrum(Resolution resolution, Map<Band, Level> levels) {
        levels.keySet().forEach(band -> {
            if (band.resolution() != resolution) {
                throw new IllegalArgumentException(band + " is not a band of " + resolution.text());
            }
        });
        this.resolution = resolution;
        this.levels = Collections.unmodifiableNavigableMap(new TreeMap<>(levels));
        this.bandList = List.copyOf(this.levels.keySet());
    }

    /** A spectrum of measured levels at nominal or exact frequencies in Hz. */
    public static Spectrum of(Resolution resolution, Map<Double, Double> levelDbByHz) {
        Map<Band, Level> levels = new TreeMap<>();
        levelDbByHz.forEach((hz, level) -> levels.put(Band.nearest(resolution, hz), Level.measured(level)));
        return new Spectrum(resolution, levels);
    }

    public Resolution resolution() {
        return resolution;
    }

    public SortedSet<Band> bands() {
        return Collections.unmodifiableSortedSet((SortedSet<Band>) levels.navigableKeySet());
    }

    public List<Band> bandList() {
        return bandList;
    }

    /** The place of a band among the bands, lowest first; negative where it is not there. */
    public int indexOf(Band band) {
        return Collections.binarySearch(bandList, band);
    }

    /** All levels in dB, lowest band first; a new array. */
    public double[] levelsDb() {
        return levels.values().stream().mapToDouble(Level::levelDb).toArray();
    }

    public Optional<Level> at(Band band) {
        return Optional.ofNullable(levels.get(band));
    }

    public Map<Band, Level> levels() {
        return levels;
    }

    /**
     * The energy sum over the bands of a coarser resolution. A coarse band exists only where all of its fine bands
     * do. A sum with a member that is only "at least" is itself "at least", likewise "at most"; a sum with both says
     * nothing and is left out.
     *
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
        levels.forEach((band, level) -> members.computeIfAbsent(band.within(coarser), b -> new ArrayList<>())
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
        return other instanceof Spectrum that && resolution == that.resolution && levels.equals(that.levels);
    }

    @Override
    public int hashCode() {
        return 31 * resolution.hashCode() + levels.hashCode();
    }

    @Override
    public String toString() {
        return resolution.text() + " " + levels;
    }
}
