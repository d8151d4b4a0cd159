package org.ellwand.claim;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.ellwand.amount.PhraseException;
import org.ellwand.input.Fields;
import org.ellwand.input.Place;
import org.ellwand.input.Problems;
import org.ellwand.input.YamlNode;

/** What several parts of a claims file have in common: dates, replies, ids. */
final class ProductFields {
    static final List<String> WAIVER_KEYS = List.of("owner", "reason", "until");
    static final List<String> REPLY_KEYS = List.of("dated", "text");

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9-]+");

    private final Problems problems;

    ProductFields(Problems problems) {
        this.problems = problems;
    }

    Optional<String> date(Fields fields, String key) {
        return fields.text(key).flatMap(text -> phrase(fields.place(key), key, text, Dates::date));
    }

    Optional<String> requiredDate(Fields fields, String key) {
        return fields.requiredText(key).flatMap(text -> phrase(fields.place(key), key, text, Dates::date));
    }

    <T> Optional<T> phrase(Place place, String key, String text, RuleWords.Reading<T> reading) {
        try {
            return Optional.of(reading.of(text));
        } catch (PhraseException e) {
            problems.add(place, "'" + key + "': " + e.getMessage());
            return Optional.empty();
        }
    }

    Optional<Reply> reply(Fields fields) {
        return fields.value("reply")
                .flatMap(node -> Fields.of(node, "a reply", REPLY_KEYS, problems))
                .map(reply -> new Reply(
                        requiredDate(reply, "dated").orElse(""),
                        reply.requiredText("text").orElse("")));
    }

    Optional<Waiver> waiver(Fields fields) {
        return fields.value("waiver")
                .flatMap(node -> Fields.of(node, "a waiver", WAIVER_KEYS, problems))
                .flatMap(this::waiverOf);
    }

    private Optional<Waiver> waiverOf(Fields waiver) {
        Optional<String> owner = waiver.requiredText("owner");
        Optional<String> reason = waiver.requiredText("reason");
        Optional<LocalDate> until =
                waiver.requiredText("until").flatMap(text -> phrase(waiver.place("until"), "until", text, Dates::day));
        return owner.flatMap(o -> reason.flatMap(r -> until.map(u -> new Waiver(o, r, u))));
    }

    Optional<String> id(Fields fields) {
        Optional<String> id = fields.requiredText("id");
        id.filter(text -> !ID.matcher(text).matches())
                .ifPresent(text -> problems.add(
                        fields.place("id"), "the id '" + text + "' holds more than letters, digits and '-'"));
        return id;
    }

    /** Notes every name that stands in a list a second time. */
    void refuseTwice(String key, List<Fields> all) {
        Set<String> seen = new HashSet<>();
        for (Fields fields : all) {
            if (fields.value(key).orElse(null) instanceof YamlNode.Scalar scalar
                    && !scalar.text().isBlank()
                    && !seen.add(scalar.text().strip())) {
                problems.add(
                        scalar.place(),
                        "the " + key + " '" + scalar.text().strip() + "' stands in this list a second time");
            }
        }
    }
}
