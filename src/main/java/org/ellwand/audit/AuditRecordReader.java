package org.ellwand.audit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads {@code audit.json} back. Keys it does not know are passed over: later versions add some. */
public final class AuditRecordReader {
    private final String file;

    private AuditRecordReader(String file) {
        this.file = file;
    }

    /**
     * {@return the record}
     *
     * @param json the bytes of {@code audit.json}
     * @param file its name, for messages
     * @throws InputException where it is no record, or one of a version that is not known
     */
    public static AuditRecord read(byte[] json, String file) throws InputException {
        return new AuditRecordReader(file).document(json);
    }

    private AuditRecord document(byte[] json) throws InputException {
        JsonNode document = tree(json);
        if (!document.path("format").asString("").equals(AuditJson.FORMAT)) {
            throw fault("is no record of an audit: 'format' is not '" + AuditJson.FORMAT + "'");
        }
        int version = document.path("version").asInt(0);
        if (version != AuditJson.VERSION) {
            throw fault("is a record of version " + version + "; this program reads version " + AuditJson.VERSION);
        }
        return new AuditRecord(list(document, "products", this::product), list(document, "inputs", this::input));
    }

    private JsonNode tree(byte[] json) throws InputException {
        try {
            return JsonMapper.shared().readTree(json);
        } catch (JacksonException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            int column = e.getLocation() == null ? 0 : e.getLocation().getColumnNr();
            throw new InputException(
                    new Place(file, Math.max(0, line), Math.max(0, column)),
                    "is not JSON: " + e.getOriginalMessage().replaceAll(" \\(start marker.*", ""));
        }
    }

    private InputException fault(String text) {
        return new InputException(Place.ofFile(file), text);
    }

    /** Turns a node into what it stands for. */
    private interface Reading<T> {
        T of(JsonNode node) throws InputException;
    }

    private <T> List<T> list(JsonNode node, String key, Reading<T> reading) throws InputException {
        JsonNode array = node.path(key);
        if (!array.isArray()) {
            throw fault("has no list '" + key + "' where a record has one");
        }
        List<T> read = new ArrayList<>();
        for (JsonNode each : array) {
            read.add(reading.of(each));
        }
        return read;
    }

    private String text(JsonNode node, String key) throws InputException {
        JsonNode value = node.path(key);
        if (!value.isString()) {
            throw fault("has no text '" + key + "' where a record has one");
        }
        return value.asString();
    }

    private static Optional<String> maybeText(JsonNode node, String key) {
        JsonNode value = node.path(key);
        return value.isString() ? Optional.of(value.asString()) : Optional.empty();
    }

    private static OptionalDouble number(JsonNode node, String key) {
        JsonNode value = node.path(key);
        return value.isNumber() ? OptionalDouble.of(value.asDouble()) : OptionalDouble.empty();
    }

    private Audit.Input input(JsonNode node) throws InputException {
        return new Audit.Input(text(node, "file"), text(node, "sha256"));
    }

    private AuditRecord.OfProduct product(JsonNode node) throws InputException {
        double confidence = number(node, "confidence").orElse(Double.NaN);
        if (!(confidence > 0 && confidence < 1)) {
            throw fault("has no 'confidence' between 0 and 1 where a record has one");
        }
        return new AuditRecord.OfProduct(text(node, "product"), confidence, list(node, "claims", this::claim));
    }

    private AuditRecord.OfClaim claim(JsonNode node) throws InputException {
        JsonNode rule = node.path("rule");
        return new AuditRecord.OfClaim(
                text(node, "id"),
                text(node, "edition"),
                text(node, "topic"),
                maybeText(node, "quote").or(() -> maybeText(node, "paraphrase")),
                maybeText(node, "quote").isPresent(),
                maybeText(rule, "text"),
                maybeText(rule, "unit").orElse(""),
                verdict(text(node, "verdict")),
                number(node, "probability"),
                number(node, "value"),
                number(node, "standardUncertainty"),
                number(node.path("point"), "hz"),
                list(node, "cells", this::cell));
    }

    private Verdict verdict(String word) throws InputException {
        for (Verdict verdict : Verdict.values()) {
            if (verdict.word().equals(word)) {
                return verdict;
            }
        }
        throw fault("has a verdict '" + word.toLowerCase(Locale.ROOT) + "', which is none");
    }

    private AuditRecord.OfCell cell(JsonNode node) throws InputException {
        Map<String, String> conditions = new LinkedHashMap<>();
        node.path("conditions")
                .properties()
                .forEach(e -> conditions.put(e.getKey(), e.getValue().asString("")));
        return new AuditRecord.OfCell(
                conditions,
                number(node, "value"),
                number(node, "standardUncertainty"),
                list(node, "contributions", this::contribution),
                centres(node.path("bands")));
    }

    private static List<Double> centres(JsonNode bands) {
        List<Double> hz = new ArrayList<>();
        bands.forEach(band -> number(band, "hz").ifPresent(hz::add));
        return hz;
    }

    private Contribution contribution(JsonNode node) throws InputException {
        JsonNode degrees = node.path("degreesOfFreedom");
        return new Contribution(
                text(node, "cause"),
                text(node, "instance"),
                number(node, "effect").orElse(0),
                degrees.isInt() ? OptionalInt.of(degrees.asInt()) : OptionalInt.empty());
    }
}
