package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.ellwand.audit.Audit;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.ProductAudit;
import org.ellwand.audit.Verdict;
import org.ellwand.claim.Edition;
import org.ellwand.claim.Product;
import org.ellwand.claim.Sample;
import org.ellwand.input.InputException;
import org.ellwand.words.Sentences;

/** A product as templates see it. */
final class ProductModel {
    private final Audit audit;
    private final Sentences sentences;
    private final ProductAudit audited;
    private final Product product;

    ProductModel(Audit audit, ProductAudit audited, Sentences sentences) {
        this.sentences = sentences;
        this.audit = audit;
        this.audited = audited;
        this.product = audited.product();
    }

    Map<String, Object> model(Slugs anchors, FigureDrawer figures) throws InputException {
        String anchor = anchors.of(product.name());
        List<Numbered> numbered = new ArrayList<>();
        for (ClaimAudit claim : audited.claims()) {
            numbered.add(new Numbered(
                    numbered.size() + 1, anchors.of(anchor + "-" + claim.claim().id()), claim));
        }
        List<Object> claims = Abreast.each(numbered, claim -> claim(claim, figures));
        Counted counted = Counted.ofProduct(product.name(), audit.sessions());
        return Fields.of("anchor", anchor)
                .and(about())
                .and("counts", counts())
                .and("failed", failed())
                .and("robust", robust())
                .and("sample", counted.model())
                .and(
                        "editions",
                        product.editions().stream().map(ProductModel::edition).toList())
                .and("claims", claims)
                .and("figures", figures.draw(anchor, audited, audit.sessions()))
                .and("topics", TopicModel.ofProduct(audited))
                .and("cautions", Cautions.of(counted, audit.sessions()))
                .map();
    }

    private record Numbered(int number, String anchor, ClaimAudit claim) {}

    private Object claim(Numbered one, FigureDrawer figures) throws InputException {
        ClaimModel model = new ClaimModel(audit, audited, one.claim(), sentences);
        List<Object> drawn =
                figures.draw(one.anchor(), product.name(), one.claim(), model.findings(), audit.sessions());
        return model.model(one.number(), one.anchor(), drawn);
    }

    private Map<String, Object> about() {
        return Fields.of("name", product.name())
                .and("file", product.file())
                .and("maker", product.maker().orElse(""))
                .and("about", product.about().orElse(""))
                .and("confidence", Numbers.plain(product.confidence() * 100) + " %")
                .and("doubt", Numbers.plain(Math.round((1 - product.confidence()) * 1e6) / 1e4) + " %")
                .and(
                        "samples",
                        product.samples().stream().map(ProductModel::sample).toList())
                .and("disclosure", product.disclosure().orElse(""))
                .and("recommendation", product.recommendation().orElse(""))
                .and("asked", product.asked().orElse(""))
                .and("reply", ClaimModel.reply(product.reply()))
                .map();
    }

    private static Object sample(Sample sample) {
        return Fields.of("unit", sample.unit())
                .and("obtained", sample.obtained().orElse(""))
                .map();
    }

    private static Object edition(Edition edition) {
        return Fields.of("id", edition.id())
                .and("source", edition.source())
                .and("dated", edition.dated())
                .and("kept", edition.kept().orElse(""))
                .and("conditions", Phrases.pairs(edition.conditions()))
                .and("mayBeQuoted", edition.mayBeQuoted())
                .map();
    }

    private Map<String, Object> counts() {
        Fields counts = new Fields();
        for (Verdict verdict : Verdict.values()) {
            counts.and(verdict.word(), audited.count(verdict));
        }
        return counts.map();
    }

    /** Numbers of the failed claims, in the order of the file, which is the auditor's. */
    private List<Integer> failed() {
        return IntStream.range(0, audited.claims().size())
                .filter(i -> audited.claims().get(i).verdict() == Verdict.FAIL)
                .mapToObj(i -> i + 1)
                .toList();
    }

    /** How many of the claims that have other fair rules come to one verdict under all of them. */
    private Map<String, Object> robust() {
        List<ClaimAudit> tried = audited.claims().stream()
                .filter(claim -> !claim.otherwise().isEmpty())
                .toList();
        long same = tried.stream()
                .filter(claim -> claim.otherwise().stream().allMatch(other -> other.verdict() == claim.verdict()))
                .count();
        return Fields.of("same", same).and("of", tried.size()).map();
    }
}
