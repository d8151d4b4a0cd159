package org.ellwand.report;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;

/** A claim and its verdict in sentences that an article can take over. They speak of these measurements, never of intent. */
final class Sentence {
    private Sentence() {}

    static String of(Product product, ClaimAudit audited, String sample) {
        return said(product, audited.claim()) + " "
                + audited.plain()
                        .filter(plain -> plain.value().isPresent())
                        .map(plain -> measured(audited, plain, sample))
                        .orElse("It was not tested" + reason(audited) + ".");
    }

    private static String said(Product product, Claim claim) {
        String maker = product.maker().orElse("The maker");
        String where = " (" + claim.edition().source() + ", " + claim.edition().dated() + ")";
        return claim.edition().mayBeQuoted()
                ? maker + " says of " + product.name() + ": “" + claim.words() + "”" + where + "."
                : maker + " told us of " + product.name() + ", in our words" + where + ": " + full(claim.words());
    }

    private static String measured(ClaimAudit audited, Judgement plain, String sample) {
        if (Wording.isCalculated(plain.rule())) {
            return calculated(plain, sample) + ". " + outcome(audited);
        }
        return "We read this as " + plain.text() + ". We measured " + value(plain)
                + (sample.isEmpty() ? "" : " on " + sample.replace(", ", " with ")) + ". " + outcome(audited);
    }

    private static String calculated(Judgement plain, String sample) {
        return "We read this as " + plain.text() + ". By this rule it comes to " + MeasuredModel.value(plain)
                + (plain.rule().table().isEmpty()
                        ? " from " + sample + " of a panel"
                        : " from the maker's own table; we measured nothing for it");
    }

    /** {@code 22.4 dB at 2 kHz (95 % interval 20.9 to 23.8 dB; left, the least favourable of 2)}. */
    private static String value(Judgement plain) {
        String point = plain.point().map(MeasuredModel::point).orElse("");
        String interval = MeasuredModel.interval(plain);
        String details = Stream.of(interval.isEmpty() ? "" : "95 % interval " + interval, MeasuredModel.decides(plain))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        return MeasuredModel.value(plain)
                + (point.isEmpty() ? "" : " " + point)
                + (details.isEmpty() ? "" : " (" + details + ")");
    }

    private static String outcome(ClaimAudit audited) {
        String numbers = audited.plain()
                        .filter(plain -> Wording.isCalculated(plain.rule()))
                        .isPresent()
                ? "These numbers"
                : "These measurements";
        return switch (audited.verdict()) {
            case PASS -> numbers + " support the claim as we read it (pass).";
            case FAIL -> numbers + " do not support the claim as we read it (fail).";
            case MARGINAL -> "These measurements do not decide it (marginal)" + reason(audited) + ".";
            case UNTESTED -> "It was not tested" + reason(audited) + ".";
        };
    }

    private static String reason(ClaimAudit audited) {
        return audited.reason().map(reason -> ": " + stripped(reason)).orElse("");
    }

    private static String stripped(String text) {
        return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
    }

    private static String full(String text) {
        return text.endsWith(".") ? text : text + ".";
    }
}
