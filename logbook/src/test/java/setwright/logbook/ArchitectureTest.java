package setwright.logbook;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What the logbook must know nothing of. */
@AnalyzeClasses(packages = "setwright.logbook", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule packages_form_no_cycles =
            slices().matching("setwright.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule the_logbook_keeps_and_does_not_judge = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("setwright.core..", "setwright.intake..", "setwright.app..")
            .because("what was written years ago is read without the physics of today")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule only_the_database_package_knows_which_database_it_is = noClasses()
            .that()
            .resideOutsideOfPackage("setwright.logbook.database..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.sqlite..", "org.postgresql..", "org.flywaydb..");

    @ArchTest
    static final ArchRule the_logbook_prints_nothing = NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
}
