package org.ellwand.audit;

import static org.ellwand.audit.JsonForm.NODES;
import static org.ellwand.audit.JsonForm.frequency;
import static org.ellwand.audit.JsonForm.interval;
import static org.ellwand.audit.JsonForm.number;
import static org.ellwand.audit.JsonForm.object;
import static org.ellwand.audit.JsonForm.text;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.ellwand.acoustics.Bound;
import org.ellwand.amount.Interval;
import org.ellwand.claim.Rule;
import org.ellwand.words.Measure;
import org.ellwand.words.Remark;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One rule and what it came to, as it stands in the record. */
final class JudgementJson {
    private JudgementJson() {}

    static ObjectNode rule(Rule rule, String text) {
        Interval limit = rule.limit();
        ObjectNode node = NODES.objectNode().put("name", rule.name()).put("text", text);
        node.set("stated", object(rule.stated()));
        node.set("assumed", object(rule.assumed()));
        node.set("lower", number(limit.lower()));
        node.set("upper", number(limit.upper()));
        return node.put("unit", limit.unit().symbol());
    }

    /** Writes everything from {@code verdict} to {@code cells} into a node. */
    static void write(ObjectNode into, Judgement judgement) {
        into.put("verdict", judgement.verdict().word());
        into.set("probability", number(judgement.probability()));
        into.set("value", number(judgement.value()));
        into.set("correction", number(judgement.correction()));
        into.set("point", judgement.point().map(JudgementJson::point).orElse(NODES.nullNode()));
        into.set("standardUncertainty", number(judgement.standardUncertainty()));
        into.set("interval", interval(judgement.lower(), judgement.upper()));
        into.set("reason", text(judgement.reason()));
        into.set("reasons", list(judgement.reasons(), JudgementJson::remark));
        into.set("cells", JsonForm.inTurn(judgement.cells(), JudgementJson::cell));
    }

    private static JsonNode point(Point point) {
        ObjectNode node = NODES.objectNode();
        node.set("hz", frequency(point.hz()));
        if (point.lessHz().isPresent()) {
            node.set("lessHz", frequency(point.lessHz()));
        }
        node.set("value", number(point.value()));
        bound(node, point.bound());
        return node;
    }

    /** Only where the value is no measured one: {@code above} or {@code below} it the true number lies. */
    private static void bound(ObjectNode node, Bound bound) {
        switch (bound) {
            case AT_LEAST -> node.put("bound", "above");
            case AT_MOST -> node.put("bound", "below");
            case MEASURED -> {}
        }
    }

    /** The key with its figures, and what they say in English. */
    static JsonNode remark(Remark remark) {
        ObjectNode node = NODES.objectNode().put("key", remark.key());
        Map<String, Object> figures = new LinkedHashMap<>();
        remark.figures().forEach((name, figure) -> figures.put(name, plain(figure)));
        node.set("figures", object(figures));
        return node.put("text", remark.text());
    }

    private static Object plain(Object figure) {
        if (figure instanceof Measure measure) {
            return measure.value();
        }
        if (figure instanceof Remark remark) {
            return remark.text();
        }
        return figure instanceof Collection<?> several
                ? several.stream().map(JudgementJson::plain).toList()
                : figure;
    }

    private static JsonNode cell(CellResult cell) {
        ObjectNode node = NODES.objectNode();
        node.set("conditions", object(cell.conditions().values()));
        node.put("insertions", cell.insertions());
        node.set("value", number(cell.value()));
        bound(node, cell.bound());
        node.set("standardUncertainty", number(cell.standardUncertainty()));
        node.set("probability", number(cell.probability()));
        node.set("bands", list(cell.bands(), JudgementJson::band));
        node.set("contributions", list(cell.contributions(), JudgementJson::contribution));
        return node;
    }

    private static JsonNode band(Point band) {
        ObjectNode node = (ObjectNode) point(band);
        node.set("standardUncertainty", number(band.standardUncertainty()));
        node.set("interval", interval(band.lower(), band.upper()));
        node.set("probability", number(band.probability()));
        return node;
    }

    private static JsonNode contribution(Contribution contribution) {
        ObjectNode node =
                NODES.objectNode().put("cause", contribution.cause()).put("instance", contribution.instance());
        node.set("effect", number(contribution.effect()));
        contribution.degreesOfFreedom().ifPresent(degrees -> node.put("degreesOfFreedom", degrees));
        return node;
    }

    static <T> ArrayNode list(List<T> values, Function<T, JsonNode> form) {
        ArrayNode array = NODES.arrayNode();
        values.forEach(value -> array.add(form.apply(value)));
        return array;
    }
}
