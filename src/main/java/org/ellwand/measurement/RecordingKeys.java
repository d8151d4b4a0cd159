package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Weighting;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Unit;
import org.ellwand.sound.SoundAnalysis;

/** The keys of an entry of {@code recordings}, and the words they take. */
final class RecordingKeys {
    /** What an entry gives. */
    enum Gives {
        BANDS,
        TRACE,
        HARMONICS
    }

    static final Map<String, Gives> GIVES = gives();
    private static final List<String> OF_ALL =
            List.of("file", "channel", "from", "to", "times from", "gives", "product");
    static final Map<String, Weighting> WEIGHTINGS = weightings();
    private static final double LEAST_CONSTANT_S = 0.0005;
    private static final double MOST_CONSTANT_S = 60;

    private RecordingKeys() {}

    private static Map<String, Gives> gives() {
        Map<String, Gives> words = new LinkedHashMap<>();
        words.put("bands", Gives.BANDS);
        words.put("trace", Gives.TRACE);
        words.put("harmonics", Gives.HARMONICS);
        return Collections.unmodifiableMap(words);
    }

    private static Map<String, Weighting> weightings() {
        Map<String, Weighting> words = new LinkedHashMap<>();
        for (Weighting weighting : Weighting.values()) {
            words.put(weighting.name(), weighting);
        }
        return Collections.unmodifiableMap(words);
    }

    static List<String> ownKeys(Gives gives) {
        List<String> keys = new ArrayList<>(OF_ALL);
        switch (gives) {
            case BANDS -> keys.add(RecordingFiles.STIMULUS_FILE);
            case TRACE -> keys.addAll(List.of("step", "weighting", "time constant"));
            case HARMONICS -> keys.add("fundamental");
        }
        return keys;
    }

    /** A time constant in s; empty where it is none (reported). */
    static Optional<Double> timeConstantS(Keys keys, String text) {
        return switch (text) {
            case "fast" -> Optional.of(SoundAnalysis.FAST_S);
            case "slow" -> Optional.of(SoundAnalysis.SLOW_S);
            default -> {
                Optional<Double> seconds = keys.amount(
                                "time constant",
                                unit -> unit.dimension() == Dimension.TIME,
                                "fast, slow or a time such as '5 ms'")
                        .map(amount -> amount.in(Unit.SECOND));
                if (seconds.isPresent() && !(seconds.get() >= LEAST_CONSTANT_S && seconds.get() <= MOST_CONSTANT_S)) {
                    keys.problems().add(keys.placeOf("time constant"), "a time constant lies within 0.5 ms and 60 s");
                    yield Optional.empty();
                }
                yield seconds;
            }
        };
    }
}
