package org.ellwand.check;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.ellwand.claim.Product;
import org.ellwand.measurement.Session;

/**
 * What the data say of themselves, and the sessions as they may be judged.
 *
 * @param sessions with backgrounds subtracted and errors widened, in the order given
 * @param findings sorted
 * @param notChecked what could not be checked, sorted
 */
public record Inspection(List<Session> sessions, List<Finding> findings, List<NotChecked> notChecked) {
    /**
     * Keeps copies of the lists.
     *
     * @param sessions with backgrounds subtracted and errors widened, in the order given
     * @param findings sorted
     * @param notChecked what could not be checked, sorted
     */
    public Inspection {
        sessions = List.copyOf(sessions);
        findings = List.copyOf(findings);
        notChecked = List.copyOf(notChecked);
    }

    /**
     * {@return this inspection with what the claims about products say of the sessions besides, and without what none of them asks}
     *
     * @param products with their claims
     */
    public Inspection against(List<Product> products) {
        List<Finding> more = new ArrayList<>(findings);
        if (!OwnNoise.isAskedBy(products)) {
            more.removeIf(finding -> finding.remark().key().equals(OwnNoise.NOT_TOLD_APART));
        }
        sessions.forEach(session -> more.addAll(SwappedThroughout.in(session, products)));
        more.sort(Finding.ORDER);
        return new Inspection(sessions, more, notChecked);
    }

    /**
     * {@return what every check says of every session}
     *
     * @param sessions as they were read
     */
    public static Inspection of(List<Session> sessions) {
        List<Session> corrected = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<NotChecked> notChecked = new ArrayList<>();
        for (Session session : sessions) {
            BackgroundFloor.Corrected made = BackgroundFloor.correct(session);
            corrected.add(ShortAverage.widened(made.session()));
            findings.addAll(made.findings());
            notChecked.addAll(made.notChecked());
        }
        AllSessions all = new AllSessions(corrected, sessions);
        for (int s = 0; s < sessions.size(); s++) {
            Material material = new Material(corrected.get(s), sessions.get(s), all);
            // Side by side; what they find is put in order below.
            List<DataCheck.Checked> made = sideBySide(material);
            made.forEach(checked -> findings.addAll(checked.findings()));
            for (int c = 0; c < made.size(); c++) {
                DataCheck check = Checks.ALL.get(c);
                DataCheck.Checked checked = made.get(c);
                if (!checked.made()) {
                    notChecked.add(new NotChecked(check.name(), sessions.get(s).id(), "needs " + check.needs()));
                }
            }
        }
        List<Finding> told = new ArrayList<>(new Echoes(findings).leftOut(findings));
        told.sort(Finding.ORDER);
        notChecked.sort(NotChecked.ORDER);
        return new Inspection(corrected, told, notChecked);
    }

    /** Whoever is free takes the next check: a few of them take most of the time. */
    private static List<DataCheck.Checked> sideBySide(Material material) {
        DataCheck.Checked[] made = new DataCheck.Checked[Checks.ALL.size()];
        AtomicInteger next = new AtomicInteger();
        IntStream.range(0, Runtime.getRuntime().availableProcessors())
                .parallel()
                .forEach(worker -> {
                    for (int c = next.getAndIncrement(); c < made.length; c = next.getAndIncrement()) {
                        made[c] = Checks.ALL.get(c).check(material);
                    }
                });
        return List.of(made);
    }
}
