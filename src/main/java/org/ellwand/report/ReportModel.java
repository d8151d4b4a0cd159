package org.ellwand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.ellwand.audit.Audit;
import org.ellwand.audit.ProductAudit;
import org.ellwand.input.InputException;
import org.ellwand.measurement.Session;
import org.ellwand.words.Sentences;

/** All that the page templates see. {@code templates/README.md} documents it, and a test holds the two together. */
final class ReportModel {
    private ReportModel() {}

    static Map<String, Object> of(Audit audit, ReportOptions options, FigureDrawer figures, Sentences sentences)
            throws InputException {
        Slugs anchors = new Slugs();
        // Anchors of the pages themselves.
        List.of(
                        "answer",
                        "claims",
                        "compared",
                        "decision",
                        "measurement",
                        "findings",
                        "untested",
                        "replies",
                        "editions",
                        "inputs",
                        "cautions")
                .forEach(anchors::of);
        List<Object> products = new ArrayList<>();
        for (ProductAudit product : audit.products()) {
            products.add(new ProductModel(audit, product, sentences).model(anchors, figures));
        }
        return Clean.map(Fields.of("dated", options.dated().orElse(""))
                .and("products", products)
                .and("shared", TopicModel.shared(audit.products()))
                .and("sessions", sessions(audit, anchors))
                .and("findings", FindingList.of(audit.findings(), 4, f -> FindingModel.of(f, sentences)))
                .and("cautions", Cautions.of(Counted.of(audit.sessions(), reading -> true), audit.sessions()))
                .and("inputs", audit.inputs().stream().map(ReportModel::input).toList())
                .map());
    }

    private static List<Object> sessions(Audit audit, Slugs anchors) {
        List<Object> sessions = new ArrayList<>();
        for (Session session : audit.sessions()) {
            sessions.add(SessionModel.of(session, anchors.of("session-" + session.id())));
        }
        return sessions;
    }

    private static Object input(Audit.Input input) {
        return Fields.of("file", input.file()).and("sha256", input.sha256()).map();
    }
}
