package org.ellwand.plan;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ellwand.claim.Product;
import org.ellwand.input.InputException;
import org.ellwand.input.Place;

/** The session files and empty sheets of plans. */
public final class PlanFiles {
    private PlanFiles() {}

    /**
     * The session files and sheets of the plans, by name.
     *
     * @param plans one a product
     * @return the content of each file, by its name
     * @throws InputException where two products ask for a session of one name: one file would replace the other
     */
    public static SortedMap<String, String> of(List<Plan> plans) throws InputException {
        SortedMap<String, String> files = new TreeMap<>();
        for (Plan plan : plans) {
            for (var file : files(plan).entrySet()) {
                if (files.putIfAbsent(file.getKey(), file.getValue()) != null) {
                    throw sameSession(plan.product().product(), file.getKey());
                }
            }
        }
        return files;
    }

    private static SortedMap<String, String> files(Plan plan) {
        SortedMap<String, String> files = new TreeMap<>();
        Bench bench = Bench.of(plan);
        for (Sitting sitting : plan.sittings()) {
            files.put(sitting.file() + ".yaml", SittingFile.yaml(sitting, bench.besides(sitting)));
            files.put(sitting.file() + ".csv", SittingFile.sheet(sitting));
        }
        files.putAll(bench.files());
        files.putAll(PanelFile.files(plan));
        return files;
    }

    private static InputException sameSession(Product product, String file) {
        return new InputException(
                Place.ofFile(product.file()),
                "claims of '" + product.name() + "' and of another product name the same session that is still to be ("
                        + file + "): plan one product at a time, with --product, each with its own --out");
    }
}
