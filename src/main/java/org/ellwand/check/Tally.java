package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ellwand.acoustics.Band;
import org.ellwand.check.DataCheck.Checked;
import org.ellwand.check.Finding.About;
import org.ellwand.check.Finding.Consequence;
import org.ellwand.check.Finding.Errs;
import org.ellwand.check.Finding.Measure;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/** Collects what one check finds in one session. */
final class Tally {
    private final DataCheck check;
    private final Session session;
    private final List<Finding> findings = new ArrayList<>();
    private boolean made;
    private About about = About.EVERYTHING;

    Tally(DataCheck check, Session session) {
        this.check = check;
        this.session = session;
    }

    /** Says which numbers the faults added from now on can touch. */
    Tally about(About numbers) {
        about = numbers;
        return this;
    }

    /** Says that something could be looked at. */
    void looked() {
        made = true;
    }

    /** A fault of some readings, in some bands. */
    void add(Conditions of, Iterable<Band> bands, Errs errs, Consequence consequence, Measure measure, Remark remark) {
        looked();
        findings.add(new Finding(
                check.name(),
                session.id(),
                Sheets.name(of),
                Curves.hertz(bands),
                remark,
                errs,
                consequence,
                Optional.of(measure),
                about));
    }

    /** A fault of the session as a whole. */
    void add(Errs errs, Consequence consequence, Measure measure, Remark remark) {
        add(Conditions.of(Map.of()), List.of(), errs, consequence, measure, remark);
    }

    Checked done() {
        return new Checked(made, findings);
    }
}
