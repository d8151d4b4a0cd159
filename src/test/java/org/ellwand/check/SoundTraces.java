package org.ellwand.check;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;

/**
 * Invented traces and harmonics in which nothing went wrong: a product whose gain follows a step by an exponential, a meter whose
 * neighbouring samples resemble one another, a tone through a curved characteristic.
 */
final class SoundTraces {
    /** Of neighbouring samples, as of a meter that averages. */
    private static final double ALIKE = 0.8;

    private final NormalStream draw;
    private final double noiseDb;
    private final double tauS;

    SoundTraces(String seed) {
        draw = new NormalStream(Seeds.of("sound traces", seed));
        noiseDb = 0.1 + 0.1 * Math.abs(draw.next());
        tauS = 0.02 * Math.exp(draw.next());
    }

    void into(MadeSession made) {
        made.sound("tone-90", "pure tone", 90);
        String worn = "device=Skerry, setting=flood, insertion=1";
        step(made, worn, List.of(20 * tauS, 55.0, 90.0), 68, 68 + 15 + 5 * Math.abs(draw.next()));
        step(made, worn, List.of(20 * tauS, 90.0, 55.0), 68, 68 - 12 - 3 * Math.abs(draw.next()));
        trace(made, worn + ", stimulus=pink-76", List.of(), 0.025, 240, t -> 70);
        trace(made, worn + ", stimulus=reel-90", List.of(), 0.025, 240, t -> 75 + 6 * Math.sin(2 * t));
        made.harmonics(worn + ", stimulus=tone-90", 500, 90, read(50), read(44), read(39), read(35));
    }

    /** The level after the step starts at {@code firstDb} above where it goes. */
    private void step(MadeSession made, String of, List<Double> step, double restDb, double firstDb) {
        trace(
                made,
                of,
                step,
                tauS / 50,
                31 * 50,
                t -> t < step.get(0) ? restDb - 3 : restDb + (firstDb - restDb) * Math.exp(-(t - step.get(0)) / tauS));
    }

    private void trace(
            MadeSession made, String of, List<Double> step, double apartS, int samples, DoubleUnaryOperator levelDb) {
        double[] times = new double[samples];
        double[] levels = new double[samples];
        double noise = draw.next();
        for (int i = 0; i < samples; i++) {
            noise = ALIKE * noise + Math.sqrt(1 - ALIKE * ALIKE) * draw.next();
            times[i] = i * apartS;
            levels[i] = Math.round(100 * (levelDb.applyAsDouble(times[i]) + noiseDb * noise)) / 100.0;
        }
        made.trace(of, step, times, levels);
    }

    private double read(double levelDb) {
        return levelDb + 0.3 * draw.next();
    }
}
