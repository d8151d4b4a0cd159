package org.ellwand.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.ellwand.audit.AuditRecord;

/** A comparison as templates see it: texts, lists, and numbers that may be absent ({@code ""}). */
public final class ComparisonModel {
    private final Names names;

    /**
     * What the two audits are called, and the margin as it was written; empty where none was stated.
     *
     * @param first the first audit, as it is called
     * @param second the second audit, as it is called
     * @param margin as it was written; empty where none was stated
     * @param dated the date that is printed; empty for none
     * @param sideBySide whether the two are of different firmwares, editions or products, so that neither corrects the other
     */
    public record Names(String first, String second, String margin, String dated, boolean sideBySide) {}

    private ComparisonModel(Names names) {
        this.names = names;
    }

    /**
     * {@return the model; {@code templates/README.md} documents it}
     *
     * @param comparison what was found
     * @param names what the two are called
     */
    public static Map<String, Object> of(Comparison comparison, Names names) {
        return new ComparisonModel(names).model(comparison);
    }

    private Map<String, Object> model(Comparison comparison) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("first", names.first());
        model.put("second", names.second());
        model.put("margin", names.margin());
        model.put("dated", names.dated());
        model.put("sideBySide", names.sideBySide());
        model.put("sameNames", comparison.sameNames());
        model.put(
                "products",
                comparison.products().stream()
                        .map(product -> (Object) product(product))
                        .toList());
        return model;
    }

    private static Map<String, Object> product(Comparison.OfProduct product) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("first", product.first());
        model.put("second", product.second());
        model.put("confidence", product.confidence());
        List<Object> claims = new ArrayList<>();
        product.claims().forEach(c -> claims.add(claim(claims.size() + 1, c, product.confidence())));
        model.put("claims", claims);
        model.put("onlyFirst", only(product.onlyFirst()));
        model.put("onlySecond", only(product.onlySecond()));
        return model;
    }

    private static List<Object> only(List<AuditRecord.OfClaim> claims) {
        return claims.stream()
                .map(c -> (Object) Map.of(
                        "id", c.id(), "topic", c.topic(), "words", c.words().orElse("")))
                .toList();
    }

    private static Map<String, Object> claim(int number, ClaimComparison compared, double confidence) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("number", number);
        model.put("id", compared.second().id());
        model.put("topic", compared.second().topic());
        model.put("change", compared.change().name().toLowerCase(Locale.ROOT));
        model.put("sameWords", compared.sameWords());
        model.put("unit", compared.second().unit());
        model.put("first", side(compared.first()));
        model.put("second", side(compared.second()));
        model.put("shift", shift(compared.deciding(), confidence));
        model.put(
                "cells",
                compared.cells().stream()
                        .map(cell -> (Object) shift(Optional.of(cell), confidence))
                        .toList());
        return model;
    }

    private static Map<String, Object> side(AuditRecord.OfClaim claim) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("edition", claim.edition());
        model.put("words", claim.words().orElse(""));
        model.put("verbatim", claim.verbatim());
        model.put("rule", claim.rule().orElse(""));
        model.put("verdict", claim.verdict().word());
        model.put("value", number(claim.value()));
        model.put("unit", claim.unit());
        model.put("probability", number(claim.probability()));
        model.put("hz", number(claim.hz()));
        return model;
    }

    /** Empty where no cell is in both. */
    private static Map<String, Object> shift(Optional<ClaimComparison.OfCell> cell, double confidence) {
        Map<String, Object> model = new LinkedHashMap<>();
        cell.ifPresent(c -> {
            Shift shift = c.shift();
            List<String> conditions = new ArrayList<>();
            new TreeMap<>(c.conditions()).forEach((name, value) -> conditions.add(name + " " + value));
            model.put("conditions", String.join(", ", conditions));
            model.put("first", c.first());
            model.put("second", c.second());
            model.put("value", shift.value());
            model.put("standardUncertainty", number(shift.standardUncertainty()));
            model.put("lower", number(shift.lower()));
            model.put("upper", number(shift.upper()));
            model.put("chance", number(shift.chance()));
            model.put("within", number(shift.within()));
            model.put("moreThanNoise", shift.isMoreThanNoise(confidence));
            model.put("equivalent", shift.isEquivalent(confidence));
            model.put("nothingShared", shift.nothingShared());
            model.put("units", units(c.units()));
        });
        return model;
    }

    /** None where the cell is no mean over a lot. */
    private static Map<String, Object> units(Optional<ClaimComparison.Units> units) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("first", units.map(ClaimComparison.Units::first).orElse(0));
        model.put("second", units.map(ClaimComparison.Units::second).orElse(0));
        model.put("shared", units.map(ClaimComparison.Units::shared).orElse(0));
        model.put("same", units.filter(ClaimComparison.Units::areSame).isPresent());
        return model;
    }

    private static Object number(OptionalDouble number) {
        return number.isPresent() && Double.isFinite(number.getAsDouble()) ? number.getAsDouble() : "";
    }
}
