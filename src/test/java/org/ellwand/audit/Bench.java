package org.ellwand.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.ellwand.acoustics.Band;
import org.ellwand.acoustics.Resolution;
import org.ellwand.acoustics.Spectrum;
import org.ellwand.amount.Amount;
import org.ellwand.amount.Unit;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.measurement.Bare;
import org.ellwand.measurement.Cause;
import org.ellwand.measurement.Chain;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SharedBy;
import org.ellwand.measurement.Stimulus;
import org.ellwand.measurement.Uncertainty;
import org.ellwand.quantity.Quantities;

/** Invented sessions and claims for tests, made in memory. */
public final class Bench {
    static final Resolution THIRD = Resolution.THIRD_OCTAVE;

    private final String id;
    private final Resolution resolution;
    private final List<Cause> causes = new ArrayList<>();
    private final List<CurveReading> readings = new ArrayList<>();
    private final Map<List<Integer>, List<Band>> lists = new HashMap<>();
    private final Map<String, Stimulus> sounds = new LinkedHashMap<>();
    private boolean scaled;
    private boolean unknown;

    public Bench(String id, Resolution resolution) {
        this.id = id;
        this.resolution = resolution;
    }

    public Bench cause(String name, double sizeDb, SharedBy sharedBy, boolean independent) {
        causes.add(new Cause(
                name, sharedBy, independent, Unit.DB, List.of(new Cause.Size(0, Double.POSITIVE_INFINITY, sizeDb))));
        return this;
    }

    Bench scaled() {
        scaled = true;
        return this;
    }

    Bench unknown() {
        unknown = true;
        return this;
    }

    /** A reading under {@code key=value} conditions; levels in dB at consecutive bands from a nominal frequency. */
    public Bench reading(String conditions, double firstHz, double... levelsDb) {
        readings.add(new CurveReading(
                Bare.conditions(Map.of("session", id, "ear", "crew-01-left"), conditions),
                Reading.Values.LEVELS,
                Spectrum.measured(resolution, bands(firstHz, levelsDb.length), levelsDb),
                new Place("made.csv", readings.size() + 2, 1)));
        return this;
    }

    /** Readings of the same bands share their list, as those of one sheet do. */
    private List<Band> bands(double firstHz, int count) {
        int first = Band.nearest(resolution, firstHz).index();
        return lists.computeIfAbsent(
                List.of(first, count),
                key -> List.copyOf(IntStream.range(first, first + count)
                        .mapToObj(index -> new Band(resolution, index))
                        .toList()));
    }

    /** The open ear under the loudest sound, from 1 kHz on. */
    Bench openEar(String conditions, double... levelsDb) {
        return reading("device=open ear, stimulus=n94, " + conditions, 1000, levelsDb);
    }

    /** The same with the product in place. */
    Bench worn(String conditions, double... levelsDb) {
        return reading("device=Skerry, stimulus=n94, " + conditions, 1000, levelsDb);
    }

    /** Another pink noise, or one of the three with other levels. */
    Bench sound(String name, Amount... levels) {
        sounds.put(name, new Stimulus(name, "pink noise", List.of(levels), Optional.empty()));
        return this;
    }

    /** A reading under it is one in quiet. */
    Bench quiet(String name) {
        sounds.put(name, new Stimulus(name, "quiet", List.of(new Amount(20, Unit.DB_SPL, 0)), Optional.empty()));
        return this;
    }

    public Session session() {
        Map<String, Stimulus> stimuli = new LinkedHashMap<>();
        stimulus(stimuli, "n62", 62);
        stimulus(stimuli, "n78", 78);
        stimulus(stimuli, "n94", 94);
        stimuli.putAll(sounds);
        return new Session(
                id,
                "measurements/" + id + ".yaml",
                Optional.of("2026-06-11"),
                Optional.empty(),
                Optional.empty(),
                Optional.of(resolution),
                Optional.of(Unit.DB_SPL),
                stimuli,
                scaled,
                true,
                Set.of(),
                unknown ? new Uncertainty.Unknown() : new Uncertainty.Declared(causes, false),
                readings,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                Chain.UNSTATED);
    }

    private static void stimulus(Map<String, Stimulus> stimuli, String id, double levelDb) {
        stimuli.put(id, new Stimulus(id, "pink noise", List.of(new Amount(levelDb, Unit.DB_SPL, 0)), Optional.empty()));
    }

    /** A product with one claim; {@code rule} is what stands under {@code stated}. */
    public static Product product(String rule, String... otherwise) {
        String yaml = """
                product: Skerry
                about: Invented
                editions: [{id: box, source: Box, dated: 2025}]
                claims:
                  - id: one
                    edition: box
                    quote: "Invented."
                    stated: {%s}
                """.formatted(rule)
                + (otherwise.length == 0 ? "" : "    otherwise:\n")
                + String.join(
                        "",
                        List.of(otherwise).stream()
                                .map(o -> "      - {" + o + "}\n")
                                .toList());
        try {
            Path folder = Files.createTempDirectory("claims");
            Files.createDirectories(folder.resolve("claims"));
            Files.writeString(folder.resolve("claims/skerry.yaml"), yaml);
            return new ClaimsReader(Quantities.forms(), Set.of())
                    .readAll(folder)
                    .get(0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InputException e) {
            throw new IllegalArgumentException(e);
        }
    }

    static Judgement judge(String rule, Session... sessions) {
        return judge(product(rule), sessions);
    }

    static Judgement judge(Product product, Session... sessions) {
        return judge(product, AuditOptions.standard(), sessions);
    }

    static Judgement judge(Product product, AuditOptions options, Session... sessions) {
        return audit(product, options, sessions)
                .products()
                .get(0)
                .claims()
                .get(0)
                .plain()
                .orElseThrow();
    }

    public static Audit audit(Product product, AuditOptions options, Session... sessions) {
        try {
            return new Auditor(options).audit(List.of(product), List.of(sessions), List.of());
        } catch (InputException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
