package org.ellwand.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ellwand.audit.RuleText;
import org.ellwand.claim.Answer;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Edition;
import org.ellwand.claim.Product;
import org.ellwand.claim.Reply;

/**
 * The letter of questions about one product, as templates see it: what each sentence leaves open, and what was assumed
 * meanwhile. Claims that the maker has answered, in words or by a new edition, are not asked about again. {@code templates/README.md} documents the
 * model; every sentence stands in the templates.
 */
public final class Letter {
    private static final Map<String, Object> NO_RESULT =
            Map.of("verdict", "", "measured", "", "sample", "", "reason", "");

    private final Product product;
    private final LetterOptions options;
    private final Map<String, Map<String, Object>> results;
    private final List<OpenClaim> open = new ArrayList<>();
    private final List<Claim> answered = new ArrayList<>();
    private final List<Claim> clear = new ArrayList<>();
    private final Common common;

    private Letter(Product product, LetterOptions options, Map<String, Map<String, Object>> results) {
        this.product = product;
        this.options = options;
        this.results = results;
        product.claims().forEach(this::sort);
        common = Common.of(open);
    }

    private void sort(Claim claim) {
        OpenClaim left = OpenClaim.of(claim);
        if (!Answer.to(claim, product).isNone()) {
            answered.add(claim);
        } else if (left.isOpen()) {
            open.add(left);
        } else {
            clear.add(claim);
        }
    }

    /**
     * {@return whether a letter has anything to ask}
     *
     * @param product with its claims and what the maker answered
     */
    public static boolean isNeeded(Product product) {
        return product.claims().stream()
                .anyMatch(claim -> Answer.to(claim, product).isNone()
                        && OpenClaim.of(claim).isOpen());
    }

    /**
     * All that the letter's templates see.
     *
     * @param product with its claims
     * @param options how the letter is wanted
     * @param results what the readings came to, by the claims' ids; empty where the letter is to say nothing of them
     * @param cautions to be printed beside results
     * @return the model's keys with their values
     */
    public static Map<String, Object> model(
            Product product, LetterOptions options, Map<String, Map<String, Object>> results, List<Object> cautions) {
        return new Letter(product, options, results).model(cautions);
    }

    private Map<String, Object> model(List<Object> cautions) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("product", product.name());
        model.put("maker", product.maker().orElse(""));
        model.put("about", product.about().orElse(""));
        model.put("file", product.file());
        model.put("dated", options.dated().orElse(""));
        model.put("answerBy", options.answerBy().orElse(""));
        model.put("from", options.from().orElse(""));
        model.put("asked", product.asked().orElse(""));
        model.put("reply", reply(product.reply()));
        model.put("since", Answer.since(product).stream().map(Letter::edition).toList());
        model.put("common", common.model(open));
        model.put(
                "sentences",
                IntStream.range(0, open.size()).mapToObj(this::sentence).toList());
        model.put("differing", differing());
        model.put("answered", answered.stream().map(this::answered).toList());
        model.put("clear", clear.stream().map(Letter::words).toList());
        model.put("withResults", !results.isEmpty());
        model.put("cautions", results.isEmpty() ? List.of() : cautions);
        return model;
    }

    private Object sentence(int index) {
        OpenClaim asked = open.get(index);
        Claim claim = asked.claim();
        Map<String, Object> model = new LinkedHashMap<>(words(claim));
        model.put("number", index + 1);
        model.put("points", asked.points(common).stream().map(OpenPoint::model).toList());
        model.put("common", common.of(asked));
        model.put(
                "rule",
                claim.rule().map(rule -> RuleText.of(rule, options.sentences())).orElse(""));
        model.put("because", claim.because().orElse(""));
        model.put("untestedBecause", claim.untestedBecause().orElse(""));
        model.put("asked", claim.asked().orElse(""));
        model.put("result", results.getOrDefault(claim.id(), NO_RESULT));
        return model;
    }

    /** Sentences of different editions about the same thing: which of them holds is a question of its own. */
    private List<Object> differing() {
        Map<String, List<Integer>> byTopic = new LinkedHashMap<>();
        IntStream.range(0, open.size())
                .forEach(i -> byTopic.computeIfAbsent(open.get(i).claim().topic(), t -> new ArrayList<>())
                        .add(i));
        return byTopic.entrySet().stream()
                .filter(topic -> editions(topic.getValue()) > 1)
                .map(topic -> (Object) Map.of(
                        "topic", topic.getKey(),
                        "sentences", topic.getValue().stream().map(i -> i + 1).toList()))
                .toList();
    }

    private long editions(List<Integer> indices) {
        return indices.stream()
                .map(i -> open.get(i).claim().edition().id())
                .distinct()
                .count();
    }

    private Object answered(Claim claim) {
        Map<String, Object> model = new LinkedHashMap<>(words(claim));
        model.put("asked", claim.asked().orElse(""));
        model.put("reply", reply(claim.reply()));
        model.put(
                "editions",
                Answer.to(claim, product).edition().stream().map(Letter::words).toList());
        return model;
    }

    private static Object edition(Edition edition) {
        return Map.of("source", edition.source(), "dated", edition.dated());
    }

    private static Map<String, Object> words(Claim claim) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("id", claim.id());
        model.put("topic", claim.topic());
        model.put("words", claim.words());
        model.put("verbatim", claim.edition().mayBeQuoted());
        model.put("source", claim.edition().source());
        model.put("edition", claim.edition().id());
        model.put("editionDated", claim.edition().dated());
        return model;
    }

    private static Map<String, Object> reply(Optional<Reply> reply) {
        return Map.of(
                "dated", reply.map(Reply::dated).orElse(""),
                "text", reply.map(Reply::text).orElse(""));
    }
}
