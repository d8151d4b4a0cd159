package org.ellwand.check;

import java.util.Comparator;

/**
 * A check that could not be made.
 *
 * @param check its name
 * @param session id of the session
 * @param because what is missing, to follow a colon
 */
public record NotChecked(String check, String session, String because) {
    /** By session, check and reason. */
    public static final Comparator<NotChecked> ORDER = Comparator.comparing(NotChecked::session)
            .thenComparing(NotChecked::check)
            .thenComparing(NotChecked::because);
}
