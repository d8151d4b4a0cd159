package org.ellwand.audit;

/**
 * What a statement about points came to.
 *
 * @param verdict pass, fail or marginal
 * @param probability of the deciding point
 * @param point the deciding point
 */
record Decision(Verdict verdict, double probability, Points.One point) {
    Decision withVerdict(Verdict other) {
        return new Decision(other, probability, point);
    }

    /** The less probable of two; of equals this one. */
    Decision worse(Decision other) {
        return other.probability < probability ? other : this;
    }
}
