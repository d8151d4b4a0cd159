package org.ellwand.check;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.demo.Bands;
import org.ellwand.demo.Ear;
import org.ellwand.demo.PlugBody;
import org.ellwand.measurement.Chain;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.statistics.NormalStream;
import org.ellwand.statistics.Seeds;

/**
 * Invented sittings in which nothing went wrong: an ear drawn round the average one, a plug with two settings, three
 * insertions, two open-ear takes, field microphone before and after, pink noise at three levels, music and quiet, a sheet of
 * attenuation, a calibration, and errors of the sizes that the session declares.
 */
final class SoundSittings {
    static final List<Double> LEVELS = List.of(62.0, 76.0, 94.0);

    private static final double INSERTION_DB = 1.2;
    private static final double SEAL_DB = 0.6;
    private static final double READING_DB = 0.3;
    private static final double MUSIC_DB = 90;

    private static final double MUSIC_SUM_DB = Bands.energySumDb(MadeSession.THIRDS.stream()
            .mapToDouble(band -> musicDb(band.exactHz()))
            .toArray());

    private final NormalStream draw;
    private final Ear ear;
    private final PlugBody body = new PlugBody(31, 1600, 0.8);

    private SoundSittings(String seed, String ear) {
        NormalStream ofEar = new NormalStream(Seeds.of("ear", ear));
        this.draw = new NormalStream(Seeds.of("sound sitting", seed));
        this.ear = new Ear(
                ear, ear, 16 + 1.5 * ofEar.next(), 2700 * Math.pow(2, 0.1 * ofEar.next()), 0, 0.5 * ofEar.next());
    }

    static Session of(String seed) {
        return of("sitting-" + seed, "crew-" + seed);
    }

    static Session of(String id, String ear) {
        return new SoundSittings(id, ear).session(new MadeSession(id, ear));
    }

    /** A sitting that does not say in which order its settings come. */
    static Session unordered(String seed) {
        String id = "sitting-" + seed;
        return new SoundSittings(id, "crew-" + seed).session(new MadeSession(id, "crew-" + seed), List.of());
    }

    private Session session(MadeSession made) {
        return session(made, List.of("ebb", "flood"));
    }

    private Session session(MadeSession made, List<String> weakestFirst) {
        made.cause("insertion", INSERTION_DB, SharedBy.INSERTION)
                .cause("seal", SEAL_DB, SharedBy.INSERTION)
                .cause("reading", READING_DB, SharedBy.READING)
                .quiet()
                .sound("reel-90", "music", MUSIC_DB);
        LEVELS.forEach(made::pink);
        LEVELS.forEach(level -> outside(made, "pink-" + Math.round(level), f -> level - 13.2));
        outside(made, "reel-90", f -> MUSIC_DB - MUSIC_SUM_DB + musicDb(f));
        LEVELS.forEach(level -> made.reading(
                "device=field microphone, take=2, stimulus=pink-" + Math.round(level), read(f -> level - 13.2)));
        made.reading("device=open ear, stimulus=hush", read(f -> Double.NEGATIVE_INFINITY));
        for (int insertion = 1; insertion <= 3; insertion++) {
            inPlace(made, insertion);
        }
        made.reading(
                "device=Skerry, setting=flood, insertion=4, stimulus=pink-94",
                Reading.Values.ATTENUATION,
                MadeSession.THIRDS,
                f -> Math.round(100 * (22 + READING_DB * draw.next())) / 100.0);
        new SoundTraces(made.id()).into(made);
        made.chain(chain(weakestFirst));
        return made.session();
    }

    /** A calibrator that reads the same afterwards but for 0.1 dB, half a year old; half a minute for each level. */
    private Chain chain(List<String> weakestFirst) {
        Chain.Calibration calibration = new Chain.Calibration(
                Optional.of(new Amount(94, Unit.DB_SPL, 1)),
                Optional.of(new Amount(94 + 0.1 * draw.next(), Unit.DB_SPL, 1)),
                Optional.of("2025-12-11"));
        return new Chain(
                Optional.of(calibration),
                Optional.of(new Amount(30, Unit.SECOND, 0)),
                Optional.of(new Amount(130, Unit.DB_SPL, 0)),
                weakestFirst,
                false,
                List.of());
    }

    private static double musicDb(double frequencyHz) {
        return -1.5 * Math.abs(Bands.octaves(frequencyHz, 400));
    }

    private void outside(MadeSession made, String sound, DoubleUnaryOperator bandDb) {
        made.reading("device=field microphone, stimulus=" + sound, read(bandDb));
        for (int take = 1; take <= 2; take++) {
            made.reading(
                    "device=open ear, take=" + take + ", stimulus=" + sound,
                    read(f -> bandDb.applyAsDouble(f) + ear.openGainDb(f)));
        }
    }

    private void inPlace(MadeSession made, int insertion) {
        double wholeDb = INSERTION_DB * draw.next();
        double lowDb = SEAL_DB * draw.next();
        for (String setting : List.of("flood", "ebb")) {
            String named = "device=Skerry, setting=" + setting + ", insertion=" + insertion + ", stimulus=";
            double holeDb = setting.equals("flood") ? -22.5 : -13;
            for (double level : LEVELS) {
                made.reading(
                        named + "pink-" + Math.round(level),
                        read(f -> level
                                - 13.2
                                + ear.openGainDb(f)
                                + Bands.energySumDb(holeDb - 0.5 * Bands.octaves(f, 1000), body.gainDb(f))
                                + wholeDb
                                + (f < 450 ? lowDb : 0)));
            }
            made.reading(named + "hush", read(f -> Double.NEGATIVE_INFINITY));
        }
    }

    /** What a probe microphone with a floor of its own reads of a level. */
    private DoubleUnaryOperator read(DoubleUnaryOperator trueDb) {
        return f -> Math.round(100
                        * (Bands.energySumDb(trueDb.applyAsDouble(f), 12 + 8 * Bands.bell(f, 100, 1.5))
                                + READING_DB * draw.next()))
                / 100.0;
    }
}
