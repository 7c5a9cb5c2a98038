package hornwright.desk.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Arrows point down: desk, bench, engines; and within each floor as drawn in docs/architecture.md. */
@AnalyzeClasses(packages = "hornwright", importOptions = ImportOption.DoNotIncludeTests.class)
public final class ArchitectureTest {
    @ArchTest
    static final ArchRule engines_know_nothing_above_them = noClasses()
            .that()
            .resideInAPackage("hornwright.engines..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("hornwright.bench..", "hornwright.desk..");

    @ArchTest
    static final ArchRule the_bench_knows_nothing_above_it = noClasses()
            .that()
            .resideInAPackage("hornwright.bench..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("hornwright.desk..");

    @ArchTest
    static final ArchRule engines_and_bench_touch_no_file_clock_network_or_database = noClasses()
            .that()
            .resideInAnyPackage("hornwright.engines..", "hornwright.bench..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.io..", "java.nio.file..", "java.net..", "java.sql..", "tools.jackson..", "io.javalin..")
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(java.time.Instant.class, "now")
            .orShould()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(java.util.Locale.class, "getDefault");

    @ArchTest
    static final ArchRule the_packages_of_the_engines_have_no_cycles =
            slices().matching("hornwright.engines.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule the_packages_of_the_bench_have_no_cycles =
            slices().matching("hornwright.bench.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule the_packages_of_the_desk_have_no_cycles =
            slices().matching("hornwright.desk.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule the_rooms_of_the_pages_have_no_cycles =
            slices().matching("hornwright.desk.web.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule what_a_page_shows_knows_no_request = noClasses()
            .that()
            .resideInAPackage("hornwright.desk.web..")
            .and()
            .haveNameMatching(".*(Page|Rows)(\\$.*)?")
            .or()
            .resideInAPackage("hornwright.desk.web.view..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.javalin..");

    @ArchTest
    static final ArchRule pages_and_commands_never_use_each_other = noClasses()
            .that()
            .resideInAPackage("hornwright.desk.web..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("hornwright.desk.cli..");

    @ArchTest
    static final ArchRule only_the_journal_speaks_sql = noClasses()
            .that()
            .resideOutsideOfPackages("hornwright.desk.journal..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "org.jdbi..", "org.flywaydb..", "com.zaxxer..", "org.sqlite..");

    @ArchTest
    static final ArchRule only_the_web_package_knows_the_web_server = noClasses()
            .that()
            .resideOutsideOfPackages("hornwright.desk.web..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.javalin..", "jakarta.servlet..", "org.eclipse.jetty..");

    @ArchTest
    static final ArchRule nothing_is_called_a_helper_manager_or_util = noClasses()
            .should()
            .haveSimpleNameEndingWith("Utils")
            .orShould()
            .haveSimpleNameEndingWith("Util")
            .orShould()
            .haveSimpleNameEndingWith("Helper")
            .orShould()
            .haveSimpleNameEndingWith("Manager");

    @ArchTest
    static final ArchRule exceptions_are_named_for_what_happened = classes()
            .that()
            .areAssignableTo(Exception.class)
            .should()
            .haveModifier(com.tngtech.archunit.core.domain.JavaModifier.FINAL);
}
