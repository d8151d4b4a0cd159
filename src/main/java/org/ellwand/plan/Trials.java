package org.ellwand.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ellwand.audit.AuditOptions;
import org.ellwand.audit.Auditor;
import org.ellwand.audit.Judgement;
import org.ellwand.check.Finding;
import org.ellwand.check.Inspection;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;

/**
 * What the judge would say of single claims from other sessions than those measured. To look for faults takes far longer than to judge one
 * claim: so claims that ask for the same number of insertions are judged together, and of a large lot no two such trials are held at a time.
 */
final class Trials {
    private static final int DRAWS = 10_000;
    private static final String COPIED = "copied";

    private final List<Session> measured;
    private Optional<Inspected> asMeasured = Optional.empty();

    Trials(List<Session> measured) {
        this.measured = List.copyOf(measured);
    }

    /** Sessions, and what the checks find in them. */
    private record Inspected(List<Session> sessions, Inspection inspection) {
        static Inspected of(List<Session> sessions) {
            return new Inspected(sessions, Inspection.of(sessions));
        }

        /** The same of sessions whose insertions are repeats of a few measured ones: nobody copied what is equal there. */
        static Inspected ofRepeated(List<Session> sessions) {
            Inspection all = Inspection.of(sessions);
            List<Finding> found = all.findings().stream()
                    .filter(f ->
                            !f.remark().key().equals(COPIED) || !f.reading().contains(Repeated.INSERTION))
                    .toList();
            return new Inspected(sessions, new Inspection(all.sessions(), found, all.notChecked()));
        }

        /** What is said of the only claim of each product. */
        List<Judgement> judged(List<Product> products) throws InputException {
            return new Auditor(new AuditOptions(DRAWS))
                    .audit(products, sessions, inspection, List.of()).products().stream()
                            .map(one -> one.claims().get(0).plain().orElseThrow())
                            .toList();
        }
    }

    /** The sessions as they were measured. */
    List<Session> measured() {
        return measured;
    }

    /** The ids of these. */
    Set<String> ids() {
        return measured.stream().map(Session::id).collect(Collectors.toSet());
    }

    /** What is said of a claim from what was measured. */
    Judgement fromMeasured(Product product, Claim claim) throws InputException {
        Inspected inspected = asMeasured.orElseGet(() -> Inspected.of(measured));
        asMeasured = Optional.of(inspected);
        return inspected.judged(List.of(Alone.of(product, claim))).get(0);
    }

    /** What is said of a claim from these sessions. */
    static Judgement from(Product product, Claim claim, List<Session> sessions) throws InputException {
        return Inspected.of(sessions).judged(List.of(Alone.of(product, claim))).get(0);
    }

    /** Tells claims what is said of them from every number of insertions that they ask for, were the values to stay. */
    void tell(List<MoreInsertions> claims) throws InputException {
        Map<Integer, List<MoreInsertions>> asking = asking(claims);
        while (!asking.isEmpty()) {
            for (Map.Entry<Integer, List<MoreInsertions>> some : asking.entrySet()) {
                tell(some.getKey(), some.getValue());
            }
            asking = asking(claims);
        }
    }

    private static Map<Integer, List<MoreInsertions>> asking(List<MoreInsertions> claims) {
        Map<Integer, List<MoreInsertions>> asking = new TreeMap<>();
        for (MoreInsertions claim : claims) {
            claim.asksFor()
                    .ifPresent(insertions -> asking.computeIfAbsent(insertions, k -> new ArrayList<>())
                            .add(claim));
        }
        return asking;
    }

    private void tell(int insertions, List<MoreInsertions> claims) throws InputException {
        Inspected repeated = Inspected.ofRepeated(measured.stream()
                .map(session -> Repeated.of(session, insertions))
                .toList());
        List<Judgement> judged =
                repeated.judged(claims.stream().map(MoreInsertions::alone).toList());
        for (int i = 0; i < judged.size(); i++) {
            claims.get(i).hear(insertions, judged.get(i));
        }
    }
}
