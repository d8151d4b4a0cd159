package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.audit.Audit;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.ProductAudit;
import org.ellwand.words.Sentences;

/** What an audit found, claim by claim, for texts that are no report of it. */
public final class ResultModel {
    private ResultModel() {}

    /**
     * {@return the results of a product's claims by the claims' ids}
     *
     * @param audit of which the product is one
     * @param product with its claims
     * @param sentences in whose words the reasons are
     */
    public static SortedMap<String, Map<String, Object>> of(Audit audit, ProductAudit product, Sentences sentences) {
        SortedMap<String, Map<String, Object>> results = new TreeMap<>();
        for (ClaimAudit claim : product.claims()) {
            results.put(claim.claim().id(), of(audit, product, claim, sentences));
        }
        return results;
    }

    /**
     * {@return what must be said wherever these results are}
     *
     * @param audit of which the product is one
     * @param product its name
     */
    public static List<Object> cautions(Audit audit, String product) {
        return Cautions.of(Counted.ofProduct(product, audit.sessions()), audit.sessions());
    }

    private static Map<String, Object> of(Audit audit, ProductAudit product, ClaimAudit claim, Sentences sentences) {
        return Fields.of("verdict", claim.verdict().word())
                .and(
                        "measured",
                        claim.plain()
                                .map(plain -> MeasuredModel.of(plain, plain.rule()))
                                .orElse(MeasuredModel.none()))
                .and("sample", new ClaimModel(audit, product, claim, sentences).sample())
                .and("reason", claim.reason(sentences).orElse(""))
                .map();
    }
}
