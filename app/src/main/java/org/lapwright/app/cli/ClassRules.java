package org.lapwright.app.cli;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.lapwright.core.advice.Bounds;
import picocli.CommandLine.Option;

/** The rules of the owner's class, as options. */
final class ClassRules {
    @Option(names = "--least-mass", paramLabel = "G", description = "Least weight that the class allows, g.")
    private @Nullable Double leastMass;

    @Option(names = "--most-mass", paramLabel = "G", description = "Greatest weight that the class allows, g.")
    private @Nullable Double mostMass;

    @Option(names = "--most-width", paramLabel = "MM", description = "Greatest track width that the class allows, mm.")
    private @Nullable Double mostWidth;

    @Option(names = "--no-magnet", description = "The class allows no magnet.")
    private boolean noMagnet;

    Bounds bounds() {
        return new Bounds(given(leastMass), given(mostMass), given(mostWidth), !noMagnet);
    }

    private static OptionalDouble given(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
