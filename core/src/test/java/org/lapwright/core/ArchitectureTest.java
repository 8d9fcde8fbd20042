package org.lapwright.core;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The walls of the core: who may depend on whom, and that nothing here touches the world outside. */
class ArchitectureTest {
    private static final String ROOT = "org.lapwright.core.";
    private static final int MAX_TYPES_PER_PACKAGE = 25;
    private static final JavaClasses CODE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.lapwright.core");

    /** Every room and the rooms it may see; see docs/architecture.md. */
    @ParameterizedTest
    @CsvSource({
        "units,''",
        "num,''",
        "doubt,units",
        "stats,num units",
        "track,units num",
        "car,units",
        "dynamics,car track num units",
        "numbers,car track dynamics num units",
        "prediction,doubt dynamics car track units",
        "laps,units stats",
        "trial,laps stats car units",
        "fit,prediction doubt dynamics trial laps stats car track num units",
        "advice,fit prediction doubt dynamics numbers trial laps stats car track num units",
    })
    void roomsSeeOnlyTheirNeighbours(String room, String neighbours) {
        String[] allowed = Stream.concat(Stream.of(room, neighbours.split(" ")[0]), Stream.of(neighbours.split(" ")))
                .filter(name -> !name.isEmpty())
                .map(name -> ROOT + name + "..")
                .toArray(String[]::new);
        classes()
                .that()
                .resideInAPackage(ROOT + room + "..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(Stream.concat(Stream.of(allowed), Stream.of("java..", "org.hipparchus.."))
                        .toArray(String[]::new))
                .allowEmptyShould(true)
                .check(CODE);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("org.lapwright.core.(**)").should().beFreeOfCycles().check(CODE);
    }

    @Test
    void coreTouchesNothingOutside() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.io..",
                        "java.net..",
                        "java.nio.file..",
                        "java.sql..",
                        "java.util.logging..",
                        "java.util.concurrent..")
                .orShould()
                .callMethod(Instant.class, "now")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .check(CODE);
    }

    @Test
    void packagesStaySmall() {
        Map<String, Integer> types = new TreeMap<>();
        CODE.stream()
                .filter(type -> !type.isNestedClass() && !type.getSimpleName().equals("package-info"))
                .forEach(type -> types.merge(type.getPackageName(), 1, Integer::sum));
        types.values().removeIf(count -> count <= MAX_TYPES_PER_PACKAGE);
        org.assertj.core.api.Assertions.assertThat(types)
                .as("packages over the ceiling")
                .isEmpty();
    }
}
