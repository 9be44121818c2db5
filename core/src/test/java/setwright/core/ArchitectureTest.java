package setwright.core;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;

/** Which package of the core may know which, and what the core must know nothing of. */
@AnalyzeClasses(packages = "setwright.core", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    /** A package may use itself and those before it. */
    private static final List<String> UPWARD = List.of(
            "recording",
            "numerics",
            "circuit",
            "car",
            "limit",
            "handling",
            "baseline",
            "slip",
            "replay",
            "identification",
            "standing",
            "judgement",
            "explanation",
            "pooling",
            "technique",
            "chassis",
            "advice",
            "proposal",
            "trial",
            "simulation");

    @ArchTest
    static final ArchRule every_package_has_its_place_in_the_order = classes()
            .should()
            .resideInAnyPackage(
                    UPWARD.stream().map(ArchitectureTest::withSubpackages).toArray(String[]::new))
            .because("a new package of the core is to be put into the order above")
            .allowEmptyShould(true);

    @ArchTest
    static void packages_depend_downward(JavaClasses classes) {
        for (int i = 0; i < UPWARD.size(); i++) {
            String[] later = UPWARD.subList(i + 1, UPWARD.size()).stream()
                    .map(ArchitectureTest::withSubpackages)
                    .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage(withSubpackages(UPWARD.get(i)))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(later)
                    .because("packages depend downward in the order " + UPWARD)
                    .allowEmptyShould(true)
                    .check(classes);
        }
    }

    @ArchTest
    static final ArchRule packages_form_no_cycles =
            slices().matching("setwright.core.(*)..").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule physics_knows_nothing_of_its_surroundings = noClasses()
            .should()
            .dependOnClassesThat(surroundings())
            .because("the core turns records into records; files, databases, networks and logs are others' work")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule physics_does_not_print = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.allowEmptyShould(true);

    private static DescribedPredicate<JavaClass> surroundings() {
        return JavaClass.Predicates.resideInAnyPackage(
                        "java.sql..",
                        "javax.sql..",
                        "java.net..",
                        "java.nio.file..",
                        "java.util.logging..",
                        "org.slf4j..",
                        "tools.jackson..",
                        "com.fasterxml.jackson..")
                .or(describe("are files", type -> type.getName().startsWith("java.io.File")))
                .as("files, SQL, networks, logs or JSON");
    }

    private static String withSubpackages(String name) {
        return "setwright.core." + name + "..";
    }
}
