package org.lapwright.core.car;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/**
 * What the numbers of a car usually are that nobody measured, with one standard deviation wide enough to be honest.
 *
 * <p>Those that follow from a measured size follow it; the rest is common practice, no source, unless said. Where a published
 * range exists, {@code UsualNumbersReferenceTest} holds them to it.
 */
public final class UsualNumbers {
    private static final double NEWTON_METRE_PER_GCM = 9.80665e-5;
    private static final double RAD_PER_S_PER_RPM = 2 * Math.PI / 60;

    /** Wheelbase, balance point: shares of guide to rear axle. */
    private static final Share WHEELBASE = new Share(0.84, 0.05);

    private static final Share BALANCE = new Share(0.37, 0.05);

    /** Height of the weight: a share of the rear tyre's diameter. It lies between the axle (0.5) and the top of the tyre (1). */
    private static final Share HEIGHT = new Share(0.65, 0.1);

    /** A body with its weight spread evenly along its length has m L²/12. */
    private static final double INERTIA_SHARE = 0.3;

    /** Full-size frontal area times drag coefficient, 2 m² × 0.4, from memory; a model's shrinks with the square of its scale. */
    private static final double FULL_SIZE_DRAG_CM2 = 8000;

    private static final double DRAG_SHARE = 0.35;

    /** Guide to rear axle of a full-size car, which tells the scale of a model of unknown scale. */
    private static final double FULL_SIZE_LENGTH_MM = 3100;

    /**
     * Stall torque over no-load speed, N·m·s, does not depend on the winding: it is the square of the motor constant in
     * N·m/√W. A can's size sets it.
     */
    private static final double STALL_SHARE = 0.45;

    /** No-load current as a share of the stall current. */
    private static final Share NO_LOAD = new Share(0.07, 0.04);

    private final Map<String, Reading> byPath = new TreeMap<>();

    private UsualNumbers() {}

    /**
     * What was measured of the car, in the units of the car file.
     *
     * @param totalG weight
     * @param guideToRearAxleMm guide pivot to rear axle
     * @param rearTrackMm rear track
     * @param rearTyreMm diameter of the rear tyres
     * @param testVoltageV voltage of the motor's label
     * @param noLoadRpm speed of the motor's label
     */
    public record Measured(
            double totalG,
            double guideToRearAxleMm,
            double rearTrackMm,
            double rearTyreMm,
            double testVoltageV,
            double noLoadRpm) {}

    /** The usual numbers of a car of this scale and these sizes. */
    public static UsualNumbers of(ModelScale scale, Measured car) {
        UsualNumbers usual = new UsualNumbers();
        usual.sizes(car);
        usual.contacts(scale);
        usual.drag(scale, car);
        usual.motor(scale, car);
        return usual;
    }

    /** The usual reading of a number; empty for one that has to be measured or is absent from most cars. */
    public Optional<Reading> find(NumberKey key) {
        return Optional.ofNullable(byPath.get(key.path()));
    }

    /** The usual current running free of a motor that draws so much held still, both A. */
    public static Reading noLoadCurrentA(double stallA) {
        return clamped(Motor.NO_LOAD_CURRENT, NO_LOAD.of(stallA));
    }

    private void sizes(Measured car) {
        double length = car.guideToRearAxleMm();
        put(Chassis.WHEELBASE, WHEELBASE.of(length));
        put(Chassis.FRONT_TRACK, new Reading(car.rearTrackMm(), 2));
        put(WeighedCar.CG_AHEAD, BALANCE.of(length));
        put(WeighedCar.CG_LEFT, new Reading(0, 0.5));
        put(WeighedCar.CG_HEIGHT, HEIGHT.of(car.rearTyreMm()));
        double inertia = car.totalG() * length * length / 12;
        put(WeighedCar.YAW_INERTIA, new Reading(inertia, INERTIA_SHARE * inertia));
    }

    private void contacts(ModelScale scale) {
        double depth = switch (scale) {
            case ONE_24 -> 7;
            case ONE_43 -> 5;
            case ONE_32, OTHER -> 6.5;
        };
        put(Guide.BLADE_DEPTH, new Reading(depth, scale == ModelScale.OTHER ? 1.5 : 0.7));
        put(Guide.SLOT_FRICTION, new Reading(0.2, 0.1));
        put(Guide.BRAID_DRAG, new Reading(1, 0.5));
        put(Guide.MIN_GUIDE_LOAD, new Reading(2, 1));
        put(RearTyre.GRIP, new Reading(1, 0.2));
        put(SetUp.PICKUP, new Reading(0.1, 0.05));
    }

    private void drag(ModelScale scale, Measured car) {
        double divisor = scale == ModelScale.OTHER ? FULL_SIZE_LENGTH_MM / car.guideToRearAxleMm() : scale.divisor();
        double area = FULL_SIZE_DRAG_CM2 / (divisor * divisor);
        put(Drag.ROLLING_RESISTANCE, new Reading(0.02, 0.01));
        put(Drag.DRAG_AREA, new Reading(area, DRAG_SHARE * area));
    }

    private void motor(ModelScale scale, Measured car) {
        double perSpeed = switch (scale) {
            case ONE_24 -> 8e-6;
            case ONE_43 -> 4e-6;
            case ONE_32, OTHER -> 6e-6;
        };
        double rotor = switch (scale) {
            case ONE_24 -> 250;
            case ONE_43 -> 60;
            case ONE_32, OTHER -> 150;
        };
        double speed = car.noLoadRpm() * RAD_PER_S_PER_RPM;
        double torque = perSpeed * speed;
        double gcm = torque / NEWTON_METRE_PER_GCM;
        put(Gears.EFFICIENCY, new Reading(0.85, 0.05));
        put(Motor.STALL_TORQUE, new Reading(gcm, STALL_SHARE * gcm));
        // Torque per ampere is nearly volts per speed.
        put(Motor.NO_LOAD_CURRENT, noLoadCurrentA(torque * speed / car.testVoltageV()));
        put(Motor.ROTOR_INERTIA, new Reading(rotor, (scale == ModelScale.OTHER ? 0.6 : 0.35) * rotor));
    }

    private void put(NumberKey key, Reading reading) {
        byPath.put(key.path(), clamped(key, reading));
    }

    private static Reading clamped(NumberKey key, Reading reading) {
        double value = Math.max(key.min(), Math.min(key.max(), rounded(reading.value())));
        return new Reading(value, rounded(reading.plusMinus()));
    }

    /** A share of something, and its doubt as a share of the same. */
    private record Share(double value, double doubt) {
        Reading of(double whole) {
            return new Reading(value * whole, doubt * whole);
        }
    }

    /** To three significant digits: more would pretend to know. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(3)).doubleValue();
    }
}
