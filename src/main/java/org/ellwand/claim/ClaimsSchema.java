package org.ellwand.claim;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The JSON Schema (draft 2020-12) of a claims file, made from the lists that the reader uses. It sees keys, shapes and
 * closed lists of words; what phrases say, and whether keys fit together, only the reader sees.
 */
public final class ClaimsSchema {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final String ID = "^[A-Za-z0-9-]+$";
    private static final String DATE = "^\\d{4}(-(0[1-9]|1[0-2])(-(0[1-9]|[12]\\d|3[01]))?)?$";
    private static final String DAY = "^\\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\\d|3[01])$";

    private final List<QuantityForm> forms;
    private final Set<String> declaredConditions;

    private ClaimsSchema(List<QuantityForm> forms, Set<String> declaredConditions) {
        this.forms = List.copyOf(forms);
        this.declaredConditions = new TreeSet<>(declaredConditions);
    }

    /**
     * {@return the schema as a tree}
     *
     * @param forms the quantities that claims may be about
     * @param declaredConditions further conditions that sessions declare
     */
    public static ObjectNode of(List<QuantityForm> forms, Set<String> declaredConditions) {
        return new ClaimsSchema(forms, declaredConditions).file();
    }

    /**
     * {@return the schema as indented JSON text}
     *
     * @param forms the quantities that claims may be about
     * @param declaredConditions further conditions that sessions declare
     */
    public static String text(List<QuantityForm> forms, Set<String> declaredConditions) {
        return JsonMapper.builder()
                        .build()
                        .writerWithDefaultPrettyPrinter()
                        .writeValueAsString(of(forms, declaredConditions))
                + "\n";
    }

    private ObjectNode file() {
        ObjectNode schema = NODES.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "Ellwand claims file");
        ObjectNode file = mapping(ClaimsReader.KEYS, List.of("product", "editions", "claims"));
        schema.setAll(file);
        put(schema, "decision", mapping(ClaimsReader.DECISION_KEYS, List.of("confidence")));
        put(schema, "samples", listOf(mapping(ClaimsReader.SAMPLE_KEYS, List.of("unit")), 0));
        put(schema, "asked", date());
        put(schema, "reply", reply());
        put(schema, "assumed", rule(List.of()));
        put(schema, "editions", listOf(edition(), 1));
        put(schema, "claims", listOf(claim(), 1));
        return schema;
    }

    private ObjectNode edition() {
        ObjectNode edition = mapping(EditionReader.KEYS, List.of("id", "source", "dated"));
        put(edition, "id", pattern(ID));
        put(edition, "dated", date());
        put(edition, "may be quoted", words(List.of("yes", "no")));
        put(edition, "conditions", mapping(RuleKey.conditions(declaredConditions), List.of()));
        return edition;
    }

    private ObjectNode claim() {
        ObjectNode claim = mapping(ClaimReader.KEYS, List.of("id", "edition", "quote"));
        put(claim, "id", pattern(ID));
        put(claim, "stated", rule(List.of()));
        put(claim, "assumed", rule(List.of()));
        ObjectNode other = rule(List.of("name"));
        other.withArray("required").add("name");
        other.put("minProperties", 2);
        put(claim, "otherwise", listOf(other, 0));
        put(claim, "table", table());
        put(claim, "asked", date());
        put(claim, "reply", reply());
        ObjectNode waiver = mapping(ProductFields.WAIVER_KEYS, ProductFields.WAIVER_KEYS);
        put(waiver, "until", pattern(DAY));
        put(claim, "waiver", waiver);
        ArrayNode either = claim.putArray("oneOf");
        either.addObject().putArray("required").add("untested because");
        ArrayNode rule = either.addObject().putArray("anyOf");
        rule.addObject().putArray("required").add("stated");
        rule.addObject().putArray("required").add("assumed");
        return claim;
    }

    private ObjectNode rule(List<String> more) {
        Set<String> keys = new LinkedHashSet<>(more);
        Arrays.stream(RuleKey.values()).map(RuleKey::text).forEach(keys::add);
        keys.addAll(declaredConditions);
        ObjectNode rule = mapping(keys, List.of());
        for (RuleKey key : RuleKey.values()) {
            ObjectNode value = value(key);
            value.put("description", key.description() + ": " + key.accepted());
            put(rule, key.text(), value);
        }
        declaredConditions.forEach(name -> put(rule, name, names()));
        return rule;
    }

    private ObjectNode value(RuleKey key) {
        return switch (key) {
            case QUANTITY -> words(forms.stream().map(QuantityForm::name).toList());
            case SENSE -> words(List.of("at least", "at most"));
            case LIMIT_WEIGHTING, LEVEL_WEIGHTING, WEIGHTING -> words(List.of("A", "C", "Z"));
            case RESOLUTION -> words(List.of("third-octave", "octave", "as measured"));
            case STATISTIC ->
                words(Arrays.stream(Statistic.values()).map(Statistic::text).toList());
            case REFERRED_TO -> words(List.of("eardrum", "field"));
            case COMPARED_BY -> words(List.of("difference", "ratio"));
            case METHOD -> words(MethodReader.METHODS);
            case EXPOSURE -> words(MethodReader.EXPOSURES);
            case BETWEEN -> between();
            default -> key.isCondition() ? (key.takesAll() ? names() : namesWithoutAll()) : text();
        };
    }

    private ObjectNode between() {
        List<String> comparable = Comparisons.comparable(declaredConditions);
        ObjectNode between = mapping(comparable, List.of());
        between.put("minProperties", 1).put("maxProperties", 1);
        comparable.forEach(name -> {
            ObjectNode two = listOf(text(), 2);
            two.put("maxItems", 2).put("uniqueItems", true);
            put(between, name, two);
        });
        return between;
    }

    private ObjectNode table() {
        ObjectNode table = mapping(TableReader.KEYS, TableReader.KEYS);
        TableReader.KEYS.forEach(key -> put(table, key, listOf(text(), 1)));
        return table;
    }

    private static ObjectNode reply() {
        ObjectNode reply = mapping(ProductFields.REPLY_KEYS, ProductFields.REPLY_KEYS);
        put(reply, "dated", date());
        return reply;
    }

    /** A mapping of texts that holds no other keys. */
    private static ObjectNode mapping(Collection<String> keys, List<String> required) {
        ObjectNode node = NODES.objectNode();
        node.put("type", "object").put("additionalProperties", false);
        ObjectNode properties = node.putObject("properties");
        keys.forEach(key -> properties.set(key, text()));
        ArrayNode needed = node.putArray("required");
        required.forEach(needed::add);
        return node;
    }

    private static void put(ObjectNode mapping, String key, ObjectNode value) {
        ((ObjectNode) mapping.get("properties")).set(key, value);
    }

    /** Editors read {@code 014} and {@code yes} as they like; the reader takes each as the text that was written. */
    private static ObjectNode text() {
        ObjectNode node = NODES.objectNode();
        node.putArray("type").add("string").add("number").add("boolean");
        node.put("minLength", 1);
        return node;
    }

    private static ObjectNode pattern(String pattern) {
        return text().put("pattern", pattern);
    }

    private static ObjectNode date() {
        return pattern(DATE);
    }

    private static ObjectNode words(Collection<String> accepted) {
        ObjectNode node = NODES.objectNode();
        ArrayNode words = node.putArray("enum");
        accepted.forEach(words::add);
        return node;
    }

    private static ObjectNode listOf(ObjectNode item, int least) {
        ObjectNode node = NODES.objectNode();
        node.put("type", "array").put("minItems", least);
        node.set("items", item);
        return node;
    }

    private static ObjectNode namesWithoutAll() {
        ObjectNode node = names();
        node.putObject("not").put("const", "all");
        return node;
    }

    private static ObjectNode names() {
        ObjectNode node = NODES.objectNode();
        ArrayNode either = node.putArray("anyOf");
        either.add(text());
        either.add(listOf(text(), 1));
        return node;
    }
}
