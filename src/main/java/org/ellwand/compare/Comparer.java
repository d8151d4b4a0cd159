package org.ellwand.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.audit.AuditRecord;

/**
 * Holds a second audit against a first. Products of one name go together; one product against one of another name too. Claims
 * go together by id within a product of the same name, else by topic.
 */
public final class Comparer {
    private final Optional<Amount> margin;

    /** @param margin within which two values of its kind count as the same; absent where none was stated */
    public Comparer(Optional<Amount> margin) {
        this.margin = margin;
    }

    /**
     * {@return the comparison; products that only one of them has are left out, and claims that only one has are listed}
     *
     * @param first the earlier one, or what is held against
     * @param second what is held against it: shifts are its values less the first's
     */
    public Comparison compare(AuditRecord first, AuditRecord second) {
        List<Comparison.OfProduct> products = new ArrayList<>();
        for (AuditRecord.OfProduct product : second.products()) {
            partner(product, first, second).ifPresent(other -> products.add(product(other, product)));
        }
        return new Comparison(products, SameNames.of(first, second));
    }

    private static Optional<AuditRecord.OfProduct> partner(
            AuditRecord.OfProduct product, AuditRecord first, AuditRecord second) {
        Optional<AuditRecord.OfProduct> same = first.products().stream()
                .filter(p -> p.name().equals(product.name()))
                .findFirst();
        boolean alone = first.products().size() == 1 && second.products().size() == 1;
        return same.isPresent() || !alone ? same : Optional.of(first.products().get(0));
    }

    private Comparison.OfProduct product(AuditRecord.OfProduct first, AuditRecord.OfProduct second) {
        boolean same = first.name().equals(second.name());
        List<AuditRecord.OfClaim> left = new ArrayList<>(first.claims());
        List<AuditRecord.OfClaim> onlySecond = new ArrayList<>();
        List<ClaimComparison> claims = new ArrayList<>();
        for (AuditRecord.OfClaim claim : second.claims()) {
            Optional<AuditRecord.OfClaim> partner = left.stream()
                    .filter(c -> same && c.id().equals(claim.id()))
                    .findFirst()
                    .or(() -> left.stream()
                            .filter(c -> c.topic().equals(claim.topic()) && !hasOwn(c, second, same))
                            .findFirst());
            partner.ifPresentOrElse(
                    c -> {
                        left.remove(c);
                        claims.add(claim(c, claim));
                    },
                    () -> onlySecond.add(claim));
        }
        return new Comparison.OfProduct(first.name(), second.name(), second.confidence(), claims, left, onlySecond);
    }

    /** Whether a claim of the first audit has a partner of its own id waiting. */
    private static boolean hasOwn(AuditRecord.OfClaim claim, AuditRecord.OfProduct second, boolean same) {
        return same && second.claims().stream().anyMatch(c -> c.id().equals(claim.id()));
    }

    private ClaimComparison claim(AuditRecord.OfClaim first, AuditRecord.OfClaim second) {
        List<ClaimComparison.OfCell> cells = first.unit().equals(second.unit()) ? cells(first, second) : List.of();
        return new ClaimComparison(
                first,
                second,
                Change.of(first.verdict(), second.verdict()),
                first.words().equals(second.words()) && first.rule().equals(second.rule()),
                cells,
                deciding(cells, second));
    }

    private List<ClaimComparison.OfCell> cells(AuditRecord.OfClaim first, AuditRecord.OfClaim second) {
        Shifts shifts = new Shifts(marginIn(second.unit()));
        boolean comparable = first.hz().equals(second.hz());
        Lasting lasting = Lasting.of(first, second);
        Map<Map<String, String>, List<AuditRecord.OfCell>> before = alike(first, lasting);
        List<ClaimComparison.OfCell> cells = new ArrayList<>();
        alike(second, lasting)
                .forEach((conditions, after) -> new CellPairs(shifts, comparable)
                        .add(lasting.named(conditions), before.getOrDefault(conditions, List.of()), after, cells));
        return cells;
    }

    /** Cells with a value, by what lasts of their conditions. */
    private static Map<Map<String, String>, List<AuditRecord.OfCell>> alike(
            AuditRecord.OfClaim claim, Lasting lasting) {
        Map<Map<String, String>, List<AuditRecord.OfCell>> alike = new LinkedHashMap<>();
        claim.cells().stream()
                .filter(c -> c.value().isPresent())
                .forEach(c -> alike.computeIfAbsent(lasting.of(c.conditions()), k -> new ArrayList<>())
                        .add(c));
        return alike;
    }

    /** The margin in the unit of a limit; a margin in dB is one for levels too. */
    private OptionalDouble marginIn(String unit) {
        Unit of = Unit.spelled(unit).orElse(Unit.NONE);
        Unit wanted = of.isLevel() ? Unit.DB : of;
        Optional<Amount> fitting = margin.filter(a -> a.unit().dimension() == wanted.dimension());
        return fitting.isPresent() ? OptionalDouble.of(fitting.get().in(wanted)) : OptionalDouble.empty();
    }

    /**
     * {@return the units that the margin is none of, where it serves no claim at all; empty where it serves one, where none was
     * stated, and where no claim is in both}
     *
     * @param comparison what was found
     */
    public Set<String> unfitting(Comparison comparison) {
        Set<String> units = comparison.products().stream()
                .flatMap(product -> product.claims().stream())
                .map(claim -> claim.second().unit())
                .collect(Collectors.toCollection(TreeSet::new));
        boolean serves = margin.isEmpty()
                || units.stream().anyMatch(unit -> marginIn(unit).isPresent());
        return serves ? Set.of() : units;
    }

    private static Optional<ClaimComparison.OfCell> deciding(
            List<ClaimComparison.OfCell> cells, AuditRecord.OfClaim second) {
        if (second.value().isEmpty()) {
            return Optional.empty();
        }
        Optional<ClaimComparison.OfCell> lot =
                cells.stream().filter(c -> c.units().isPresent()).findFirst();
        if (lot.isPresent()) {
            return lot;
        }
        double value = second.value().getAsDouble();
        return cells.stream().min(Comparator.comparingDouble(c -> Math.abs(c.second() - value)));
    }
}
