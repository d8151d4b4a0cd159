package org.ellwand.acoustics;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;

/** Levels or level differences over the bands of one resolution. Bands that were not measured are simply not in it. */
public final class Spectrum {
    private final Resolution resolution;
    private final NavigableMap<Band, Level> levels;

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
        return List.copyOf(levels.keySet());
    }

    public Optional<Level> at(Band band) {
        return Optional.ofNullable(levels.get(band));
    }

    public Map<Band, Level> levels() {
        return levels;
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
