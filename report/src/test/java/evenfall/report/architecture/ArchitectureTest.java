package evenfall.report.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the arrows of the house: who may know whom, and where third-party types are at home. */
class ArchitectureTest {

    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("evenfall");

    /** So that no rule below passes on an empty set. Raise the floors as the house grows. */
    @ParameterizedTest
    @CsvSource({"fixtures, 60", "ingest, 80", "fusion, 95", "report, 140"})
    void everyModule_wasSeen(String module, int floor) {
        long seen = HOUSE.stream()
                .filter(c -> c.getPackageName().startsWith("evenfall." + module))
                .count();

        assertThat(seen).isGreaterThanOrEqualTo(floor);
    }

    @Test
    void ingest_knowsNoOtherModule() {
        noClasses()
                .that()
                .resideInAPackage("evenfall.ingest..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("evenfall.fusion..", "evenfall.report..", "evenfall.fixtures..")
                .because("a stage knows the stages before it and never the ones after")
                .check(HOUSE);
    }

    @Test
    void fusion_knowsIngestOnly() {
        noClasses()
                .that()
                .resideInAPackage("evenfall.fusion..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("evenfall.report..", "evenfall.fixtures..")
                .because("a stage knows the stages before it and never the ones after")
                .check(HOUSE);
    }

    @Test
    void fixtures_isAnIndependentWitness() {
        noClasses()
                .that()
                .resideInAPackage("evenfall.fixtures..")
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "are neither its own nor the JDK's nor nullness marks",
                        (JavaClass c) -> !c.getPackageName().startsWith("evenfall.fixtures")
                                && !c.getPackageName().startsWith("java.")
                                && !c.getPackageName().startsWith("org.jspecify")
                                && !c.isPrimitive()
                                && !c.isArray()))
                .because("a witness that shares code with the accused proves nothing")
                .check(HOUSE);
    }

    @Test
    void fixtures_areUsedByTheDemoOnly() {
        noClasses()
                .that()
                .resideInAPackage("evenfall.report..")
                .and()
                .resideOutsideOfPackage("evenfall.report.demo..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("evenfall.fixtures..")
                .because("invented data must not slip into real work")
                .check(HOUSE);
    }

    @Test
    void packages_haveNoCircle() {
        slices().matching("evenfall.(*).(*)..").should().beFreeOfCycles().check(HOUSE);
    }

    @Test
    void fusion_isAPureFunctionOfItsInput() {
        noClasses()
                .that()
                .resideInAPackage("evenfall.fusion..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.io..", "java.nio.file..", "java.nio.channels..", "java.net..")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(Math.class, "random")
                .because("the same recording must give the same numbers everywhere and always")
                .check(HOUSE);
    }

    @ParameterizedTest
    @CsvSource({
        "com.fazecast.jSerialComm.., evenfall.ingest.serial..",
        "de.siegmar.fastcsv.., evenfall.report.csv..",
        "ch.randelshofer.fastdoubleparser.., evenfall.ingest.table..",
        "org.jfree.., evenfall.report.chart..",
        "org.apache.batik.., evenfall.report.chart..",
        "picocli.., evenfall.report.command..",
        "gg.jte.., evenfall.report.html..",
    })
    void thirdPartyTypes_stayAtHome(String library, String home) {
        noClasses()
                .that()
                .resideOutsideOfPackage(home)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .because("a library is easier to replace when one package knows it")
                .check(HOUSE);
    }

    @Test
    void json_staysInItsCodecs() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "evenfall.ingest.table..",
                        "evenfall.report.notation..",
                        "evenfall.report.json..",
                        "evenfall.report.log..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("tools.jackson..")
                .because("only what reads or writes JSON knows how")
                .check(HOUSE);
    }

    @Test
    void drawing_staysInChartsAndWindow() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "evenfall.report.chart..", "evenfall.report.window..", "evenfall.report.paper..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..")
                .because("starting the drawing system costs half a second that a table must not pay")
                .check(HOUSE);
    }

    @Test
    void standardStreamsAndExit_belongToTheCommandLine() {
        noClasses()
                .that()
                .resideOutsideOfPackage("evenfall.report.command..")
                .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .because("everything else may run inside a window or a test")
                .check(HOUSE);
    }

    @Test
    void exceptions_sayWhatWentWrong() {
        GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS.check(HOUSE);
    }

    @Test
    void names_sayWhatAClassIsAbout() {
        noClasses()
                .should()
                .haveNameMatching(".*(Manager|Helper|Utils?|Impl|Data|Info)")
                .because("a name that fits anything says nothing")
                .check(HOUSE);
    }

    @Test
    void everyPackage_saysWhatItIsFor() {
        assertThat(HOUSE.stream()
                        .map(JavaClass::getPackageName)
                        .distinct()
                        .filter(p -> !p.startsWith("evenfall.report.html.templates"))
                        .filter(p -> HOUSE.stream()
                                .noneMatch(c -> c.getPackageName().equals(p)
                                        && c.getSimpleName().equals("package-info"))))
                .isEmpty();
    }
}
