package org.ellwand.check;

import java.util.List;
import java.util.Set;
import org.ellwand.acoustics.Resolution;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * A reflection of the room. Sound that reaches the field microphone a second time over a path longer by cτ leaves a {@link Ripple} in
 * its levels; a head that moves by a few centimetres then stands in another level. Third octaves hide it, so it is looked for in
 * twelfths. (3 dB: common practice, no source; it must explain {@value #SHARE} of what the curve has beyond its average over an octave.) Accuses fewer than
 * 1 in 1000 sound sessions.
 */
final class RoomReflection implements DataCheck {
    private static final double DEPTH_DB = 3;
    private static final double SHARE = 0.5;
    private static final double SPEED_OF_SOUND = 343;

    @Override
    public String name() {
        return "reflections of the room";
    }

    @Override
    public String needs() {
        return "twelfth octaves of the field microphone";
    }

    @Override
    public Checked check(Material material) {
        Session session = material.session();
        Tally tally = new Tally(this, session);
        Sheets.grouped(Sheets.fields(session), Sheets.REPEATS).forEach((of, readings) -> {
            LevelCurve curve = Sheets.meanOf(readings);
            if (Curves.isAsFineAs(Resolution.TWELFTH_OCTAVE, curve)) {
                Ripple.of(curve).ifPresent(ripple -> {
                    tally.looked();
                    if (ripple.depthDb() > DEPTH_DB && ripple.share() > SHARE) {
                        tally.add(
                                of.without(Set.of("device")),
                                List.of(),
                                Errs.EITHER,
                                Consequence.NOTED,
                                new Measure(ripple.depthDb(), DEPTH_DB, "dB"),
                                Remark.of("room-ripple")
                                        .with("depth", ripple.depthDb())
                                        .with("threshold", DEPTH_DB)
                                        .with("every", 1000 / ripple.delayMs())
                                        .with("path", ripple.delayMs() * SPEED_OF_SOUND / 1000));
                    }
                });
            }
        });
        return tally.done();
    }
}
