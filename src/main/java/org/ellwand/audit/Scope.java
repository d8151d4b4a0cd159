package org.ellwand.audit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.ellwand.claim.Claim;
import org.ellwand.claim.Product;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;
import org.ellwand.input.Problem;
import org.ellwand.measurement.Conditions;
import org.ellwand.measurement.Reading;
import org.ellwand.measurement.Session;
import org.ellwand.words.Remark;

/**
 * What an audit is narrowed to. An empty set narrows nothing.
 *
 * @param products names of products
 * @param editions ids of editions: only their claims are judged
 * @param firmwares only what was measured with one of these is used, and claims of editions that speak of another are
 *     left out
 * @param sessions ids of sessions: only their readings are used
 */
public record Scope(Set<String> products, Set<String> editions, Set<String> firmwares, Set<String> sessions) {
    /**
     * Copies the sets.
     *
     * @param products in their order
     * @param editions ids
     * @param firmwares as they were written
     * @param sessions in their order
     */
    public Scope {
        products = Set.copyOf(products);
        editions = Set.copyOf(editions);
        firmwares = Set.copyOf(firmwares);
        sessions = Set.copyOf(sessions);
    }

    /** {@return the scope that narrows nothing} */
    public static Scope all() {
        return new Scope(Set.of(), Set.of(), Set.of(), Set.of());
    }

    /**
     * Refuses names that nothing bears, so that a slip of the pen does not end in an audit of nothing.
     *
     * @param all the products of the folder
     * @param measured the sessions of the folder
     * @throws InputException naming the option and what there is
     */
    public void check(List<Product> all, List<Session> measured) throws InputException {
        check(all, measured, "--");
    }

    /**
     * Refuses the same where the options have longer names.
     *
     * @param all the products of the folder
     * @param measured the sessions of the folder
     * @param begin how the names of the options begin, as {@code --first-}
     * @throws InputException naming the option and what there is
     */
    public void check(List<Product> all, List<Session> measured, String begin) throws InputException {
        List<Problem> problems = new ArrayList<>();
        problems.addAll(missing(begin, "product", products, all.stream().map(Product::name)));
        problems.addAll(missing(
                begin,
                "edition",
                editions,
                all.stream().flatMap(p -> p.editions().stream()).map(e -> e.id())));
        problems.addAll(missing(begin, "firmware", firmwares, measured.stream().flatMap(Scope::firmwaresOf)));
        problems.addAll(missing(begin, "session", sessions, measured.stream().map(Session::id)));
        if (problems.isEmpty() && hasClaims(all) && !hasClaims(products(all))) {
            String option = editions.isEmpty() ? firmwares.isEmpty() ? "product" : "firmware" : "edition";
            problems.add(new Problem(
                    Place.ofFile(begin + option), "nothing is left to judge: no claim is of what was asked for"));
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
    }

    private static boolean hasClaims(List<Product> products) {
        return products.stream().anyMatch(product -> !product.claims().isEmpty());
    }

    private static List<Problem> missing(String begin, String what, Set<String> asked, Stream<String> there) {
        List<String> known = there.distinct().sorted().toList();
        String others = known.isEmpty() ? "none is named" : "there is " + String.join(", ", known);
        return asked.stream()
                .sorted()
                .filter(name -> !known.contains(name))
                .map(name ->
                        new Problem(Place.ofFile(begin + what), "no " + what + " is called '" + name + "'; " + others))
                .toList();
    }

    private static Stream<String> firmwaresOf(Session session) {
        return conditionsOf(session).flatMap(conditions -> conditions.get("firmware").stream());
    }

    private static Stream<Conditions> conditionsOf(Session session) {
        return Stream.of(
                        session.readings().stream().map(Reading::conditions),
                        session.traces().stream().map(trace -> trace.conditions()),
                        session.harmonics().stream().map(harmonic -> harmonic.conditions()),
                        session.figures().stream().map(figure -> figure.conditions()))
                .flatMap(conditions -> conditions);
    }

    /**
     * {@return the products in scope, each with its claims in scope; a product of which no claim is left is left out}
     *
     * @param all the products of the folder
     */
    public List<Product> products(List<Product> all) {
        return all.stream()
                .filter(product -> takes(products, product.name()))
                .map(this::narrowed)
                .filter(product -> !product.claims().isEmpty() || (editions.isEmpty() && firmwares.isEmpty()))
                .toList();
    }

    private Product narrowed(Product product) {
        return product.withClaims(kept(product.claims(), this::takes));
    }

    private boolean takes(Claim claim) {
        String firmware = claim.edition().conditions().get("firmware");
        return takes(editions, claim.edition().id()) && (firmware == null || takes(firmwares, firmware));
    }

    /**
     * {@return the sessions in scope, each with its readings in scope; open ears and field levels have no firmware and stay}
     *
     * @param all the sessions of the folder
     */
    public List<Session> sessions(List<Session> all) {
        return all.stream()
                .filter(session -> takes(sessions, session.id()))
                .map(session ->
                        session.kept(reading -> !reading.isInPlace() || takes(reading.conditions()), this::takes))
                .toList();
    }

    private boolean takes(Conditions conditions) {
        return firmwares.isEmpty()
                || conditions.get("firmware").filter(firmwares::contains).isPresent();
    }

    private static boolean takes(Set<String> names, String name) {
        return names.isEmpty() || names.contains(name);
    }

    private static <T> List<T> kept(Collection<T> all, Predicate<T> wanted) {
        return all.stream().filter(wanted).toList();
    }

    /**
     * {@return the audit with a note at every claim, where the scope left out readings: nobody is to take it for a whole one}
     *
     * @param audit of what is in scope
     */
    public Audit noted(Audit audit) {
        List<Remark> notes = notes();
        if (notes.isEmpty()) {
            return audit;
        }
        List<ProductAudit> noted = audit.products().stream()
                .map(product -> new ProductAudit(
                        product.product(),
                        product.claims().stream()
                                .map(claim -> noted(claim, notes))
                                .toList()))
                .toList();
        return new Audit(audit.inputs(), noted, audit.sessions(), audit.findings());
    }

    private static ClaimAudit noted(ClaimAudit claim, List<Remark> notes) {
        List<Remark> more = new ArrayList<>(notes);
        more.addAll(claim.remarks());
        return new ClaimAudit(claim.claim(), claim.plain(), claim.otherwise(), List.copyOf(more));
    }

    /** {@return what it leaves, in words; empty where everything} */
    public String words() {
        List<String> words = new ArrayList<>();
        name("product", products, words);
        name("edition", editions, words);
        name("firmware", firmwares, words);
        name("session", sessions, words);
        return String.join(", ", words);
    }

    private static void name(String what, Set<String> names, List<String> words) {
        if (!names.isEmpty()) {
            words.add(what + " " + String.join(", ", names.stream().sorted().toList()));
        }
    }

    private List<Remark> notes() {
        List<Remark> notes = new ArrayList<>();
        note("sessions", sessions, notes);
        note("firmwares", firmwares, notes);
        return notes;
    }

    private static void note(String what, Set<String> names, List<Remark> notes) {
        if (!names.isEmpty()) {
            notes.add(Remark.of("left-out-" + what)
                    .with("names", names.stream().sorted().toList()));
        }
    }
}
