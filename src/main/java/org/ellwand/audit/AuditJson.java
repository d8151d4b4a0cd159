package org.ellwand.audit;

import static org.ellwand.audit.JsonForm.NODES;
import static org.ellwand.audit.JsonForm.text;
import static org.ellwand.audit.JsonForm.texts;
import static org.ellwand.audit.JudgementJson.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.check.Finding;
import org.ellwand.claim.Claim;
import org.ellwand.words.Remark;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The audit's record for machines, {@code audit.json}, version 1. New keys may be added; none changes its meaning.
 *
 * <p>Numbers are at full precision and what is absent is {@code null}. The quote of an edition that may not be quoted
 * is not written; its paraphrase is. The same audit gives the same bytes.
 */
public final class AuditJson {
    /** What the key {@code format} says. */
    public static final String FORMAT = "ellwand-audit";
    /** What the key {@code version} says; counted up where a key changes its meaning. */
    public static final int VERSION = 1;

    private AuditJson() {}

    /**
     * {@return the record in UTF-8, two spaces of indentation, with a line feed at its end}
     *
     * @param audit what is recorded
     */
    public static byte[] write(Audit audit) {
        ObjectNode document = NODES.objectNode().put("format", FORMAT).put("version", VERSION);
        document.set("inputs", list(audit.inputs(), AuditJson::input));
        document.set("products", list(audit.products(), AuditJson::product));
        document.set("findings", list(audit.findings(), AuditJson::finding));
        return JsonForm.write(document);
    }

    private static JsonNode input(Audit.Input input) {
        return NODES.objectNode().put("file", input.file()).put("sha256", input.sha256());
    }

    private static JsonNode product(ProductAudit product) {
        ObjectNode node = NODES.objectNode().put("product", product.product().name());
        node.set("counts", counts(product));
        node.set("confidence", JsonForm.number(product.product().confidence()));
        node.set("claims", list(product.claims(), AuditJson::claim));
        return node;
    }

    private static JsonNode counts(ProductAudit product) {
        ObjectNode node = NODES.objectNode();
        for (Verdict verdict : Verdict.values()) {
            node.put(verdict.word(), product.count(verdict));
        }
        return node;
    }

    private static JsonNode claim(ClaimAudit audited) {
        Claim claim = audited.claim();
        ObjectNode node = NODES.objectNode()
                .put("id", claim.id())
                .put("edition", claim.edition().id())
                .put("topic", claim.topic());
        boolean quotable = claim.edition().mayBeQuoted();
        node.set("quote", text(quotable ? Optional.of(claim.quote()) : Optional.empty()));
        node.set("paraphrase", text(claim.paraphrase()));
        audited.plain().ifPresentOrElse(plain -> judged(node, plain), () -> unruled(node, audited));
        node.set("otherwise", list(audited.otherwise(), AuditJson::otherwise));
        List<Remark> remarks = remarks(audited);
        node.set("notes", texts(Remark.texts(remarks)));
        node.set("remarks", list(remarks, JudgementJson::remark));
        return node;
    }

    private static void judged(ObjectNode node, Judgement plain) {
        node.set("rule", JudgementJson.rule(plain.rule(), plain.text()));
        JudgementJson.write(node, plain);
    }

    /** A claim that no rule could be made of has the same keys, so that no reader needs to ask first. */
    private static void unruled(ObjectNode node, ClaimAudit audited) {
        node.putNull("rule").put("verdict", audited.verdict().word());
        for (String key : List.of("probability", "value", "correction", "point", "standardUncertainty", "interval")) {
            node.putNull(key);
        }
        node.set("reason", text(audited.reason()));
        node.putArray("reasons");
        node.putArray("cells");
    }

    private static JsonNode otherwise(Judgement judgement) {
        ObjectNode node = NODES.objectNode().put("name", judgement.rule().name());
        node.set("rule", JudgementJson.rule(judgement.rule(), judgement.text()));
        JudgementJson.write(node, judgement);
        node.set("notes", texts(judgement.notes()));
        node.set("remarks", list(judgement.remarks(), JudgementJson::remark));
        return node;
    }

    /** What is to be known of the claim, then of its plain rule. */
    private static List<Remark> remarks(ClaimAudit audited) {
        List<Remark> remarks = new ArrayList<>(audited.remarks());
        audited.plain().ifPresent(plain -> remarks.addAll(plain.remarks()));
        return remarks;
    }

    private static JsonNode finding(Finding finding) {
        ArrayNode bands = NODES.arrayNode();
        finding.bands().forEach(hz -> bands.add(JsonForm.frequency(hz)));
        ObjectNode node = NODES.objectNode()
                .put("check", finding.check())
                .put("session", finding.session())
                .put("text", finding.text())
                .put("consequence", finding.consequence().word())
                .put("reading", finding.reading());
        node.set("bands", bands);
        node.put("errs", finding.errs().word());
        node.put("key", finding.remark().key());
        node.set("figures", figures(finding.remark().figures()));
        finding.measure().ifPresent(measure -> measure(node, measure));
        return node;
    }

    private static void measure(ObjectNode node, Finding.Measure measure) {
        node.set("figure", JsonForm.number(measure.figure()));
        node.set("threshold", JsonForm.number(measure.threshold()));
        node.put("unit", measure.unit());
    }

    private static JsonNode figures(Map<String, Object> figures) {
        ObjectNode node = NODES.objectNode();
        figures.forEach((name, figure) -> node.set(
                name,
                figure instanceof Number number
                        ? JsonForm.number(number.doubleValue())
                        : text(Optional.of(figure.toString()))));
        return node;
    }
}
