package org.ellwand.audit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/** What every cause adds to the uncertainty of one number, the largest first. */
final class Contributions {
    private static final int NONE = -1;

    /** Sums of squares in the order in which they begin; a draw of one band is added to those of the others. */
    private final Map<Instance, Integer> places = new LinkedHashMap<>();

    private double[] squares = new double[16];

    private record Instance(String cause, String instance, OptionalInt degreesOfFreedom) {}

    private Contributions() {}

    static List<Contribution> of(Estimates estimates, int point) {
        Contributions contributions = new Contributions();
        contributions.addFactors(estimates, point);
        for (Group group : estimates.groups) {
            double scale = group.scatter(point).scale();
            OptionalInt degrees = OptionalInt.of(group.degreesOfFreedom());
            int place = contributions.place(new Instance("observed scatter", group.label(), degrees));
            contributions.squares[place] += scale * scale;
        }
        return contributions.sorted();
    }

    private void addFactors(Estimates estimates, int point) {
        Origins origins = estimates.origins();
        List<String> labels = origins.labels();
        int[] placeOfOrigin = new int[labels.size()];
        Arrays.fill(placeOfOrigin, NONE);
        int[] factors = estimates.effect.moving(point);
        double[] effects = estimates.effect.sizes(point);
        for (int f = 0; f < factors.length; f++) {
            int origin = origins.place(factors[f]);
            if (placeOfOrigin[origin] == NONE) {
                placeOfOrigin[origin] =
                        place(new Instance(origins.cause(origin), labels.get(origin), OptionalInt.empty()));
            }
            squares[placeOfOrigin[origin]] += effects[f] * effects[f];
        }
    }

    private int place(Instance instance) {
        int place = places.computeIfAbsent(instance, i -> places.size());
        if (place == squares.length) {
            squares = Arrays.copyOf(squares, 2 * place);
        }
        return place;
    }

    private List<Contribution> sorted() {
        return places.entrySet().stream()
                .filter(e -> squares[e.getValue()] > 0)
                .map(e -> new Contribution(
                        e.getKey().cause(),
                        e.getKey().instance(),
                        Math.sqrt(squares[e.getValue()]),
                        e.getKey().degreesOfFreedom()))
                .sorted(Comparator.comparingDouble((Contribution c) -> -c.effect())
                        .thenComparing(Contribution::cause)
                        .thenComparing(Contribution::instance))
                .toList();
    }
}
