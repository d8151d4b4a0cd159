package org.ellwand.measurement;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Unit;

/**
 * One sitting with one rig; calibration unchanged.
 *
 * @param id unique in the folder
 * @param file path of the session file relative to the audited folder
 * @param measured date, as written
 * @param resolution absent where the session has no curves
 * @param levelsIn unit of the levels, absent where the session has no curves
 * @param stimuli by id
 * @param openEarScaled whether an open ear at another level may be shifted
 * @param settingsSwitchedInPlace whether one insertion id under two settings is one insertion
 * @param declaredConditions names of further conditions
 * @param dataFiles paths relative to the audited folder, in the order named
 * @param chain what is said of the measuring chain
 */
public record Session(
        String id,
        String file,
        Optional<String> measured,
        Optional<String> rig,
        Optional<String> place,
        Optional<Resolution> resolution,
        Optional<Unit> levelsIn,
        Map<String, Stimulus> stimuli,
        boolean openEarScaled,
        boolean settingsSwitchedInPlace,
        Set<String> declaredConditions,
        Uncertainty uncertainty,
        List<CurveReading> readings,
        List<Trace> traces,
        List<HarmonicReading> harmonics,
        List<Figure> figures,
        List<String> dataFiles,
        Chain chain) {
    /** A session that says nothing of its measuring chain. */
    public Session(
            String id,
            String file,
            Optional<String> measured,
            Optional<String> rig,
            Optional<String> place,
            Optional<Resolution> resolution,
            Optional<Unit> levelsIn,
            Map<String, Stimulus> stimuli,
            boolean openEarScaled,
            boolean settingsSwitchedInPlace,
            Set<String> declaredConditions,
            Uncertainty uncertainty,
            List<CurveReading> readings,
            List<Trace> traces,
            List<HarmonicReading> harmonics,
            List<Figure> figures,
            List<String> dataFiles) {
        this(
                id,
                file,
                measured,
                rig,
                place,
                resolution,
                levelsIn,
                stimuli,
                openEarScaled,
                settingsSwitchedInPlace,
                declaredConditions,
                uncertainty,
                readings,
                traces,
                harmonics,
                figures,
                dataFiles,
                Chain.UNSTATED);
    }

    /** This session with other curves. */
    public Session withReadings(List<CurveReading> others) {
        return new Session(
                id,
                file,
                measured,
                rig,
                place,
                resolution,
                levelsIn,
                stimuli,
                openEarScaled,
                settingsSwitchedInPlace,
                declaredConditions,
                uncertainty,
                List.copyOf(others),
                traces,
                harmonics,
                figures,
                dataFiles,
                chain);
    }

    /** This session with other sizes of its errors. */
    public Session withUncertainty(Uncertainty other) {
        return new Session(
                id,
                file,
                measured,
                rig,
                place,
                resolution,
                levelsIn,
                stimuli,
                openEarScaled,
                settingsSwitchedInPlace,
                declaredConditions,
                other,
                readings,
                traces,
                harmonics,
                figures,
                dataFiles,
                chain);
    }

    /** The stimulus of a reading, where it has one. */
    public Optional<Stimulus> stimulusOf(Conditions conditions) {
        return conditions.get("stimulus").map(stimuli::get);
    }
}
