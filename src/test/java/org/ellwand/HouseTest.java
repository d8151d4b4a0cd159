package org.ellwand;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Keeps the house as DEVELOPERS.md draws it: a package imports from the floors below its own and from no other. */
class HouseTest {
    private static final String ROOT = "org.ellwand.";

    /** Ground floor first. Packages of one floor do not know each other. */
    private static final List<List<String>> FLOORS = List.of(
            List.of("amount", "statistics"),
            // Places, problems and the YAML tree are shared by both readers, so they stand below them. They are no
            // acoustics: a formula has no file to point at, and takes numbers only.
            List.of("acoustics", "input"),
            // What is wrong with a recording is said in the same way as what is wrong with a reading.
            List.of("words"),
            // A recording has bands and weightings, and a file that may be wrong; sessions begin at recordings.
            List.of("sound"),
            List.of("claim", "measurement"),
            List.of("pairing"),
            // Neither knows the other: a check looks at levels, whatever is computed from them.
            List.of("quantity", "check"),
            List.of("audit"),
            List.of("ask", "compare", "junit", "plan", "report"),
            List.of("cli"));

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.ellwand");

    private static Stream<String> packagesBelow(int floor) {
        return FLOORS.subList(0, floor).stream().flatMap(List::stream);
    }

    @TestFactory
    Stream<DynamicTest> everyPackageImportsFromTheFloorsBelowOnly() {
        return IntStream.range(0, FLOORS.size())
                .boxed()
                .flatMap(floor -> FLOORS.get(floor).stream()
                        .map(name -> DynamicTest.dynamicTest(name, () -> checkImports(name, floor))));
    }

    private static void checkImports(String name, int floor) {
        String[] allowed = Stream.concat(Stream.of(name), packagesBelow(floor))
                .map(each -> ROOT + each)
                .toArray(String[]::new);
        classes()
                .that()
                .resideInAPackage(ROOT + name)
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(allowed).or(not(resideInAPackage("org.ellwand.."))))
                .check(PROGRAM);
    }

    @Test
    void everyPackageHasItsFloor() {
        TreeSet<String> built = new TreeSet<>();
        PROGRAM.stream().map(JavaClass::getPackageName).forEach(built::add);
        List<String> drawn =
                packagesBelow(FLOORS.size()).map(each -> ROOT + each).sorted().toList();
        assertThat(built).containsExactlyElementsOf(drawn);
    }

    @Test
    void developersAreShownTheSameHouse() throws IOException {
        List<List<String>> shown = Files.readString(Path.of("DEVELOPERS.md"))
                .lines()
                .filter(row -> row.matches("\\| \\d+ \\| `.*"))
                .map(row -> List.of(row.split("\\|")[2].strip().replace("`", "").split(", ")))
                .toList();
        assertThat(shown).isEqualTo(FLOORS);
    }

    @Test
    void onlyCommandsEndTheProgramOrPrint() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + "cli")
                .should()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "halt", int.class)
                .orShould()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .check(PROGRAM);
    }

    /** Draws come from seeded streams of their own, so that the same inputs give the same bytes. */
    @Test
    void nothingIsDrawnFromGeneratorsOfThePlatform() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .belongToAnyOf(Random.class, SplittableRandom.class, ThreadLocalRandom.class)
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethod(StrictMath.class, "random")
                .check(PROGRAM);
    }
}
