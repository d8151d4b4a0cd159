package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * Names of conditions, sorted. Of a lot's many readings nearly all have the same ones: so they share a list, which knows what
 * is left of it without some names.
 */
final class NameList {
    private final String[] names;
    private final Set<String> asSet;
    private final int hash;
    private final Places places = new Places();
    private final Rests rests = new Rests(dropped -> rest(name -> !dropped.contains(name)));
    private final Rests parts = new Rests(kept -> rest(kept::contains));
    private final Map<String, NameList> longer = new ConcurrentHashMap<>();

    /** What is left of a list of names. */
    static final class Rest {
        private final NameList names;
        /** Where the names stood that are left. */
        private final int[] places;

        private Rest(NameList names, int[] places) {
            this.names = names;
            this.places = places;
        }

        NameList names() {
            return names;
        }

        String[] of(String[] texts) {
            String[] left = new String[places.length];
            for (int i = 0; i < left.length; i++) {
                left[i] = texts[places[i]];
            }
            return left;
        }
    }

    /**
     * What is left, by the names that were asked for. Mostly the very same set is asked for again and again: of such sets that
     * cannot change, the latest are found without looking into them.
     */
    private static final class Rests {
        private static final int LATEST = 16;

        private final Map<Set<String>, Rest> all = new ConcurrentHashMap<>();
        private volatile List<Asked> latest = List.of();

        private final Function<Set<String>, Rest> workedOut;

        private record Asked(Set<String> names, Rest rest) {}

        Rests(Function<Set<String>, Rest> workedOut) {
            this.workedOut = workedOut;
        }

        @SuppressWarnings("ReferenceEquality") // The very set; a copy of a set that cannot change is itself.
        Rest of(Set<String> names) {
            List<Asked> known = latest;
            for (int i = 0; i < known.size(); i++) {
                if (known.get(i).names() == names) {
                    return known.get(i).rest();
                }
            }
            Set<String> copy = Set.copyOf(names);
            Rest rest = all.computeIfAbsent(copy, workedOut);
            if (copy == names) {
                List<Asked> more = new ArrayList<>(known.subList(Math.max(0, known.size() - LATEST + 1), known.size()));
                more.add(new Asked(names, rest));
                latest = List.copyOf(more);
            }
            return rest;
        }
    }

    /** @param sorted each once */
    NameList(Collection<String> sorted) {
        this.names = sorted.toArray(String[]::new);
        this.asSet = Collections.unmodifiableSet(new LinkedHashSet<>(sorted));
        this.hash = Arrays.hashCode(names);
    }

    @Override
    public boolean equals(Object other) {
        return this == other || (other instanceof NameList those && Arrays.equals(names, those.names));
    }

    @Override
    public int hashCode() {
        return hash;
    }

    /** In their order. */
    Set<String> asSet() {
        return asSet;
    }

    String name(int place) {
        return names[place];
    }

    /** The place of a name; negative where it is not there. */
    int place(String name) {
        return places.of(name);
    }

    /** The places of the names that were asked for first, found by identity: the same few are asked for millions of times. */
    private final class Places {
        private static final int MOST = 24;

        private volatile List<String> asked = List.of();
        private final int[] found = new int[MOST];

        @SuppressWarnings("ReferenceEquality") // Another text of the same name is looked up by itself.
        int of(String name) {
            List<String> known = asked;
            for (int i = 0; i < known.size(); i++) {
                if (known.get(i) == name) {
                    return found[i];
                }
            }
            int place = Math.max(-1, Arrays.binarySearch(names, name));
            keep(name, place);
            return place;
        }

        private synchronized void keep(String name, int place) {
            if (asked.size() < MOST) {
                found[asked.size()] = place;
                List<String> more = new ArrayList<>(asked);
                more.add(name);
                asked = List.copyOf(more);
            }
        }
    }

    /** Where a name would stand that is not there. */
    int placeFor(String name) {
        return -1 - Arrays.binarySearch(names, name);
    }

    /** These names and one that is not among them. */
    NameList with(String name) {
        NameList known = longer.get(name);
        return known != null
                ? known
                : longer.computeIfAbsent(name, more -> {
                    List<String> all = new ArrayList<>(List.of(names));
                    all.add(placeFor(more), more);
                    return new NameList(all);
                });
    }

    Rest without(Set<String> dropped) {
        return rests.of(dropped);
    }

    Rest only(Set<String> kept) {
        return parts.of(kept);
    }

    private Rest rest(Predicate<String> kept) {
        int[] places = IntStream.range(0, names.length)
                .filter(i -> kept.test(names[i]))
                .toArray();
        boolean all = places.length == names.length;
        return new Rest(
                all
                        ? this
                        : new NameList(
                                Arrays.stream(places).mapToObj(i -> names[i]).toList()),
                places);
    }
}
