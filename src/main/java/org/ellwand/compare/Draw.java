package org.ellwand.compare;

import java.util.List;
import org.ellwand.audit.Contribution;

/**
 * One instance of a declared cause, as {@code audit.json} names it.
 *
 * @param instance the session; or the session, a slash, and the insertion's id or what the reading is of
 */
record Draw(String cause, String instance) {
    private static final List<String> COMMON_READINGS = List.of("open ear", "field");

    static Draw of(Contribution contribution) {
        return new Draw(contribution.cause(), contribution.instance());
    }

    /** Whether it moves one figure alone. */
    boolean isOfFigure() {
        return cause.equals(Contribution.OF_FIGURE);
    }

    /** Whether it moves all units and products alike. Ids of insertions hold within one of them: equal ids are two insertions. */
    boolean isOfAllUnits() {
        int slash = instance.indexOf('/');
        return slash < 0 || COMMON_READINGS.stream().anyMatch(instance.substring(slash + 1)::startsWith);
    }
}
