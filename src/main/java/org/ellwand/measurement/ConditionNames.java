package org.ellwand.measurement;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The names that conditions may have. */
final class ConditionNames {
    static final String DEVICE = "device";
    static final String STIMULUS = "stimulus";
    static final String SETTING = "setting";
    static final String INSERTION = "insertion";
    static final String TAKE = "take";

    /** Conditions that every session knows, as they are listed in messages. */
    static final List<String> BUILT_IN =
            List.of(DEVICE, SETTING, "fit", "ear", "side", "head", STIMULUS, INSERTION, TAKE, "firmware", "unit");

    /** What says nothing of an ear without the product; an insertion is dropped only where it is a default. */
    static final Set<String> OF_THE_PRODUCT = Set.of(SETTING, "fit", "firmware", "unit");

    /** Names that mean something else in a session or a sheet, so that no condition can be called so. */
    static final Set<String> TAKEN = Set.of(
            "frequency",
            "level",
            "time",
            "order",
            "attenuation",
            "fundamental",
            "file",
            "layout",
            "header line",
            "values",
            "ignore",
            "columns",
            "step",
            "channel",
            "from",
            "to",
            "times from",
            "stimulus file",
            "gives",
            "weighting",
            "time constant",
            "of",
            "value");

    private ConditionNames() {}

    /** The built-in names and the declared ones. */
    static Set<String> with(Collection<String> declared) {
        Set<String> names = new LinkedHashSet<>(BUILT_IN);
        names.addAll(new TreeSet<>(declared));
        return names;
    }

    /** Keys for a message: some of one's own, then the conditions. */
    static List<String> after(List<String> own, Set<String> conditions) {
        List<String> all = new ArrayList<>(own);
        all.addAll(conditions);
        return all;
    }
}
