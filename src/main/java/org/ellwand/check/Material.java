package org.ellwand.check;

import java.util.List;
import java.util.Map;
import org.ellwand.acoustics.Band;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Session;

/**
 * What a check looks at. Of a lot, the readings in place are many and many checks ask for them in the same groups: what is
 * asked for is put together once, at the first asking, for all checks. Checks may run side by side.
 */
final class Material {
    private final Session session;
    private final Session asRead;
    private final AllSessions all;
    private final Once<List<CurveReading>> inPlace;
    private final Once<Map<Conditions, List<CurveReading>>> repeats;
    private final Once<List<Slip>> slips;
    private final Attenuations attenuations;
    private final Once<Attenuations> attenuationsAsRead;

    /**
     * @param session with its backgrounds subtracted; bounds are no measured levels
     * @param asRead the same session as it was read
     * @param all the sessions of the folder
     */
    Material(Session session, Session asRead, AllSessions all) {
        this.session = session;
        this.asRead = asRead;
        this.all = all;
        inPlace = new Once<>(() -> Sheets.inPlace(session));
        repeats = new Once<>(() -> Sheets.grouped(inPlace.get(), Sheets.REPEATS));
        slips = new Once<>(() -> DecimalShift.in(asRead));
        attenuations = Attenuations.in(session);
        attenuationsAsRead = new Once<>(() -> isUnchanged() ? attenuations : Attenuations.in(asRead));
    }

    @SuppressWarnings("ReferenceEquality") // What has no background is the very same reading.
    private boolean isUnchanged() {
        boolean same = session.readings().size() == asRead.readings().size();
        for (int r = 0; same && r < session.readings().size(); r++) {
            same = session.readings().get(r) == asRead.readings().get(r);
        }
        return same;
    }

    Session session() {
        return session;
    }

    Session asRead() {
        return asRead;
    }

    List<Session> all() {
        return all.all();
    }

    /** The curves of all sessions as they were read. */
    SameCurves sameCurves() {
        return all.sameCurves();
    }

    /** By how much settings differ in the other sessions. */
    List<MeanGaps> gapsElsewhere() {
        return all.gapsElsewhere(session);
    }

    /** The readings of {@link #session} in place, under a sound. */
    List<CurveReading> inPlace() {
        return inPlace.get();
    }

    /** The same, those together that differ in insertion and take alone; not to be changed. */
    Map<Conditions, List<CurveReading>> repeats() {
        return repeats.get();
    }

    /** The numbers that were written down wrong. */
    List<Slip> slips() {
        return slips.get();
    }

    boolean isSlip(CurveReading reading, Band band) {
        return slips().stream()
                .anyMatch(slip ->
                        slip.band().equals(band) && slip.reading().conditions().equals(reading.conditions()));
    }

    /** The measured levels of a reading, but for slips: one wrong number is not to make an insertion look odd. */
    LevelCurve curve(CurveReading reading) {
        LevelCurve curve = Sheets.curve(reading);
        if (slips().isEmpty() || curve.bands().stream().noneMatch(band -> isSlip(reading, band))) {
            return curve;
        }
        return curve.at(
                curve.bands().stream().filter(band -> !isSlip(reading, band)).toList());
    }

    /** Of {@link #session}. */
    Attenuations attenuations() {
        return attenuations;
    }

    /** Of {@link #asRead}. */
    Attenuations attenuationsAsRead() {
        return attenuationsAsRead.get();
    }
}
