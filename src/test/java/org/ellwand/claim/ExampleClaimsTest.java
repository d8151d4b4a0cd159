package org.ellwand.claim;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ellwand.examples.ExampleFolder;
import org.ellwand.input.InputException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example claims load, there is one of every kind, and the guide's table says what they say. */
class ExampleClaimsTest {
    /** Kinds that no reading of this method can decide. */
    private static final List<String> OUT_OF_REACH = List.of("C08", "C15", "C17", "C25", "C30", "C43", "C64");

    @TempDir
    Path folder;

    private List<Product> products = List.of();

    @BeforeEach
    void read() throws IOException, InputException {
        products = new ExampleFolder(folder).products();
    }

    private List<Claim> claims() {
        return products.stream().flatMap(p -> p.claims().stream()).toList();
    }

    private static String kind(Claim claim) {
        return "C" + claim.id().substring(1, 3);
    }

    @Test
    void everyKindHasOneExample() {
        List<String> kinds = IntStream.rangeClosed(1, 68)
                .mapToObj(i -> String.format("C%02d", i))
                .toList();
        assertThat(claims().stream().map(Claim::id)).allMatch(id -> id.matches("c\\d\\d-[a-z0-9-]+"));
        assertThat(claims().stream().map(ExampleClaimsTest::kind).sorted()).containsExactlyElementsOf(kinds);
    }

    @Test
    void onlyKindsOutOfReachHaveNoRule() {
        assertThat(claims().stream()
                        .filter(c -> c.untestedBecause().isPresent())
                        .map(ExampleClaimsTest::kind)
                        .sorted())
                .containsExactlyElementsOf(OUT_OF_REACH);
    }

    @Test
    void everyRuleHasAStrictAndAGenerousOneBesideItAndSaysWhy() {
        assertThat(claims().stream().filter(c -> c.rule().isPresent())).allSatisfy(claim -> {
            assertThat(claim.otherwise().stream().map(Rule::name))
                    .as(claim.id())
                    .containsExactly("strict", "generous");
            assertThat(claim.because()).as(claim.id()).isPresent();
        });
    }

    @Test
    void everythingIsInvented() throws IOException {
        assertThat(products).hasSize(9).allSatisfy(product -> {
            assertThat(product.maker()).contains("Brackwater Instruments");
            assertThat(product.name()).startsWith("Skerry ");
            assertThat(product.about().orElseThrow()).contains("invented");
        });
        for (Product product : products) {
            assertThat(Files.readAllLines(folder.resolve(product.file())).get(0))
                    .startsWith("# Invented");
        }
    }

    @Test
    void quotesAreShortAndDiffer() {
        List<String> quotes = claims().stream().map(Claim::quote).toList();
        assertThat(quotes).doesNotHaveDuplicates().allMatch(quote -> quote.length() <= 80);
    }

    @Test
    void theGuidesTableIsThatOfTheFiles() throws IOException {
        Map<String, String> told = Files.readAllLines(Path.of("claims/README.md")).stream()
                .filter(line -> line.matches("\\| C\\d\\d \\|.*"))
                .map(line -> line.split(" *\\| *"))
                .collect(Collectors.toMap(cells -> cells[1], cells -> cells[3]));
        Map<String, String> written = claims().stream()
                .collect(Collectors.toMap(
                        ExampleClaimsTest::kind,
                        c -> c.rule().map(rule -> "`" + rule.quantity() + "`").orElse("none")));
        assertThat(told).isEqualTo(written);
    }

    @Test
    void theGuidesTableNamesKeysThatTheRulesHold() throws IOException {
        Map<String, Claim> byKind = claims().stream().collect(Collectors.toMap(ExampleClaimsTest::kind, c -> c));
        Files.readAllLines(Path.of("claims/README.md")).stream()
                .filter(line -> line.matches("\\| C\\d\\d \\|.*"))
                .map(line -> line.split(" *\\| *"))
                .forEach(cells -> byKind.get(cells[1])
                        .rule()
                        .ifPresent(rule -> keys(cells[4])
                                .forEach((key, value) -> assertThat(text(rule, key))
                                        .as(cells[1] + " " + key)
                                        .contains(value))));
    }

    private static String text(Rule rule, String key) {
        String stated = rule.stated().getOrDefault(key, "");
        return stated.isEmpty() ? rule.assumed().getOrDefault(key, "") : stated;
    }

    /** {@code `key: value`} pieces of a cell. */
    private static Map<String, String> keys(String cell) {
        return java.util.regex.Pattern.compile("`([a-z ]+): ([^`]+)`")
                .matcher(cell)
                .results()
                .collect(Collectors.toMap(m -> m.group(1), m -> m.group(2)));
    }
}
