package org.ellwand.check;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;
import org.ellwand.pairing.OpenEars;

/**
 * The attenuation of readings in place against their open ear. Half of the checks ask for those of all levels under a sound:
 * they are worked out once, side by side. Checks may ask at the same time.
 */
final class Attenuations {
    private final OpenEars ears;
    private final IdentityHashMap<CurveReading, LevelCurve> ofSounding = new IdentityHashMap<>();
    private volatile Open last = new Open(Optional.empty(), LevelCurve.EMPTY);

    /** The mean of an open ear as shifted. Of a lot all readings have the same one. */
    private record Open(Optional<OpenEars.Partner> of, LevelCurve meanDb) {}

    private Attenuations(OpenEars ears) {
        this.ears = ears;
    }

    static Attenuations in(Session session) {
        Attenuations attenuations = new Attenuations(OpenEars.in(session));
        List<CurveReading> inPlace = Sheets.inPlace(session);
        List<Optional<LevelCurve>> curves =
                inPlace.parallelStream().map(attenuations::workedOut).toList();
        for (int r = 0; r < curves.size(); r++) {
            CurveReading reading = inPlace.get(r);
            curves.get(r).ifPresent(curve -> attenuations.ofSounding.put(reading, curve));
        }
        return attenuations;
    }

    /** The attenuation of a reading in place, where its open ear was measured; not to be changed. */
    Optional<LevelCurve> of(CurveReading inPlace) {
        LevelCurve known = ofSounding.get(inPlace);
        return known != null ? Optional.of(known) : workedOut(inPlace);
    }

    private Optional<LevelCurve> workedOut(CurveReading inPlace) {
        return ears.of(inPlace).map(partner -> Curves.less(mean(partner), Sheets.curve(inPlace)));
    }

    @SuppressWarnings("ReferenceEquality") // Readings of one ear are given the very same partner.
    private LevelCurve mean(OpenEars.Partner partner) {
        Open known = last;
        if (known.of().filter(p -> p == partner).isPresent()) {
            return known.meanDb();
        }
        LevelCurve open =
                Sheets.meanOf(partner.takes().stream().map(CurveReading::of).toList());
        double shiftDb = partner.shiftDb();
        LevelCurve mean = shiftDb == 0 ? open : open.changed(level -> level + shiftDb);
        last = new Open(Optional.of(partner), mean);
        return mean;
    }
}
