package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Bands;
import org.ellwand.acoustics.Resolution;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Dimension;
import org.ellwand.amount.Interval;
import org.ellwand.amount.PhraseException;
import org.ellwand.amount.Phrases;
import org.ellwand.amount.Unit;
import org.ellwand.input.YamlNode;
import org.ellwand.words.Figures;

/**
 * Reads sizes by bands. Every band must be covered once; both ends of {@code 3 to 6 kHz} are in it, that of
 * {@code above 6 kHz} is not.
 */
final class SizeList {
    static final List<String> KEYS = List.of("bands", "size");
    private static final String BANDS = "frequencies such as 'below 3 kHz', '3 to 6 kHz', 'above 6 kHz'";
    private static final double PER_HZ = 1e6;

    private final Resolution resolution;
    private final Found problems;

    /** A range in Hz with its size in dB. */
    private record Part(Interval hz, double sizeDb) {}

    SizeList(Resolution resolution, Found problems) {
        this.resolution = resolution;
        this.problems = problems;
    }

    Optional<List<Cause.Size>> read(YamlNode.Sequence list) {
        int before = problems.size();
        List<Part> parts = new ArrayList<>();
        for (YamlNode item : list.items()) {
            Keys.of(item, "a size of some bands", problems).flatMap(this::part).ifPresent(parts::add);
        }
        if (problems.size() > before) {
            return Optional.empty();
        }
        List<Cause.Size> sizes = parts.stream().map(SizeList::size).toList();
        checkCover(list, sizes);
        return problems.size() > before ? Optional.empty() : Optional.of(sizes);
    }

    private Optional<Part> part(Keys keys) {
        keys.onlyKnown("a size of some bands", KEYS);
        keys.need("bands", "give " + BANDS);
        keys.need("size", "give a size in dB");
        Optional<Interval> hz = keys.text("bands").flatMap(text -> interval(text, keys));
        Optional<Amount> size = UncertaintyReader.amount(keys, unit -> unit == Unit.DB, "a size in dB");
        return hz.isPresent() && size.isPresent()
                ? Optional.of(new Part(hz.get(), size.get().value()))
                : Optional.empty();
    }

    private Optional<Interval> interval(String text, Keys keys) {
        try {
            Interval interval = Phrases.interval(text).interval();
            if (interval.unit().dimension() == Dimension.FREQUENCY) {
                return Optional.of(interval.in(Unit.HZ));
            }
            problems.add(keys.placeOf("bands"), "'bands: " + text + "': expected " + BANDS);
        } catch (PhraseException e) {
            problems.add(keys.placeOf("bands"), "'bands': " + e.getMessage() + "; expected " + BANDS);
        }
        return Optional.empty();
    }

    private static Cause.Size size(Part part) {
        Interval hz = part.hz;
        double lower = rounded(hz.lower());
        double upper = rounded(hz.upper());
        double from = hz.lowerOpen() ? Math.nextUp(lower) : Math.max(lower, 0);
        double to = hz.upperOpen() ? upper : Math.nextUp(upper);
        return new Cause.Size(from, to, part.sizeDb);
    }

    /** 4.1 kHz is 4100 Hz also where the product of the two binary numbers is not. */
    private static double rounded(double hz) {
        return Double.isInfinite(hz) ? hz : Math.round(hz * PER_HZ) / PER_HZ;
    }

    private void checkCover(YamlNode.Sequence list, List<Cause.Size> sizes) {
        Band band = Band.nearest(resolution, Bands.LOWEST_HZ);
        for (; band.exactHz() <= Bands.HIGHEST_HZ; band = new Band(resolution, band.index() + 1)) {
            double hz = band.nominalHz();
            long times = sizes.stream()
                    .filter(s -> hz >= s.fromHz() && hz < s.toHz())
                    .count();
            if (times != 1) {
                String name = Figures.frequency(band.nominalHz());
                problems.add(
                        list.place(),
                        times == 0
                                ? "the band of " + name
                                        + " has no size; the list covers every band once, from 'below ...' to 'above ...'"
                                : "the band of " + name + " has " + times
                                        + " sizes; the list covers every band once, as" + " 'below " + name
                                        + "' beside '" + name + " to ...' does");
                return;
            }
        }
    }
}
