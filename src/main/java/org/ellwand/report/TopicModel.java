package org.ellwand.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ellwand.audit.ClaimAudit;
import org.ellwand.audit.ProductAudit;
import org.ellwand.claim.Edition;

/** Claims that belong together: the editions of one product's topic, and the products that share one. */
final class TopicModel {
    private TopicModel() {}

    /** Topics that more than one claim speaks of, oldest edition first. Claims are named by their numbers. */
    static List<Object> ofProduct(ProductAudit product) {
        List<Object> topics = new ArrayList<>();
        numbers(product).forEach((topic, numbers) -> {
            if (numbers.size() > 1) {
                topics.add(Fields.of("topic", topic)
                        .and("steps", steps(product, sorted(product, numbers)))
                        .map());
            }
        });
        return topics;
    }

    /** By the order of the editions in the file, which is that of their dates. */
    private static List<Integer> sorted(ProductAudit product, List<Integer> numbers) {
        List<String> editions =
                product.product().editions().stream().map(Edition::id).toList();
        return numbers.stream()
                .sorted((a, b) -> Integer.compare(
                        editions.indexOf(claim(product, a).claim().edition().id()),
                        editions.indexOf(claim(product, b).claim().edition().id())))
                .toList();
    }

    private static List<Object> steps(ProductAudit product, List<Integer> numbers) {
        List<Object> steps = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i++) {
            ClaimAudit now = claim(product, numbers.get(i));
            List<Object> changes = i == 0 ? List.of() : changes(claim(product, numbers.get(i - 1)), now);
            steps.add(
                    Fields.of("number", numbers.get(i)).and("changes", changes).map());
        }
        return steps;
    }

    /** Words are compared where both are the maker's own. */
    private static List<Object> changes(ClaimAudit before, ClaimAudit now) {
        return isVerbatim(before) && isVerbatim(now)
                ? WordChanges.between(before.claim().words(), now.claim().words())
                : List.of();
    }

    private static boolean isVerbatim(ClaimAudit claim) {
        return claim.claim().edition().mayBeQuoted();
    }

    private static ClaimAudit claim(ProductAudit product, int number) {
        return product.claims().get(number - 1);
    }

    /** Topics of two products or more. */
    static List<Object> shared(List<ProductAudit> products) {
        Map<String, List<Object>> byTopic = new LinkedHashMap<>();
        for (int i = 0; i < products.size(); i++) {
            int product = i;
            numbers(products.get(i))
                    .forEach((topic, numbers) -> byTopic.computeIfAbsent(topic, t -> new ArrayList<>())
                            .add(Fields.of("product", product + 1)
                                    .and("numbers", sorted(products.get(product), numbers))
                                    .map()));
        }
        return byTopic.entrySet().stream()
                .filter(topic -> topic.getValue().size() > 1)
                .map(topic -> (Object) Fields.of("topic", topic.getKey())
                        .and("of", topic.getValue())
                        .and("apart", Apart.of(newest(products, topic.getKey())))
                        .map())
                .toList();
    }

    /** Of each product that speaks of the topic the claim of its newest edition. */
    private static List<ClaimAudit> newest(List<ProductAudit> products, String topic) {
        List<ClaimAudit> newest = new ArrayList<>();
        for (ProductAudit product : products) {
            List<Integer> numbers = sorted(product, numbers(product).getOrDefault(topic, List.of()));
            if (!numbers.isEmpty()) {
                newest.add(claim(product, numbers.get(numbers.size() - 1)));
            }
        }
        return newest;
    }

    private static Map<String, List<Integer>> numbers(ProductAudit product) {
        Map<String, List<Integer>> byTopic = new LinkedHashMap<>();
        for (int i = 0; i < product.claims().size(); i++) {
            String topic = product.claims().get(i).claim().topic();
            byTopic.computeIfAbsent(topic, t -> new ArrayList<>()).add(i + 1);
        }
        return byTopic;
    }
}
