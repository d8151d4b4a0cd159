package org.ellwand.check;

import java.util.List;

/**
 * Something the data say about themselves.
 *
 * @param check name of the check
 * @param session id of the session it is about
 * @param reading which reading, as its conditions; empty where the session as a whole is meant
 * @param bands nominal band centres in Hz; empty where no band is meant
 * @param text one English sentence with the figure and the threshold
 * @param errs which way the fault errs
 * @param consequence what follows
 */
public record Finding(
        String check,
        String session,
        String reading,
        List<Double> bands,
        String text,
        Errs errs,
        Consequence consequence) {
    public Finding {
        bands = List.copyOf(bands);
    }

    /** Which way a fault errs. */
    public enum Errs {
        HIDES_ATTENUATION,
        INVENTS_ATTENUATION,
        EITHER
    }

    /** What follows from a finding. */
    public enum Consequence {
        NOTED,
        WIDENED,
        BOUNDED,
        UNUSABLE
    }
}
