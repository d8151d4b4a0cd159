package org.ellwand.measurement;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The JSON Schema (draft 2020-12) of a session file, made from the lists that the reader uses. It sees keys, shapes and
 * closed lists of words and of units; data files, and whether entries fit together, only the reader sees. Once a session
 * declares {@code conditions} of its own, the schema can no longer tell a condition from a misspelt key and lets both pass.
 */
public final class SessionSchema {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String NUMBER = "[+\u2212-]?(\\d+(\\.\\d+)?|\\.\\d+)";
    private static final String LEVEL = NUMBER + "\\s*(dB SPL|dB\\(A\\)|dBA|dB\\(C\\)|dBC)";
    private static final String TIME = "\\s*(\u00B5s|\u03BCs|ms|s|min|h)";
    private static final String SIZE_DB = "\\+?(\\d+(\\.\\d+)?|\\.\\d+)\\s*dB";
    private static final String SIZE = "\\+?(\\d+(\\.\\d+)?|\\.\\d+)(\\s*dB|" + TIME + ")";

    /** Whether the session declares conditions of its own. */
    private final boolean declares;

    private SessionSchema(boolean declares) {
        this.declares = declares;
    }

    /** {@return the schema as a tree} */
    public static ObjectNode tree() {
        ObjectNode schema = NODES.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "Ellwand session file");
        schema.put("type", "object");
        schema.putObject("if").putArray("required").add("conditions");
        schema.set("then", new SessionSchema(true).session());
        schema.set("else", new SessionSchema(false).session());
        return schema;
    }

    /** {@return the schema as indented JSON text} */
    public static String text() {
        return JsonMapper.builder().build().writerWithDefaultPrettyPrinter().writeValueAsString(tree()) + "\n";
    }

    private ObjectNode session() {
        ObjectNode session = withConditions(SessionDraft.KEYS, List.of("session"));
        put(session, "measured", pattern("(?!\\s*" + SessionDraft.DAY_OR_MONTH_FIRST + ")[\\s\\S]+"));
        put(session, "resolution", words(SessionDraft.RESOLUTIONS.keySet()));
        put(session, "levels in", words(SessionDraft.LEVELS_IN.keySet()));
        put(session, "stimuli", mapOf(stimulus()));
        put(session, "open ear", words(SessionDraft.OPEN_EAR.keySet()));
        put(session, "settings switched", words(SessionDraft.SWITCHED.keySet()));
        put(session, "conditions", oneOrMore(declared()));
        put(session, "uncertainty", uncertainty());
        put(session, "calibration", calibration());
        put(session, "averaging", pattern("\\+?(\\d+(\\.\\d+)?|\\.\\d+)" + TIME));
        put(session, "overload", pattern(LEVEL));
        put(session, "settings weakest first", listOf(anyText()).put("minItems", 2));
        put(session, "open by design", words(ChainReader.YES_NO.keySet()));
        put(session, "data", oneOrMore(entry()));
        put(session, "calibrator", calibrator());
        put(session, "recordings", oneOrMore(recording()));
        put(session, "traces", oneOrMore(trace()));
        put(session, "figures", oneOrMore(figure()));
        ObjectNode needs = session.putObject("dependentRequired");
        needs.putArray("data").add("uncertainty");
        needs.putArray("recordings").add("uncertainty").add("calibrator");
        return session;
    }

    private static ObjectNode calibration() {
        ObjectNode calibration = mapping(ChainReader.CALIBRATION_KEYS, List.of());
        put(calibration, "before", pattern(LEVEL));
        put(calibration, "after", pattern(LEVEL));
        put(calibration, "dated", pattern("\\s*\\d{4}-\\d{2}-\\d{2}\\s*"));
        return calibration;
    }

    private static ObjectNode stimulus() {
        ObjectNode stimulus = mapping(StimulusReader.KEYS, List.of("kind"));
        // "quiet" has one spelling; every other kind of sound is free, and has a level.
        put(stimulus, "kind", pattern("(?!\\s*[Qq][Uu][Ii][Ee][Tt]\\s*$).*\\S.*|\\s*quiet\\s*"));
        put(stimulus, "level", oneOrMore(pattern(LEVEL)));
        put(stimulus, "peak", pattern(LEVEL));
        ObjectNode quiet = stimulus.putObject("if");
        put(quiet, "kind", words(List.of(Stimulus.QUIET)));
        stimulus.putObject("else").putArray("required").add("level");
        return stimulus;
    }

    private static ObjectNode declared() {
        ObjectNode declared = anyText();
        ArrayNode taken = declared.putObject("not").putArray("enum");
        List.of(SessionDraft.KEYS, ConditionNames.BUILT_IN).forEach(names -> names.forEach(taken::add));
        ConditionNames.TAKEN.stream().sorted().forEach(taken::add);
        return declared;
    }

    private static ObjectNode uncertainty() {
        ObjectNode cause = mapping(UncertaintyReader.KEYS, List.of("cause", "size", "shared by"));
        ObjectNode part = mapping(SizeList.KEYS, List.of("bands", "size"));
        put(part, "size", pattern(SIZE_DB));
        put(cause, "size", anyOf(pattern(SIZE), listOf(part)));
        put(cause, "shared by", words(UncertaintyReader.sharedBy().keySet()));
        put(cause, "across bands", words(UncertaintyReader.ACROSS_BANDS.keySet()));
        return anyOf(listOf(cause), words(List.of(UncertaintyReader.TYPICAL, UncertaintyReader.UNKNOWN)));
    }

    /** One shape a layout, so that a key of another layout is seen. */
    private ObjectNode entry() {
        ObjectNode entry = NODES.objectNode();
        entry.put("type", "object");
        entry.putArray("required").add("file").add("layout");
        put(entry, "layout", words(DataEntry.LAYOUTS.keySet()));
        ArrayNode shapes = entry.putArray("allOf");
        DataEntry.LAYOUTS.forEach((word, layout) -> {
            ObjectNode shape = shapes.addObject();
            put(shape.putObject("if"), "layout", words(List.of(word)));
            shape.set("then", entry(layout));
        });
        return entry;
    }

    private ObjectNode entry(DataEntry.Layout layout) {
        List<String> keys = DataEntry.ownKeys(Optional.of(layout));
        boolean wide = keys.contains("columns");
        ObjectNode entry = withConditions(keys, wide ? List.of("columns") : List.of());
        put(entry, "header line", pattern("[1-9]\\d{0,6}"));
        put(entry, "ignore", oneOrMore(anyText()));
        if (keys.contains("values")) {
            put(entry, "values", words(DataEntry.VALUES.keySet()));
        }
        if (keys.contains("fundamental")) {
            put(entry, "fundamental", pattern(NUMBER + "\\s*k?Hz"));
        }
        if (wide) {
            put(entry, "columns", mapOf(withConditions(List.of(), List.of())));
        }
        if (declares) {
            // What another layout alone knows is no condition.
            DataEntry.ownKeys(Optional.empty()).stream()
                    .filter(key -> !keys.contains(key))
                    .forEach(key -> properties(entry).put(key, false));
        }
        return entry;
    }

    private static ObjectNode calibrator() {
        ObjectNode calibrator = mapping(CalibratorReader.KEYS, List.of("file", "level"));
        put(calibrator, "level", pattern(NUMBER + "\\s*dB SPL"));
        put(calibrator, "frequency", pattern(NUMBER + "\\s*k?Hz"));
        put(calibrator, "channel", pattern("[1-9]\\d{0,6}"));
        return calibrator;
    }

    /** One shape for each of what a recording gives; bands where it does not say. */
    private ObjectNode recording() {
        ObjectNode recording = NODES.objectNode();
        recording.put("type", "object");
        recording.putArray("required").add("file");
        put(recording, "gives", words(RecordingKeys.GIVES.keySet()));
        ArrayNode shapes = recording.putArray("allOf");
        RecordingKeys.GIVES.forEach((word, gives) -> {
            ObjectNode shape = shapes.addObject();
            ObjectNode when = shape.putObject("if");
            put(when, "gives", words(List.of(word)));
            if (gives != RecordingKeys.Gives.BANDS) {
                when.putArray("required").add("gives");
            }
            shape.set("then", recording(gives));
        });
        return recording;
    }

    private ObjectNode recording(RecordingKeys.Gives gives) {
        List<String> keys = RecordingKeys.ownKeys(gives);
        ObjectNode recording = withConditions(
                keys,
                switch (gives) {
                    case BANDS -> List.of();
                    case TRACE -> List.of("time constant");
                    case HARMONICS -> List.of("fundamental");
                });
        put(recording, "channel", pattern("[1-9]\\d{0,6}"));
        put(recording, "from", pattern(NUMBER + TIME));
        put(recording, "times from", words(RecordingFiles.TIMES_FROM.keySet()));
        put(recording, "to", pattern(NUMBER + TIME));
        if (gives == RecordingKeys.Gives.TRACE) {
            put(recording, "step", step());
            put(recording, "weighting", words(RecordingKeys.WEIGHTINGS.keySet()));
            put(recording, "time constant", pattern("fast|slow|" + NUMBER + TIME));
        }
        if (gives == RecordingKeys.Gives.HARMONICS) {
            put(recording, "fundamental", pattern(NUMBER + "\\s*k?Hz"));
        }
        return recording;
    }

    private static ObjectNode step() {
        ObjectNode step = mapping(TraceReader.STEP_KEYS, TraceReader.STEP_KEYS);
        put(step, "at", pattern(NUMBER + TIME));
        put(step, "from", pattern(LEVEL));
        put(step, "to", pattern(LEVEL));
        return step;
    }

    private ObjectNode trace() {
        ObjectNode trace = withConditions(TraceReader.KEYS, List.of("file"));
        put(trace, "step", step());
        put(trace, "header line", pattern("[1-9]\\d{0,6}"));
        return trace;
    }

    private ObjectNode figure() {
        return withConditions(FigureReader.KEYS, List.of("of", "value"));
    }

    /** A mapping with some keys of its own and the conditions; every value is a text unless it is replaced. */
    private ObjectNode withConditions(List<String> keys, List<String> needed) {
        ObjectNode node = mapping(ConditionNames.after(keys, ConditionNames.with(List.of())), needed);
        if (declares) {
            node.set("additionalProperties", anyText());
        }
        return node;
    }

    private static ObjectNode mapping(List<String> keys, List<String> needed) {
        ObjectNode node = NODES.objectNode();
        node.put("type", "object");
        keys.forEach(key -> put(node, key, anyText()));
        node.put("additionalProperties", false);
        needed.forEach(node.withArray("required")::add);
        return node;
    }

    private static ObjectNode mapOf(ObjectNode value) {
        ObjectNode node = NODES.objectNode();
        node.put("type", "object");
        node.set("additionalProperties", value);
        return node;
    }

    private static ObjectNode properties(ObjectNode node) {
        return node.withObject("/properties");
    }

    private static void put(ObjectNode node, String key, ObjectNode value) {
        properties(node).set(key, value);
    }

    private static ObjectNode listOf(ObjectNode item) {
        ObjectNode node = NODES.objectNode();
        node.put("type", "array");
        node.put("minItems", 1);
        node.set("items", item);
        return node;
    }

    private static ObjectNode oneOrMore(ObjectNode item) {
        return anyOf(item, listOf(item));
    }

    private static ObjectNode anyOf(ObjectNode first, ObjectNode second) {
        ObjectNode node = NODES.objectNode();
        node.putArray("anyOf").add(first).add(second);
        return node;
    }

    /** A text that is not empty. Editors take an unquoted 1.10 or true for something else, so these pass too. */
    private static ObjectNode anyText() {
        ObjectNode node = NODES.objectNode();
        node.putArray("type").add("string").add("number").add("boolean");
        node.put("pattern", "\\S");
        return node;
    }

    private static ObjectNode pattern(String whole) {
        ObjectNode node = anyText();
        node.put("pattern", "^\\s*(" + whole + ")\\s*$");
        return node;
    }

    private static ObjectNode words(Collection<String> words) {
        ObjectNode node = NODES.objectNode();
        ArrayNode all = node.putArray("enum");
        words.forEach(all::add);
        return node;
    }
}
