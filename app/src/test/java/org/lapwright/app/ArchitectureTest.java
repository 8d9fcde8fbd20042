package org.lapwright.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The walls of the app: every room and those it must not see; see docs/architecture.md. */
class ArchitectureTest {
    private static final String ROOT = "org.lapwright.app.";
    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.lapwright");

    @ParameterizedTest
    @CsvSource({
        "usecase,store capture files sheet web cli main",
        "files,usecase store capture sheet web cli main",
        "store,capture files sheet web cli main",
        "capture,store files sheet web cli main",
        "sheet,store capture files web cli main",
        "web,store capture cli main",
        "cli,store capture web main",
    })
    void roomsDoNotSee(String room, String others) {
        noClasses()
                .that()
                .resideInAPackage(ROOT + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(Stream.of(others.split(" "))
                        .map(name -> ROOT + name + "..")
                        .toArray(String[]::new))
                .allowEmptyShould(true)
                .check(CODE);
    }

    @Test
    void coreDoesNotSeeTheApp() {
        noClasses()
                .that()
                .resideInAPackage("org.lapwright.core..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.lapwright.app..")
                .check(CODE);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("org.lapwright.app.(**)").should().beFreeOfCycles().check(CODE);
    }
}
