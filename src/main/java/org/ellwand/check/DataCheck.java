package org.ellwand.check;

import java.util.List;
import org.ellwand.measurement.Session;

/**
 * One check of the data: a fault of measuring or of copying that shows in the numbers. A check changes nothing; what its
 * findings do to verdicts, their direction and consequence say.
 */
interface DataCheck {
    /** As findings name it. */
    String name();

    /** What it needs, to follow "needs". */
    String needs();

    Checked check(Material material);

    /**
     * What a check looks at.
     *
     * @param session with its backgrounds subtracted; bounds are no measured levels
     * @param asRead the same session as it was read
     * @param all the sessions of the folder, backgrounds subtracted
     */
    record Material(Session session, Session asRead, List<Session> all) {}

    /**
     * What came of it.
     *
     * @param made whether there was anything to check
     */
    record Checked(boolean made, List<Finding> findings) {
        public Checked {
            findings = List.copyOf(findings);
        }
    }
}
