package setwright.app;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What the program leaves to the modules below it, and rules for all three modules together. */
@AnalyzeClasses(packages = "setwright", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule modules_and_packages_form_no_cycles =
            slices().matching("setwright.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule the_program_is_known_to_no_one = noClasses()
            .that()
            .resideOutsideOfPackage("setwright.app..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("setwright.app..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule core_stands_alone = noClasses()
            .that()
            .resideInAPackage("setwright.core..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("setwright.intake..", "setwright.app..")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule reading_recordings_is_left_to_intake = noClasses()
            .that()
            .resideInAPackage("setwright.app..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "org.duckdb..")
            .because("each way into the program would grow its own reader");

    @ArchTest
    static final ArchRule the_web_server_is_known_to_the_page_only = noClasses()
            .that()
            .resideOutsideOfPackage("setwright.app.server..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..")
            .because("what is answered on the page is worked out by use cases that know of no page");

    @ArchTest
    static final ArchRule only_the_entry_point_ends_the_process = noClasses()
            .that()
            .doNotHaveFullyQualifiedName(Main.class.getName())
            .should()
            .callMethodWhere(target(owner(type(System.class))).and(target(name("exit"))))
            .because("exit codes are decided in one place");
}
