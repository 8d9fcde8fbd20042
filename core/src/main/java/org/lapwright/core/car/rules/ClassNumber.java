package org.lapwright.core.car.rules;

import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/** A number that a class sets for its cars: the least or the most of something. */
public enum ClassNumber {
    /** Least weight. */
    LEAST_MASS(
            "least_mass_g",
            "Least weight, g",
            "it weighs",
            1,
            5000,
            car -> car.massProperties().totalG()),
    /** Greatest weight. */
    MOST_MASS(
            "most_mass_g",
            "Greatest weight, g",
            "it weighs",
            1,
            5000,
            car -> car.massProperties().totalG()),
    /** Greatest track width of either axle. */
    MOST_WIDTH("most_width_mm", "Greatest track width, mm", "its track is", 10, 500, ClassNumber::widthMm),
    /** Least diameter of the rear tyres. */
    LEAST_TYRE("least_tyre_mm", "Least rear tyre, mm", "its rear tyres measure", 5, 80, ClassNumber::tyreMm),
    /** Greatest diameter of the rear tyres. */
    MOST_TYRE("most_tyre_mm", "Greatest rear tyre, mm", "its rear tyres measure", 5, 80, ClassNumber::tyreMm),
    /** Deepest blade of the guide. */
    MOST_BLADE(
            "most_blade_mm",
            "Deepest guide blade, mm",
            "its blade reaches down",
            0,
            20,
            car -> car.guide().bladeDepthMm().value());

    /** Sums of weighed grams do not come out round. */
    private static final double SLACK = 1e-6;

    private static final double SHOWN = 1000;

    private final NumberKey key;
    private final String label;
    private final String what;
    private final ToDoubleFunction<SetUp> measured;

    ClassNumber(String name, String label, String what, double min, double max, ToDoubleFunction<SetUp> measured) {
        this.key = new NumberKey("", name, min, max);
        this.label = label;
        this.what = what;
        this.measured = measured;
    }

    private static double widthMm(SetUp car) {
        return Math.max(
                car.chassis().rearTrackMm().value(),
                car.chassis().frontTrackMm().value());
    }

    private static double tyreMm(SetUp car) {
        return car.rearTyre().diameterMm().value();
    }

    /** Its name in files, with the range that makes sense. */
    public NumberKey key() {
        return key;
    }

    /** Its name for people, with its unit. */
    public String label() {
        return label;
    }

    /** Its name within a sentence, as {@code least weight}. */
    public String words() {
        return label.substring(0, label.indexOf(',')).toLowerCase(Locale.ROOT);
    }

    /** Whether it is the least of something, else it is the most. */
    public boolean isLeast() {
        return name().startsWith("LEAST");
    }

    /** Whether a car keeps within a limit. */
    boolean isKept(SetUp car, double limit) {
        double number = measured.applyAsDouble(car);
        return isLeast() ? number >= limit - SLACK : number <= limit + SLACK;
    }

    /** What a car does that breaks a limit, as {@code it weighs 78.4 g; the class asks for at least 80 g}. */
    String broken(SetUp car, double limit) {
        double number = Math.rint(SHOWN * measured.applyAsDouble(car)) / SHOWN;
        return "%s %s %s; the class asks for at %s %s %s"
                .formatted(
                        what,
                        Check.number(number),
                        key.unit(),
                        isLeast() ? "least" : "most",
                        Check.number(limit),
                        key.unit());
    }
}
