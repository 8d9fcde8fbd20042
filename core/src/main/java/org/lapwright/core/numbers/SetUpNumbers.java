package org.lapwright.core.numbers;

import java.util.Optional;
import java.util.OptionalDouble;
import org.lapwright.core.car.BenchMeasurements;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.MassProperties;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.MotorLine;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Surface;
import org.lapwright.core.units.Check;

/**
 * What a set-up works out to on a surface, before any lap.
 *
 * @param standing weight, balance and the loads at rest
 * @param gearing gears and tyres
 * @param holding when it slides and when it tips
 * @param motor the motor's constants
 */
public record SetUpNumbers(Standing standing, Gearing gearing, Holding holding, MotorLine motor) {
    /** Plan radius of the circle on which the slide is told, mm. */
    public static final double CIRCLE_MM = 300;

    /**
     * The car at rest on the level, ballast included.
     *
     * @param totalG mass, g
     * @param cgAheadMm centre of gravity ahead of the rear axle, mm
     * @param cgLeftMm centre of gravity left of the centre line, mm
     * @param cgHeightMm centre of gravity above the track, mm
     * @param guideLoadG load on the guide, and on front wheels that touch, gram-force; with the magnet. Negative when a
     *     magnet behind the rear axle would lift the nose
     * @param rearLoadG load on the rear tyres, gram-force; with the magnet. Negative when a magnet ahead of the guide
     *     would lift the tail
     */
    public record Standing(
            double totalG, double cgAheadMm, double cgLeftMm, double cgHeightMm, double guideLoadG, double rearLoadG) {}

    /**
     * Gears and tyres.
     *
     * @param ratio motor turns for one of the axle
     * @param mmPerMotorTurn way over the ground for one motor turn, π d / i, mm
     * @param freeSpeedMps speed on the flat with the motor running free: nothing to overcome but its own no-load torque,
     *     and nothing in the way of the voltage but its own resistance, m/s. An upper bound; 0 when the voltage does not
     *     turn the motor
     */
    public record Gearing(double ratio, double mmPerMotorTurn, double freeSpeedMps) {}

    /**
     * Sideways accelerations of the centre of gravity, across the car, in units of standard gravity, at which the car
     * gives way.
     *
     * @param tipG static threshold of the support polygon, with the magnet's moment about the tipping line on a surface that
     *     it pulls at. 0 when a magnet outside the wheels would tip the car at rest
     * @param tipWithoutMagnetG the same without the magnet: distance in plan from the centre of gravity to the nearer
     *     tipping line over the height; what the tilt test shows
     * @param slideG on a steady circle of {@link #CIRCLE_MM} plan radius of the guide point, flat, the motor left out:
     *     where the rear tyres let go, with the magnet, drag and slot friction. It is a_y of the centre of gravity, as
     *     {@code tipG} is, not v²/(R g) of the guide point, which is greater by the factor 1/cos ψ
     *     ({@link #slideOfGuideG}). Empty when the car is so long that it would stand across the slot
     * @param slideSpeedMps speed of the guide point there, m/s
     */
    public record Holding(double tipG, double tipWithoutMagnetG, OptionalDouble slideG, OptionalDouble slideSpeedMps) {
        /** What comes first, by {@code slideG} and {@code tipG}; a tie slides. Empty when there is no slide to compare. */
        public Optional<Yield> yieldsFirst() {
            return slideG.isEmpty()
                    ? Optional.empty()
                    : Optional.of(slideG.getAsDouble() > tipG ? Yield.TIP : Yield.SLIDE);
        }

        /** v²/(R g) of the guide point where the rear lets go. */
        public OptionalDouble slideOfGuideG() {
            return slideSpeedMps.isEmpty()
                    ? slideSpeedMps
                    : OptionalDouble.of(slideSpeedMps.getAsDouble()
                            * slideSpeedMps.getAsDouble()
                            / (CIRCLE_MM / 1000 * ResolvedCar.GRAVITY));
        }
    }

    /**
     * Works out a set-up.
     *
     * @param setUp the car
     * @param surface what it stands on
     * @param volts voltage at which the free speed is told: the track's supply, or the motor's test voltage, V
     * @throws IllegalArgumentException if the voltage is not one that a supply gives
     */
    public static SetUpNumbers of(SetUp setUp, Surface surface, double volts) {
        Check.inRange(volts, Motor.TEST_VOLTAGE.min(), Motor.TEST_VOLTAGE.max(), "voltage for the free speed", "V");
        MotorLine motor = MotorLine.of(setUp.motor());
        return new SetUpNumbers(standing(setUp, surface), gearing(setUp, motor, volts), holding(setUp, surface), motor);
    }

    /** Works out a set-up without a track: grip as measured, no magnet, the motor's test voltage. */
    public static SetUpNumbers onBench(SetUp setUp) {
        return of(setUp, Surface.BENCH, setUp.motor().testVoltageV().value());
    }

    private static Standing standing(SetUp setUp, Surface surface) {
        MassProperties mass = setUp.massProperties();
        double length = setUp.chassis().guideToRearAxleMm().value();
        double pullG = pullG(setUp, surface);
        double momentGmm = mass.totalG() * mass.aheadMm() + pullG * pullAheadMm(setUp);
        double guide = momentGmm / length;
        return new Standing(
                mass.totalG(), mass.aheadMm(), mass.leftMm(), mass.heightMm(), guide, mass.totalG() + pullG - guide);
    }

    private static Gearing gearing(SetUp setUp, MotorLine motor, double volts) {
        ResolvedCar.Drive drive = ResolvedCar.Drive.of(setUp);
        return new Gearing(
                drive.ratio(),
                setUp.gears().mmPerMotorTurn(setUp.rearTyre().diameterMm().value()),
                Math.max(0, motor.noLoadRadPerS(volts)) / drive.gearing());
    }

    private static Holding holding(SetUp setUp, Surface surface) {
        MassProperties mass = setUp.massProperties();
        double edge = setUp.tippingEdgeMm();
        double magnetEdge = BenchMeasurements.tippingEdgeMm(setUp.chassis(), pullAheadMm(setUp), 0);
        double held = edge + pullG(setUp, surface) / mass.totalG() * magnetEdge;
        Optional<SteadyCircle.Slide> slide = SteadyCircle.slide(
                ResolvedCar.Body.of(setUp), ResolvedCar.Contact.of(setUp, surface), CIRCLE_MM / 1000);
        return new Holding(
                Math.max(0, held) / mass.heightMm(),
                edge / mass.heightMm(),
                slide.map(at -> OptionalDouble.of(at.acrossG())).orElse(OptionalDouble.empty()),
                slide.map(at -> OptionalDouble.of(at.speedMps())).orElse(OptionalDouble.empty()));
    }

    private static double pullG(SetUp setUp, Surface surface) {
        return surface.magnetic()
                ? setUp.magnet().map(magnet -> magnet.downforceG().value()).orElse(0.0)
                : 0;
    }

    private static double pullAheadMm(SetUp setUp) {
        return setUp.magnet().map(Magnet::xMm).map(x -> x.value()).orElse(0.0);
    }
}
