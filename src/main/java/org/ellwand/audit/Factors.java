package org.ellwand.audit;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ellwand.acoustics.Band;
import org.ellwand.measurement.Cause;
import org.ellwand.measurement.CurveReading;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.SharedBy;
import org.ellwand.measurement.Subtracted;
import org.ellwand.pairing.Insertion;
import org.ellwand.quantity.ReadingIndex;

/**
 * Turns the declared causes of sessions into independent draws: one per instance of what a cause is shared by, one per
 * band where it is independent across bands. What an insertion shares does not touch the open ear; readings that are
 * differences already do not move with the session.
 */
final class Factors {
    private final Surroundings surroundings;
    private final Set<SharedBy> included;
    private final Set<SharedBy> ofOpenEars;
    private final ReadingIndex index;
    private final Map<Factor.Name, Draft> drafts = new LinkedHashMap<>();

    private record Draft(Origin origin, SharedBy sharedBy, Entries entries) {}

    private Factors(ReadingIndex index, Surroundings surroundings, Set<SharedBy> included, Set<SharedBy> ofOpenEars) {
        this.index = index;
        this.surroundings = surroundings;
        this.included = included;
        this.ofOpenEars = ofOpenEars;
    }

    Factors(ReadingIndex index, Surroundings surroundings, Set<SharedBy> included) {
        this(index, surroundings, included, included);
    }

    /**
     * What may move several people or products alike: what a session shares, and the errors of open ears.
     *
     * @param alike besides, what the one ear or the one unit shares that all of them have
     */
    static Factors common(ReadingIndex index, Surroundings surroundings, Set<SharedBy> alike) {
        Set<SharedBy> inPlace = new TreeSet<>(alike);
        inPlace.add(SharedBy.SESSION);
        return new Factors(index, surroundings, inPlace, Set.of(SharedBy.SESSION, SharedBy.READING));
    }

    private boolean isIncluded(SharedBy sharedBy, Reading reading) {
        return (reading.isInPlace() ? included : ofOpenEars).contains(sharedBy);
    }

    /** Draws that were put together, and where they come from. */
    record Put(List<Factor> all, Origins origins) {}

    /** The draws that move some readings of the index, given by their positions. */
    Put of(int[] positions) {
        drafts.clear();
        for (int r : positions) {
            addReading(r, index.at(r));
        }
        return new Put(factors(), origins());
    }

    private List<Factor> factors() {
        List<Factor> factors = new ArrayList<>(drafts.size());
        drafts.forEach((name, draft) -> factors.add(new Factor(name, draft.sharedBy(), draft.entries())));
        return factors;
    }

    private Origins origins() {
        IdentityHashMap<Origin, Integer> places = new IdentityHashMap<>();
        List<Origin> each = new ArrayList<>();
        int[] ofFactor = drafts.values().stream()
                .map(Draft::origin)
                .mapToInt(origin -> places.computeIfAbsent(origin, o -> {
                    each.add(o);
                    return each.size() - 1;
                }))
                .toArray();
        return new Origins(surroundings, each, ofFactor);
    }

    private void addReading(int position, Reading reading) {
        for (Cause cause : Surroundings.causes(surroundings.session(reading), reading.movedBy())) {
            if (isIncluded(cause.sharedBy(), reading)) {
                instance(cause.sharedBy(), reading).ifPresent(i -> addCause(position, reading, cause, i));
            }
            if (cause.sharedBy() == SharedBy.READING && reading instanceof CurveReading curve) {
                curve.subtracted().ifPresent(background -> addBackground(position, curve, cause, background));
            }
        }
    }

    private void addCause(int position, Reading reading, Cause cause, String instance) {
        int numbers = reading.size();
        Drafting drafting = new Drafting(cause, reading, instance, cause.sharedBy());
        for (int n = 0; n < numbers; n++) {
            double hz = reading.nominalHz(n);
            double size = cause.sizeAt(hz);
            if (size != 0) {
                double grown = size * growth(cause, reading, n);
                drafting.at(hz).entries().add(position, n, grown);
            }
        }
    }

    /** What a session shares moves a level and its background alike, and so what is left of the level too. */
    private static double growth(Cause cause, Reading reading, int number) {
        return cause.sharedBy() == SharedBy.SESSION ? 1 : reading.growth(number);
    }

    /** The errors of the readings in quiet, as far as they were subtracted. */
    private void addBackground(int position, CurveReading reading, Cause cause, Subtracted background) {
        for (CurveReading quiet : background.readings()) {
            SharedBy sharing = sharing(reading, quiet);
            if (!isIncluded(sharing, reading)) {
                continue;
            }
            Drafting drafting = new Drafting(cause, quiet, quiet.conditions().toString(), sharing);
            for (int n = 0; n < reading.size(); n++) {
                Band band = reading.spectrum().bandList().get(n);
                double size = -background.entering(band)
                        * cause.sizeAt(band.nominalHz())
                        / background.readings().size();
                if (size != 0) {
                    drafting.at(band.nominalHz()).entries().add(position, n, size);
                }
            }
        }
    }

    /** A background that is not of one insertion is common to all of them, and their scatter does not show its error. */
    private static SharedBy sharing(Reading reading, Reading quiet) {
        boolean own =
                quiet.get("insertion").isPresent() && quiet.get("insertion").equals(reading.get("insertion"));
        return own ? SharedBy.READING : SharedBy.SESSION;
    }

    /** The draws of one cause that move one reading; what they have in common is put together once. */
    private final class Drafting {
        private final Cause cause;
        private final String session;
        private final String instance;
        private final Origin origin;
        private final SharedBy sharedBy;
        private Optional<Draft> whole = Optional.empty();

        Drafting(Cause cause, Reading reading, String instance, SharedBy sharedBy) {
            this.cause = cause;
            this.session = reading.get("session").orElse("");
            this.instance = instance;
            this.origin = new Origin(cause.name(), cause.sharedBy(), reading);
            this.sharedBy = sharedBy;
        }

        Draft at(double hz) {
            if (cause.independentAcrossBands()) {
                return named(hz);
            }
            return whole.isPresent() ? whole.get() : ofAllBands();
        }

        private Draft ofAllBands() {
            Draft draft = named(Double.NaN);
            whole = Optional.of(draft);
            return draft;
        }

        private Draft named(double band) {
            return drafts.computeIfAbsent(
                    new Factor.Name(session, cause.name(), instance, band),
                    n -> new Draft(origin, sharedBy, new Entries()));
        }
    }

    /** What identifies the instance; empty where the cause does not touch the reading. */
    private Optional<String> instance(SharedBy sharedBy, Reading reading) {
        return switch (sharedBy) {
            case SESSION -> isDifference(reading) ? Optional.empty() : Optional.of("");
            case INSERTION -> surroundings.insertion(reading).map(Insertion::key);
            case READING -> Optional.of(reading.conditions().toString());
            case EAR -> inPlace(reading, surroundings.wearer(reading));
            case UNIT -> inPlace(reading, reading.get("unit").orElse(""));
        };
    }

    private static boolean isDifference(Reading reading) {
        return switch (reading.values()) {
            case ATTENUATION, SUBJECT_ATTENUATION, INSERTION_GAIN -> true;
            case LEVELS, NUMBER -> false;
        };
    }

    private static Optional<String> inPlace(Reading reading, String instance) {
        return reading.isInPlace() ? Optional.of(instance) : Optional.empty();
    }
}
