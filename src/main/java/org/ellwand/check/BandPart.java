package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import org.ellwand.acoustics.Band;

/**
 * The bands of a list between two nominal frequencies. Curves of a sheet share the list of their bands, and every check asks
 * for the same few parts of each: a part is looked up once, and curves cut alike share the list of it too.
 *
 * @param of the whole list
 * @param fromHz in Hz, included
 * @param toHz in Hz, included
 * @param from the first place in the whole list
 * @param to behind the last one
 * @param bands the part
 */
record BandPart(List<Band> of, double fromHz, double toHz, int from, int to, List<Band> bands) {
    private static final int LATEST = 32;

    private static volatile List<BandPart> latest = List.of();

    static BandPart of(List<Band> bands, double fromHz, double toHz) {
        List<BandPart> known = latest;
        for (int i = 0; i < known.size(); i++) {
            BandPart part = known.get(i);
            if (part.isOf(bands, fromHz, toHz)) {
                return part;
            }
        }
        BandPart part = found(bands, fromHz, toHz);
        List<BandPart> more = new ArrayList<>(known.subList(Math.max(0, known.size() - LATEST + 1), known.size()));
        more.add(part);
        latest = List.copyOf(more);
        return part;
    }

    /** The very list; another one is looked up by itself, whatever it holds. */
    @SuppressWarnings("ReferenceEquality")
    private boolean isOf(List<Band> bands, double lowestHz, double highestHz) {
        return of == bands && fromHz == lowestHz && toHz == highestHz;
    }

    private static BandPart found(List<Band> bands, double fromHz, double toHz) {
        int from = 0;
        while (from < bands.size() && bands.get(from).nominalHz() < fromHz) {
            from++;
        }
        int to = bands.size();
        while (to > from && bands.get(to - 1).nominalHz() > toHz) {
            to--;
        }
        return new BandPart(bands, fromHz, toHz, from, to, List.copyOf(bands.subList(from, to)));
    }
}
