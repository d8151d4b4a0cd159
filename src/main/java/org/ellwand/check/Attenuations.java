package org.ellwand.check;

import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.pairing.OpenEars;

/**
 * The attenuation of readings in place against their open ear. The mean of an open ear is kept until another one is asked for:
 * readings of one ear stand together, and of a lot all are of one. Belongs to one check at a time.
 */
final class Attenuations {
    private final OpenEars ears;
    private List<Reading> takes = List.of();
    private NavigableMap<Band, Double> openDb = LevelCurve.EMPTY;

    private Attenuations(OpenEars ears) {
        this.ears = ears;
    }

    static Attenuations in(Session session) {
        return new Attenuations(OpenEars.in(session));
    }

    /** The attenuation of a reading in place, where its open ear was measured; a new map. */
    Optional<NavigableMap<Band, Double>> of(CurveReading inPlace) {
        return ears.of(inPlace).map(partner -> {
            NavigableMap<Band, Double> open = mean(partner.takes());
            if (partner.shiftDb() != 0) {
                open = LevelCurve.of(open).copy();
                open.replaceAll((band, level) -> level + partner.shiftDb());
            }
            return Curves.less(open, Sheets.curve(inPlace));
        });
    }

    private NavigableMap<Band, Double> mean(List<Reading> of) {
        if (!isSame(of)) {
            takes = of;
            openDb = Sheets.meanOf(of.stream().map(CurveReading::of).toList());
        }
        return openDb;
    }

    /** The same readings, not merely equal ones. */
    @SuppressWarnings("ReferenceEquality")
    private boolean isSame(List<Reading> of) {
        boolean same = of.size() == takes.size();
        for (int t = 0; same && t < of.size(); t++) {
            same = of.get(t) == takes.get(t);
        }
        return same;
    }
}
