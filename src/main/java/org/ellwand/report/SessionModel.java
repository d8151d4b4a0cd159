package org.ellwand.report;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Unit;
import org.ellwand.measurement.Cause;
import org.ellwand.measurement.Chain;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.Stimulus;
import org.ellwand.measurement.Uncertainty;

/** How it was measured, as templates see it. */
final class SessionModel {
    private SessionModel() {}

    static Map<String, Object> of(Session session, String anchor) {
        return Fields.of("id", session.id())
                .and("anchor", anchor)
                .and("file", session.file())
                .and("measured", session.measured().orElse(""))
                .and("rig", session.rig().orElse(""))
                .and("place", session.place().orElse(""))
                .and("resolution", session.resolution().map(Resolution::text).orElse(""))
                .and("levelsIn", session.levelsIn().map(Unit::symbol).orElse(""))
                .and("openEarScaled", session.openEarScaled())
                .and("settingsSwitchedInPlace", session.settingsSwitchedInPlace())
                .and("sample", Counted.of(List.of(session), reading -> true).model())
                .and(
                        "stimuli",
                        session.stimuli().values().stream()
                                .map(SessionModel::stimulus)
                                .toList())
                .and("uncertainty", uncertainty(session))
                .and("causes", causes(session))
                .and("chain", chain(session.chain()))
                .and("dataFiles", session.dataFiles())
                .map();
    }

    private static Object chain(Chain chain) {
        Optional<Chain.Calibration> calibration = chain.calibration();
        return Fields.of(
                        "before",
                        calibration
                                .flatMap(Chain.Calibration::before)
                                .map(Phrases::amount)
                                .orElse(""))
                .and(
                        "after",
                        calibration
                                .flatMap(Chain.Calibration::after)
                                .map(Phrases::amount)
                                .orElse(""))
                .and("dated", calibration.flatMap(Chain.Calibration::dated).orElse(""))
                .and("averaging", chain.averaging().map(Phrases::amount).orElse(""))
                .and("overload", chain.overload().map(Phrases::amount).orElse(""))
                .map();
    }

    private static Object stimulus(Stimulus stimulus) {
        return Fields.of("id", stimulus.id())
                .and("text", Phrases.stimulus(stimulus))
                .and("peak", stimulus.peak().map(Phrases::amount).orElse(""))
                .map();
    }

    private static String uncertainty(Session session) {
        if (!(session.uncertainty() instanceof Uncertainty.Declared declared)) {
            return "unknown";
        }
        if (declared.typicalProbeTube()) {
            return "typical probe tube";
        }
        return declared.causes().isEmpty() ? "no cause" : "declared";
    }

    private static List<Object> causes(Session session) {
        return session.uncertainty() instanceof Uncertainty.Declared declared
                ? declared.causes().stream().map(SessionModel::cause).toList()
                : List.of();
    }

    private static Object cause(Cause cause) {
        return Fields.of("name", cause.name())
                .and("sizes", sizes(cause))
                .and("sharedBy", cause.sharedBy().name().toLowerCase(Locale.ROOT))
                .and("acrossBands", cause.independentAcrossBands() ? "independent" : "together")
                .map();
    }

    private static List<Object> sizes(Cause cause) {
        return cause.sizes().stream()
                .map(size -> (Object) Fields.of("size", Numbers.withUnit(Numbers.plain(size.size()), cause.unit()))
                        .and("from", size.fromHz() > 0 ? Phrases.bound(size.fromHz()) : "")
                        .and("to", size.toHz() < Double.POSITIVE_INFINITY ? Phrases.bound(size.toHz()) : "")
                        .map())
                .toList();
    }
}
