package org.ellwand.audit;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.pairing.Cell;
import org.ellwand.pairing.Insertion;

/**
 * The bands of all readings of a subject, and the part that each reading plays in it: two subjects of one rule with the same
 * layout have the same bands to be judged over, if all of them were measured.
 */
final class BandLayout {
    private final Resolution resolution;
    private final List<Integer> sizes = new ArrayList<>();
    private final List<List<Band>> bands = new ArrayList<>();
    private boolean measured = true;

    private BandLayout(Resolution resolution) {
        this.resolution = resolution;
    }

    /**
     * The layout of some cells.
     *
     * @param resolution that they are judged in
     */
    static BandLayout of(List<Cell> cells, Resolution resolution) {
        BandLayout layout = new BandLayout(resolution);
        for (Cell cell : cells) {
            layout.sizes.add(cell.insertions().size());
            for (Insertion insertion : cell.insertions()) {
                layout.add(insertion.takes());
            }
            layout.add(cell.openEar());
            layout.add(cell.field());
        }
        return layout;
    }

    private void add(List<Reading> readings) {
        sizes.add(readings.size());
        for (Reading reading : readings) {
            Spectrum spectrum = CurveReading.of(reading).spectrum();
            bands.add(spectrum.bandList());
            measured &= spectrum.isMeasured();
        }
    }

    /** Whether no level only bounds the true one. */
    boolean isMeasured() {
        return measured;
    }

    /**
     * Whether both are the same and no level only bounds the true one. Readings of one sheet share the list of their bands;
     * other lists count as others, whatever they hold.
     */
    @SuppressWarnings("ReferenceEquality")
    boolean isMeasuredLike(BandLayout other) {
        boolean like = measured && other.measured && resolution == other.resolution && sizes.equals(other.sizes);
        for (int i = 0; like && i < bands.size(); i++) {
            like = bands.get(i) == other.bands.get(i);
        }
        return like;
    }
}
