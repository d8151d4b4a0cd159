package org.ellwand.report;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ellwand.amount.Interval;
import org.ellwand.audit.Audit;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.Judgement;
import org.ellwand.audit.ProductAudit;
import org.ellwand.audit.Verdict;
import org.ellwand.claim.Waiver;

/**
 * The verdicts as build servers read test results (JUnit XML): a product is a suite and a claim a test case. A claim
 * that fails is a failure; a marginal or untested one is skipped, with the reason.
 */
public final class JunitXml {
    private final LocalDate today;

    private JunitXml(LocalDate today) {
        this.today = today;
    }

    /**
     * {@return the document in UTF-8} A failing claim whose waiver holds is skipped; one whose waiver has expired fails, whatever its
     * verdict, unless it passes.
     *
     * @param audit whose claims become tests
     * @param today decides whether a waiver still holds
     */
    public static byte[] write(Audit audit, LocalDate today) {
        return new JunitXml(today).document(audit);
    }

    private byte[] document(Audit audit) {
        List<String> lines = new ArrayList<>();
        lines.add("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
        lines.add("<testsuites name=\"ellwand\">");
        audit.products().forEach(product -> suite(product, lines));
        lines.add("</testsuites>");
        return (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private void suite(ProductAudit product, List<String> lines) {
        long failures = product.claims().stream().filter(this::isFailure).count();
        long skipped = product.claims().size() - product.count(Verdict.PASS) - failures;
        lines.add(String.format(
                Locale.ROOT,
                "  <testsuite name=\"%s\" tests=\"%d\" failures=\"%d\" errors=\"0\" skipped=\"%d\">",
                escaped(product.product().name()),
                product.claims().size(),
                failures,
                skipped));
        product.claims().forEach(claim -> testCase(product, claim, lines));
        lines.add("  </testsuite>");
    }

    private void testCase(ProductAudit product, ClaimAudit claim, List<String> lines) {
        String start = "    <testcase classname=\"" + escaped(product.product().name()) + "\" name=\""
                + escaped(claim.claim().id()) + "\"";
        if (claim.verdict() == Verdict.PASS) {
            lines.add(start + "/>");
            return;
        }
        lines.add(start + ">");
        lines.add("      " + outcome(claim));
        lines.add("    </testcase>");
    }

    private boolean isFailure(ClaimAudit claim) {
        Optional<Waiver> waiver = claim.claim().waiver();
        return waiver.isPresent()
                ? waiver.get().isExpiredOn(today) && claim.verdict() != Verdict.PASS
                : claim.verdict() == Verdict.FAIL;
    }

    private String outcome(ClaimAudit claim) {
        String message = escaped(message(claim));
        if (!isFailure(claim)) {
            return "<skipped message=\"" + message + "\"/>";
        }
        String rule = escaped(claim.plain().map(Judgement::text).orElse(""));
        String words = escaped(claim.claim().words());
        return "<failure type=\"fail\" message=\"" + message + "\">" + words + "&#10;" + rule + "</failure>";
    }

    /** {@code fail: 16.6 dB, limit 17 to 21 dB, probability 0.004}. */
    private String message(ClaimAudit claim) {
        List<String> parts = new ArrayList<>();
        claim.plain().ifPresent(judgement -> {
            Interval limit = judgement.rule().limit();
            judgement.value().ifPresent(value -> parts.add(number(value) + unit(limit)));
            parts.add("limit " + limit(limit));
            probability(judgement.probability(), parts);
        });
        claim.reason().ifPresent(parts::add);
        claim.claim().waiver().ifPresent(w -> parts.add(w.isExpiredOn(today) ? w.words() + " (expired)" : w.words()));
        return claim.verdict().word() + ": " + String.join(", ", parts);
    }

    private static void probability(OptionalDouble probability, List<String> parts) {
        probability.ifPresent(p -> parts.add(String.format(Locale.ROOT, "probability %.3f", p)));
    }

    private static String limit(Interval limit) {
        String lower = number(limit.lower());
        String upper = number(limit.upper());
        if (limit.hasLower() && limit.hasUpper()) {
            return lower + " to " + upper + unit(limit);
        }
        return limit.hasLower() ? "at least " + lower + unit(limit) : "at most " + upper + unit(limit);
    }

    private static String unit(Interval limit) {
        String symbol = limit.unit().symbol();
        return symbol.isEmpty() ? "" : " " + symbol;
    }

    /** Three decimals at most, none that is zero. */
    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.3f", value + 0.0);
        return text.replaceAll("\\.?0+$", "").replaceAll("^-0$", "0");
    }

    /** Characters that XML 1.0 does not know, even escaped, become U+FFFD. */
    private static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.append(escaped(c)));
        return out.toString();
    }

    private static String escaped(int codePoint) {
        return switch (codePoint) {
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '&' -> "&amp;";
            case '"' -> "&quot;";
            case '\n' -> "&#10;";
            case '\t' -> "&#9;";
            case '\r' -> "&#13;";
            default -> Character.toString(isXml(codePoint) ? codePoint : 0xFFFD);
        };
    }

    /** Char of XML 1.0 (fifth edition), production 2. */
    private static boolean isXml(int c) {
        return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }
}
