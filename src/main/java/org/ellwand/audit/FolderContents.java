package org.ellwand.audit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.ellwand.claim.ClaimsReader;
import org.ellwand.claim.Product;
import org.ellwand.claim.Target;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.measurement.SessionReader;
import org.ellwand.quantity.Quantities;

/**
 * What a folder holds, read.
 *
 * @param products one a claims file, in order of the files
 * @param sessions in order of their files
 * @param inputs every file that was read, whether a scope leaves out what it says or not
 */
public record FolderContents(List<Product> products, List<Session> sessions, List<Audit.Input> inputs) {
    /**
     * Copies the lists.
     *
     * @param products in their order
     * @param sessions in their order
     * @param inputs every file that was read
     */
    public FolderContents {
        products = List.copyOf(products);
        sessions = List.copyOf(sessions);
        inputs = List.copyOf(inputs);
    }

    /**
     * {@return the sessions, and the claims, which may speak of conditions that the sessions declare}
     *
     * @param folder holds {@code claims/} and {@code measurements/}
     * @throws InputException with what is wrong in the sessions, or else with what is wrong in the claims
     * @throws IOException where a file cannot be read
     */
    public static FolderContents read(Path folder) throws InputException, IOException {
        Hashing hashing = new Hashing(folder);
        List<Session> sessions = SessionReader.readAll(folder, hashing::begin);
        List<Product> products = new ClaimsReader(Quantities.forms(), Session.declaredBy(sessions)).readAll(folder);
        Collection<String> files = new ArrayList<>(targets(products));
        products.forEach(product -> files.add(product.file()));
        sessions.forEach(session -> files.add(session.file()));
        sessions.forEach(session -> files.addAll(session.dataFiles()));
        return new FolderContents(products, sessions, hashing.of(files));
    }

    /** The curve sheets that rules name. */
    private static List<String> targets(List<Product> products) {
        return products.stream()
                .flatMap(product -> product.claims().stream())
                .flatMap(claim -> Stream.concat(claim.rule().stream(), claim.otherwise().stream()))
                .flatMap(rule -> rule.target().stream())
                .filter(Target.Sheet.class::isInstance)
                .map(target -> ((Target.Sheet) target).file())
                .distinct()
                .toList();
    }

    /**
     * {@return the audit of what is in scope}
     *
     * @param scope what the audit is narrowed to
     * @param trials Monte Carlo trials, at least {@link AuditOptions#FEWEST_TRIALS}; {@link AuditOptions#DEFAULT_TRIALS} where
     *     nobody asks for another number
     * @throws InputException where the scope names what is not there, or a rule does not fit the readings
     */
    public Audit judged(Scope scope, int trials) throws InputException {
        scope.check(products, sessions);
        Auditor auditor = new Auditor(new AuditOptions(trials));
        return scope.noted(auditor.audit(scope.products(products), scope.sessions(sessions), inputs));
    }
}
