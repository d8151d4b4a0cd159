package org.ellwand.acoustics;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * Total harmonic distortion in %: 100 √(Σ 10^(L_k/10) / 10^(L_1/10)) over stated harmonics k, referred to the fundamental.
 * Referred to the total of fundamental and harmonics, as loudspeaker and amplifier standards do (IEC 60268-3, from memory),
 * d becomes d / √(1 + d²): the same at 1 %, 44.7 instead of 50 at 50 %.
 */
public final class HarmonicDistortion {
    private HarmonicDistortion() {}

    /**
     * In % of the fundamental.
     *
     * @param fundamentalDb level of the fundamental
     * @param harmonicsDb levels of the harmonics to be summed, in any order; −∞ is none
     * @return in %; 0 without harmonics
     */
    public static double percent(double fundamentalDb, double... harmonicsDb) {
        return 100 * Math.pow(10, (Energy.sumDb(harmonicsDb) - fundamentalDb) / 20);
    }

    /**
     * In % of the fundamental, over the orders from first to last; empty where the fundamental or one of these was not
     * measured: a harmonic that is not there is not known to be small.
     *
     * @param levelDbByOrder 1 is the fundamental
     * @param first lowest order that is summed, 2 or more
     * @param last highest order that is summed, not below {@code first}
     * @return in %
     * @throws IllegalArgumentException where the orders are no such range
     */
    public static OptionalDouble percent(Map<Integer, Double> levelDbByOrder, int first, int last) {
        if (first < 2 || last < first) {
            throw new IllegalArgumentException("harmonics run from 2 on, not from " + first + " to " + last);
        }
        double fundamentalDb = at(levelDbByOrder, 1);
        double[] harmonicsDb = new double[last - first + 1];
        boolean complete = !Double.isNaN(fundamentalDb);
        for (int order = first; order <= last; order++) {
            harmonicsDb[order - first] = at(levelDbByOrder, order);
            complete &= !Double.isNaN(harmonicsDb[order - first]);
        }
        return complete ? OptionalDouble.of(percent(fundamentalDb, harmonicsDb)) : OptionalDouble.empty();
    }

    private static double at(Map<Integer, Double> levelDbByOrder, int order) {
        return levelDbByOrder.getOrDefault(order, Double.NaN);
    }
}
