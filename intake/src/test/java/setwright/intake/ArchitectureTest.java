package setwright.intake;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What intake must know nothing of. */
@AnalyzeClasses(packages = "setwright.intake", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule packages_form_no_cycles =
            slices().matching("setwright.intake.(**)").should().beFreeOfCycles().allowEmptyShould(true);

    @ArchTest
    static final ArchRule intake_judges_nothing_and_knows_no_program = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("setwright.app..", "setwright.core.judgement..", "setwright.core.simulation..")
            .because("a recording is read the same way, whatever is asked of it later")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule intake_reads_files_only = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.net.http..")
            .because("no recording is fetched from a network")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule intake_returns_what_it_found_and_prints_nothing =
            NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.allowEmptyShould(true);
}
