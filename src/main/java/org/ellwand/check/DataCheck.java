package org.ellwand.check;

import java.util.List;

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
