package org.lapwright.app.cli;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.car.rules.ClassNumber;
import picocli.CommandLine.Option;

/** The rules of the owner's class, as options. */
final class ClassRules {
    @Option(names = "--least-mass", paramLabel = "G", description = "Least weight that the class allows, g.")
    private @Nullable Double leastMass;

    @Option(names = "--most-mass", paramLabel = "G", description = "Greatest weight that the class allows, g.")
    private @Nullable Double mostMass;

    @Option(names = "--most-width", paramLabel = "MM", description = "Greatest track width that the class allows, mm.")
    private @Nullable Double mostWidth;

    @Option(names = "--least-tyre", paramLabel = "MM", description = "Least diameter of the rear tyres, mm.")
    private @Nullable Double leastTyre;

    @Option(names = "--most-tyre", paramLabel = "MM", description = "Greatest diameter of the rear tyres, mm.")
    private @Nullable Double mostTyre;

    @Option(names = "--most-blade", paramLabel = "MM", description = "Deepest guide blade that the class allows, mm.")
    private @Nullable Double mostBlade;

    @Option(names = "--no-magnet", description = "The class allows no magnet.")
    private boolean noMagnet;

    /** The rules given. */
    ClassLimits bounds() {
        Map<ClassNumber, Double> numbers = new EnumMap<>(ClassNumber.class);
        put(numbers, ClassNumber.LEAST_MASS, leastMass);
        put(numbers, ClassNumber.MOST_MASS, mostMass);
        put(numbers, ClassNumber.MOST_WIDTH, mostWidth);
        put(numbers, ClassNumber.LEAST_TYRE, leastTyre);
        put(numbers, ClassNumber.MOST_TYRE, mostTyre);
        put(numbers, ClassNumber.MOST_BLADE, mostBlade);
        try {
            return new ClassLimits(numbers, !noMagnet, Map.of());
        } catch (IllegalArgumentException senseless) {
            throw new BadInput("Rules of the class: " + senseless.getMessage() + ".");
        }
    }

    private static void put(Map<ClassNumber, Double> numbers, ClassNumber which, @Nullable Double limit) {
        if (limit != null) {
            numbers.put(which, limit);
        }
    }
}
