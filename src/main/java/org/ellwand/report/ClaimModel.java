package org.ellwand.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ellwand.audit.Audit;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.ProductAudit;
import org.ellwand.audit.RuleText;
import org.ellwand.check.Finding;
import org.ellwand.claim.Answer;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Reply;
import org.ellwand.words.Remark;
import org.ellwand.words.Sentences;

/** A claim as templates see it. An absent text is empty. The maker's words come as they may be printed, never else. */
final class ClaimModel {
    private final Audit audit;
    private final Sentences sentences;
    private final ProductAudit product;
    private final ClaimAudit audited;
    private final Claim claim;
    private final Optional<Judgement> plain;

    ClaimModel(Audit audit, ProductAudit product, ClaimAudit audited, Sentences sentences) {
        this.sentences = sentences;
        this.audit = audit;
        this.product = product;
        this.audited = audited;
        this.claim = audited.claim();
        this.plain = audited.plain();
    }

    /** @param figures as {@link FigureDrawer} gives them */
    Map<String, Object> model(int number, String anchor, List<Object> figures) {
        return Fields.of("number", number)
                .and("anchor", anchor)
                .and("id", claim.id())
                .and("topic", claim.topic())
                .and(words())
                .and(rule())
                .and(result())
                .and(correspondence())
                .and("figures", figures)
                .map();
    }

    private Map<String, Object> words() {
        return Fields.of("words", claim.words())
                .and("verbatim", claim.edition().mayBeQuoted())
                .and("source", claim.edition().source())
                .and("dated", claim.edition().dated())
                .and("edition", claim.edition().id())
                .and("editionConditions", Phrases.pairs(claim.edition().conditions()))
                .map();
    }

    private Map<String, Object> rule() {
        return Fields.of(
                        "rule",
                        plain.map(p -> RuleText.subject(p.rule(), sentences)).orElse(""))
                .and("quantity", plain.map(p -> p.rule().quantity()).orElse(""))
                .and("printedTable", plain.map(p -> !p.rule().table().isEmpty()).orElse(false))
                .and("limit", plain.map(p -> shown(p).limitModel()).orElse(Shown.noLimit()))
                .and(
                        "stated",
                        plain.map(p -> RuleModel.pairs(p.rule().stated())).orElse(List.of()))
                .and(
                        "assumed",
                        plain.map(p -> RuleModel.pairs(p.rule().assumed())).orElse(List.of()))
                .and("because", claim.because().orElse(""))
                .map();
    }

    private Map<String, Object> result() {
        double confidence = product.product().confidence();
        return Fields.of("verdict", audited.verdict().word())
                .and(
                        "probability",
                        plain.map(p -> RuleModel.probability(p, confidence)).orElse(""))
                .and("measured", plain.map(p -> MeasuredModel.of(p, p.rule())).orElse(MeasuredModel.none()))
                .and("claimed", plain.map(ClaimedModel::of).orElse(ClaimedModel.none()))
                .and(
                        "conditions",
                        plain.map(p -> ConditionText.of(p, name(), audit.sessions()))
                                .orElse(List.of()))
                .and("sample", sample())
                .and(
                        "reasons",
                        plain.map(p -> RemarkModel.of(p.reasons(), sentences, shown(p)))
                                .orElse(noRule()))
                .and("notes", notes())
                .and("cells", plain.map(p -> RuleModel.cells(p, confidence)).orElse(List.of()))
                .and("cellsInAll", plain.map(p -> p.cells().size()).orElse(0))
                .and("contributions", plain.map(RuleModel::contributions).orElse(List.of()))
                .and("otherwise", otherwise(confidence))
                .and("findings", FindingList.of(findings(), 1, f -> FindingModel.of(f, sentences)))
                .map();
    }

    private List<Object> otherwise(double confidence) {
        return audited.otherwise().stream()
                .map(other -> (Object) RuleModel.otherwise(
                        other, plain.map(Judgement::rule).orElse(other.rule()), confidence, sentences))
                .toList();
    }

    private static Shown shown(Judgement judgement) {
        return Shown.of(judgement.rule(), judgement.rule());
    }

    /** The auditor's own reason why there is no rule. */
    private List<Object> noRule() {
        List<Remark> because = claim.untestedBecause().stream()
                .map(text -> Remark.of("no-rule").with("because", text))
                .toList();
        return RemarkModel.of(because, sentences);
    }

    private List<Object> notes() {
        List<Object> ofRule =
                plain.map(p -> RemarkModel.of(p.remarks(), sentences, shown(p))).orElse(List.of());
        return Stream.concat(ofRule.stream(), RemarkModel.of(audited.remarks(), sentences).stream())
                .toList();
    }

    List<Finding> findings() {
        return plain.map(p -> Touching.of(audit.findings(), p)).orElse(List.of());
    }

    private Map<String, Object> correspondence() {
        return Fields.of("impression", claim.impression().orElse(""))
                .and("asked", claim.asked().orElse(""))
                .and("reply", reply(claim.reply()))
                .and("answer", answer())
                .map();
    }

    /** What came of a question: {@code none}, {@code reply} or {@code edition}; empty where nothing was asked. */
    private Map<String, Object> answer() {
        Answer answer = Answer.to(claim, product.product());
        List<Claim> claims = product.product().claims();
        int number = answer.edition().map(by -> claims.indexOf(by) + 1).orElse(0);
        String none = claim.asked().isPresent() ? "none" : "";
        return Fields.of("kind", number > 0 ? "edition" : answer.reply().isPresent() ? "reply" : none)
                .and("number", number)
                .map();
    }

    static Map<String, Object> reply(Optional<Reply> reply) {
        return Fields.of("dated", reply.map(Reply::dated).orElse(""))
                .and("text", reply.map(Reply::text).orElse(""))
                .map();
    }

    /** What was counted: ears with insertions, placings without an ear, figures, trials of a panel, or nothing. */
    Map<String, Object> sample() {
        return plain.filter(p -> !p.cells().isEmpty()).map(this::sample).orElse(Counted.other("none", 0));
    }

    private Map<String, Object> sample(Judgement judgement) {
        if (judgement.rule().quantity().equals("figure")) {
            int figures =
                    judgement.cells().stream().mapToInt(CellResult::insertions).sum();
            return Counted.other("figures", figures);
        }
        if (Wording.isCalculated(judgement.rule())) {
            int trials = judgement.cells().get(0).insertions();
            return trials > 0 ? Counted.other("trials", trials) : Counted.other("none", 0);
        }
        Counted counted = ConditionText.counted(judgement, name(), audit.sessions());
        return counted.insertions() + counted.placings() > 0 ? counted.model() : Counted.other("none", 0);
    }

    private String name() {
        return product.product().name();
    }
}
