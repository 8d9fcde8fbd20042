package org.lapwright.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.BallastChange;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

/** What makes two cars, each with its driver and on its lane, run level: weight on the faster one, or less voltage on its lane. */
public final class EvenRace {
    private static final double LEVEL_S = 0.0005;
    private static final double HEAVIEST_G = 60;
    private static final double MASS_STEP_G = 1;
    private static final double MASS_TO_G = 0.1;
    private static final double LEAST_SHARE_OF_VOLTAGE = 0.3;
    private static final double SHARE_STEP = 0.02;
    private static final double VOLTAGE_TO_V = 0.01;
    private static final double LOW_MM = 3;
    private static final double NOSE_MM = 6;
    private static final double HELD_MIN = 0.5;

    private EvenRace() {}

    /**
     * A car, where it runs, and how much of its best lap its driver makes of it.
     *
     * @param car as it is
     * @param course its lane
     * @param held share of the best speed that the driver holds, 0.5 to 1; 1 for the best lap itself
     * @param rules of its class, kept when it takes ballast
     */
    public record Rival(Build car, Course course, double held, ClassLimits rules) {
        /** Checks the share. */
        public Rival {
            if (!(held >= HELD_MIN && held <= 1)) {
                throw new IllegalArgumentException(
                        "the share of the best lap that a driver holds is %s; it must be from 0.5 to 1"
                                .formatted(held));
            }
        }
    }

    /** What is put on the faster car. */
    public enum By {
        /** Weight, low: under its centre of gravity, so that its balance stays, or over the guide where that is not enough. */
        BALLAST,
        /** Voltage off its lane. */
        VOLTAGE
    }

    /**
     * A way to run level.
     *
     * @param by what
     * @param amount g of ballast more, or V of supply on its lane
     * @param ballast where the weight goes; empty for voltage
     * @param lapS of the car with it, as its driver holds it, s
     */
    public record Way(By by, double amount, Optional<Ballast> ballast, double lapS) {}

    /**
     * How two cars stand, and what levels them.
     *
     * @param firstS lap of the first as its driver holds it, s
     * @param secondS of the second
     * @param firstIsFaster which of them is to be held back
     * @param ways how; none when they are level already, or when nothing in reason holds the faster one back enough
     */
    public record Answer(double firstS, double secondS, boolean firstIsFaster, List<Way> ways) {
        /** Copies the list. */
        public Answer {
            ways = List.copyOf(ways);
        }

        /** Whether nothing needs to be done: they are within half a thousandth of a second. */
        public boolean isLevel() {
            return Math.abs(firstS - secondS) <= LEVEL_S;
        }
    }

    /**
     * Answers.
     *
     * @throws IllegalArgumentException if one of them does not get round
     */
    public static Answer of(Rival first, Rival second) {
        double firstS = lapS(first, first.car().setUp(), first.course().track());
        double secondS = lapS(second, second.car().setUp(), second.course().track());
        if (!Double.isFinite(firstS) || !Double.isFinite(secondS)) {
            throw new IllegalArgumentException("%s does not get round; predict says where it is stuck"
                    .formatted((Double.isFinite(firstS) ? second : first)
                            .car()
                            .setUp()
                            .name()));
        }
        boolean firstIsFaster = firstS < secondS;
        Rival faster = firstIsFaster ? first : second;
        double slowS = Math.max(firstS, secondS);
        List<Way> ways = new ArrayList<>();
        if (slowS - Math.min(firstS, secondS) > LEVEL_S) {
            byBallast(faster, slowS).ifPresent(ways::add);
            byVoltage(faster, slowS).ifPresent(ways::add);
        }
        return new Answer(firstS, secondS, firstIsFaster, ways);
    }

    /** Under the centre of gravity if that is enough, else over the guide, where it takes load off the driven wheels too. */
    private static Optional<Way> byBallast(Rival faster, double slowS) {
        SetUp car = faster.car().setUp();
        Track track = faster.course().track();
        SetUpNumbers.Standing standing =
                SetUpNumbers.of(car, track.surface(), track.power().supplyV()).standing();
        double nose = car.chassis().guideToRearAxleMm().value() - NOSE_MM;
        return byBallast(faster, slowS, standing.cgAheadMm(), standing.cgLeftMm())
                .or(() -> byBallast(faster, slowS, nose, 0));
    }

    private static Optional<Way> byBallast(Rival faster, double slowS, double xMm, double yMm) {
        DoubleFunction<Ballast> piece = grams -> new Ballast(
                "level weight",
                Reading.exact(grams),
                Reading.exact(Math.rint(xMm)),
                Reading.exact(Math.rint(yMm)),
                Reading.exact(LOW_MM));
        DoubleFunction<Double> lap =
                grams -> Possible.of(() -> new BallastChange.Added(piece.apply(grams)).apply(faster.car()))
                        .filter(faster.rules()::allow)
                        .map(car -> lapS(faster, car.setUp(), faster.course().track()))
                        .orElse(Double.NaN);
        return crossing(lap, slowS, 0, MASS_STEP_G, HEAVIEST_G, MASS_TO_G).map(found -> {
            double grams = Math.round(found / MASS_TO_G) * MASS_TO_G;
            return new Way(By.BALLAST, grams, Optional.of(piece.apply(grams)), lap.apply(grams));
        });
    }

    private static Optional<Way> byVoltage(Rival faster, double slowS) {
        double full = faster.course().track().power().supplyV();
        DoubleFunction<Double> lap =
                volts -> Possible.of(() -> lapS(faster, faster.car().setUp(), fed(faster, volts)))
                        .orElse(Double.NaN);
        return crossing(lap, slowS, full, -SHARE_STEP * full, LEAST_SHARE_OF_VOLTAGE * full, VOLTAGE_TO_V)
                .map(found -> {
                    double volts = Math.round(found / VOLTAGE_TO_V) * VOLTAGE_TO_V;
                    return new Way(By.VOLTAGE, volts, Optional.empty(), lap.apply(volts));
                });
    }

    /** The first place from {@code from} towards {@code to} where the lap gets as slow as wanted, halved down to {@code fine}. */
    private static Optional<Double> crossing(
            DoubleFunction<Double> lap, double slowS, double from, double step, double to, double fine) {
        double before = from;
        for (double at = from + step; step > 0 ? at <= to : at >= to; at += step) {
            double lapS = lap.apply(at);
            if (Double.isNaN(lapS)) {
                return Optional.empty();
            }
            if (lapS >= slowS) {
                double slow = at;
                while (Math.abs(slow - before) > fine / 4) {
                    double middle = (slow + before) / 2;
                    if (lap.apply(middle) >= slowS) {
                        slow = middle;
                    } else {
                        before = middle;
                    }
                }
                return Optional.of((slow + before) / 2);
            }
            before = at;
        }
        return Optional.empty();
    }

    private static Track fed(Rival rival, double volts) {
        Track track = rival.course().track();
        return track.withPower(track.power().withSupplyV(volts));
    }

    private static double lapS(Rival rival, SetUp car, Track track) {
        return new LapSolver(track.cells(rival.course().lane()))
                        .solve(ResolvedCar.of(car, track.surface()))
                        .lapS()
                / rival.held();
    }
}
