package setwright.fleet;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What knows of Spark, and what does not. */
@AnalyzeClasses(packages = "setwright", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArchitectureTest {

    @ArchTest
    static final ArchRule packages_form_no_cycles =
            slices().matching("setwright.fleet.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule fleet_is_known_to_no_one = noClasses()
            .that()
            .resideOutsideOfPackage("setwright.fleet..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("setwright.fleet..");

    @ArchTest
    static final ArchRule spark_is_known_to_two_packages = noClasses()
            .that()
            .resideOutsideOfPackages("setwright.fleet", "setwright.fleet.spark..", "setwright.fleet.summary..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.spark..")
            .because("what a worker does must be the same in a test, on one machine and on a cluster");

    @ArchTest
    static final ArchRule file_systems_are_known_to_depots = noClasses()
            .that()
            .resideOutsideOfPackages("setwright.fleet.depot..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.apache.hadoop.fs..");

    @ArchTest
    static final ArchRule reading_tables_is_left_to_intake = noClasses()
            .that()
            .resideInAPackage("setwright.fleet..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "org.duckdb..");
}
