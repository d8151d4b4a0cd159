package org.ellwand.plan;

import java.util.List;
import java.util.Optional;
import org.ellwand.audit.CellResult;
import org.ellwand.audit.Contribution;
import org.ellwand.audit.Judgement;

/**
 * The variance of a number as something is repeated: one part stays, the others are divided by the number of repeats.
 *
 * @param staying u² that no repeat makes smaller
 * @param repeated u² of a single repeat besides, of known size
 * @param scatter standard deviation of single repeats that is known from them alone; 0 where sizes are declared
 */
record Uncertain(double staying, double repeated, double scatter) {
    /** From the standard uncertainties at two numbers of repeats. */
    static Uncertain of(int few, double uOfFew, int many, double uOfMany) {
        double repeated = Math.max(0, (uOfFew * uOfFew - uOfMany * uOfMany) / (1.0 / few - 1.0 / many));
        return new Uncertain(Math.max(0, uOfFew * uOfFew - repeated / few), repeated, 0);
    }

    /** From what is declared of the deciding number at two numbers of insertions, and what these scatter by; absent where they do not. */
    static Optional<Uncertain> seen(int few, Judgement ofFew, int many, Judgement ofMany) {
        return seen(ofMany, "insertions")
                .map(seen -> of(few, declared(ofFew), many, declared(ofMany)).withScatter(seen.scatter()));
    }

    /**
     * From the scatter of what was repeated; absent where none was seen.
     *
     * @param what insertions, heads or units
     */
    static Optional<Uncertain> seen(Judgement judged, String what) {
        double declared = declared(judged);
        return contributions(judged).stream()
                .filter(c -> c.degreesOfFreedom().isPresent() && c.instance().equals(what))
                .findFirst()
                .map(c -> new Uncertain(
                        declared * declared,
                        0,
                        c.effect() * Math.sqrt(c.degreesOfFreedom().orElseThrow() + 1.0)));
    }

    private Uncertain withScatter(double deviation) {
        return new Uncertain(staying, repeated, deviation);
    }

    /** What the deciding number is made uncertain by; nothing where its sizes were drawn. */
    static List<Contribution> contributions(Judgement judged) {
        return judged.leastProbable(1).stream()
                .map(CellResult::contributions)
                .findFirst()
                .orElse(List.of());
    }

    /** The root of the squares of what is not seen in repeats. */
    static double declared(Judgement judged) {
        return Math.sqrt(contributions(judged).stream()
                .filter(c -> c.degreesOfFreedom().isEmpty())
                .mapToDouble(c -> c.effect() * c.effect())
                .sum());
    }

    /** The standard uncertainty of the mean of so many repeats, had their scatter been known. */
    double of(int repeats) {
        return Math.hypot(known(repeats), scatter / Math.sqrt(repeats));
    }

    /** How often so many repeats decide. */
    double firm(Chance chance, double truth, int repeats) {
        return chance.firm(truth, known(repeats), scatter, repeats);
    }

    private double known(int repeats) {
        return Math.sqrt(staying + repeated / repeats);
    }
}
