package org.ellwand.measurement;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Unit;

/**
 * One sitting with one rig; calibration unchanged.
 *
 * @param id unique in the folder
 * @param file path of the session file relative to the audited folder
 * @param measured date, as written
 * @param rig what it was measured with, in the auditor's words
 * @param place where it was measured, in the auditor's words
 * @param resolution absent where the session has no curves
 * @param levelsIn unit of the levels, absent where the session has no curves
 * @param stimuli by id
 * @param openEarScaled whether an open ear at another level may be shifted
 * @param settingsSwitchedInPlace whether one insertion id under two settings is one insertion
 * @param declaredConditions names of further conditions
 * @param uncertainty sizes of its errors, or that they are unknown
 * @param readings its curves
 * @param traces its levels against time
 * @param harmonics its tones with their harmonics
 * @param figures single numbers
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
    /**
     * {@return this session with other curves}
     *
     * @param others in place of its own
     */
    public Session withReadings(List<CurveReading> others) {
        return with(uncertainty, others, traces, harmonics, figures, chain);
    }

    /**
     * {@return this session with other sizes of its errors}
     *
     * @param other in place of its own
     */
    public Session withUncertainty(Uncertainty other) {
        return with(other, readings, traces, harmonics, figures, chain);
    }

    /**
     * {@return this session with another measuring chain}
     *
     * @param other in place of its own
     */
    public Session withChain(Chain other) {
        return with(uncertainty, readings, traces, harmonics, figures, other);
    }

    /**
     * {@return this session with what holds of the conditions of its curves, traces, harmonics and figures}
     *
     * @param curves keeps those for which it holds
     * @param others keeps those traces, harmonics and figures for whose conditions it holds
     */
    public Session kept(Predicate<CurveReading> curves, Predicate<Conditions> others) {
        return with(
                uncertainty,
                readings.stream().filter(curves).toList(),
                traces.stream().filter(t -> others.test(t.conditions())).toList(),
                harmonics.stream().filter(h -> others.test(h.conditions())).toList(),
                figures.stream().filter(f -> others.test(f.conditions())).toList(),
                chain);
    }

    private Session with(
            Uncertainty otherUncertainty,
            List<CurveReading> otherReadings,
            List<Trace> otherTraces,
            List<HarmonicReading> otherHarmonics,
            List<Figure> otherFigures,
            Chain otherChain) {
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
                otherUncertainty,
                List.copyOf(otherReadings),
                otherTraces,
                otherHarmonics,
                otherFigures,
                dataFiles,
                otherChain);
    }

    /**
     * {@return the stimulus of a reading, where it has one}
     *
     * @param conditions of the reading
     */
    public Optional<Stimulus> stimulusOf(Conditions conditions) {
        Optional<String> name = conditions.get(ConditionNames.STIMULUS);
        return name.isEmpty() ? Optional.empty() : Optional.ofNullable(stimuli.get(name.get()));
    }

    /**
     * {@return the conditions that any of some sessions declares, sorted}
     *
     * @param sessions of a folder
     */
    public static Set<String> declaredBy(List<Session> sessions) {
        return sessions.stream()
                .flatMap(session -> session.declaredConditions().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
