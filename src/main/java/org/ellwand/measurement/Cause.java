package org.ellwand.measurement;

import java.util.List;
import org.ellwand.amount.Unit;

/**
 * One source of measurement uncertainty.
 *
 * @param name unique in its session
 * @param sharedBy one draw for each of these
 * @param independentAcrossBands whether every band has a draw of its own; otherwise one draw moves all bands together
 * @param unit {@link Unit#DB} (touches levels) or {@link Unit#MILLISECOND} (touches times)
 * @param sizes standard uncertainties (k = 1); together they cover every frequency once
 */
public record Cause(String name, SharedBy sharedBy, boolean independentAcrossBands, Unit unit, List<Size> sizes) {
    /**
     * Keeps a copy of the sizes.
     *
     * @param name unique in its session
     * @param sharedBy one draw for each of these
     * @param independentAcrossBands whether every band has a draw of its own
     * @param unit {@link Unit#DB} (touches levels) or {@link Unit#MILLISECOND} (touches times)
     * @param sizes standard uncertainties (k = 1)
     */
    public Cause {
        sizes = List.copyOf(sizes);
    }

    /**
     * A size from one frequency (included) to another (excluded), in Hz; 0 and +∞ where open.
     *
     * @param fromHz in Hz, included; 0 where open
     * @param toHz in Hz, excluded; +∞ where open
     * @param size standard uncertainty (k = 1) in the cause's unit
     */
    public record Size(double fromHz, double toHz, double size) {}

    /**
     * {@return the standard uncertainty at a nominal frequency in Hz, in {@link #unit}}
     *
     * @param nominalHz in Hz
     * @throws IllegalArgumentException where no size covers the frequency
     */
    public double sizeAt(double nominalHz) {
        // By place: asked for every number of every reading, an iterator each time would cost more than the search.
        for (int i = 0; i < sizes.size(); i++) {
            Size size = sizes.get(i);
            if (nominalHz >= size.fromHz && nominalHz < size.toHz) {
                return size.size;
            }
        }
        throw new IllegalArgumentException(name + " has no size at " + nominalHz + " Hz");
    }

    /** {@return whether its size is not the same at every frequency} */
    boolean dependsOnFrequency() {
        return sizes.stream().map(Size::size).distinct().count() > 1;
    }

    /** {@return whether it moves nothing: all its sizes are 0} */
    public boolean isZero() {
        return sizes.stream().allMatch(s -> s.size == 0);
    }
}
