package org.lapwright.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.prediction.ChangeForecaster;
import org.lapwright.core.prediction.ChangeForecaster.ChangeForecast;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Interval;
import org.lapwright.core.units.Reading;

/**
 * What one unit more of something does to the lap of a car on a lane.
 *
 * @param what one more of what
 * @param lapS change of the lap, s; negative is faster
 * @param intervalS of it, from what is not known of the car
 */
public record Sensitivity(What what, double lapS, Interval intervalS) {
    /** What there may be one more of, in the steps in which it is dealt with on a bench or at the track. */
    public enum What {
        /** Gram over the rear axle. */
        GRAM_REAR(car -> ballast(car, 0)),
        /** Gram at the guide. */
        GRAM_NOSE(car -> ballast(car, car.chassis().guideToRearAxleMm().value() - 1)),
        /** Millimetre by which the weight sits higher. */
        HEIGHT(Sensitivity::higher),
        /** Millimetre of tyre diameter. */
        TYRE(car -> car.withRearTyre(new RearTyre(
                plus(car.rearTyre().diameterMm(), 1), car.rearTyre().grip()))),
        /** Hundredth of grip. */
        GRIP(car -> car.withRearTyre(
                new RearTyre(car.rearTyre().diameterMm(), plus(car.rearTyre().grip(), 0.01)))),
        /** Tooth of the pinion. */
        PINION(car -> car.withGears(new Gears(
                plus(car.gears().pinionTeeth(), 1),
                car.gears().axleTeeth(),
                car.gears().efficiency()))),
        /** Tooth of the axle gear. */
        AXLE_GEAR(car -> car.withGears(new Gears(
                car.gears().pinionTeeth(),
                plus(car.gears().axleTeeth(), 1),
                car.gears().efficiency()))),
        /** Millimetre of track width, front and rear. */
        TRACK_WIDTH(Sensitivity::wider),
        /** Ten grams of magnet's pull. */
        MAGNET(car ->
                car.withMagnet(car.magnet().map(fitted -> new Magnet(plus(fitted.downforceG(), 10), fitted.xMm())))),
        /** Volt of supply. */
        VOLT(UnaryOperator.identity(), power -> power.withSupplyV(power.supplyV() + 1)),
        /** Ohm in the braking circuit. */
        BRAKE(
                UnaryOperator.identity(),
                power -> power.withBrakeOhm(power.brakeOhm().orElse(0) + 1));

        private final UnaryOperator<SetUp> more;
        private final UnaryOperator<Power> fed;

        What(UnaryOperator<SetUp> more) {
            this(more, UnaryOperator.identity());
        }

        What(UnaryOperator<SetUp> more, UnaryOperator<Power> fed) {
            this.more = more;
            this.fed = fed;
        }

        private boolean applies(SetUp car, Track track) {
            return switch (this) {
                case MAGNET -> car.magnet().isPresent();
                case BRAKE -> track.power().brakeOhm().isPresent();
                default -> true;
            };
        }

        /** The track with one more of it. */
        public Track more(Track track) {
            return track.withPower(fed.apply(track.power()));
        }

        /** The car with one more of it. */
        public SetUp more(SetUp car) {
            return more.apply(car);
        }
    }

    /**
     * All that apply to a car, on one lane, in the order of {@link What}.
     *
     * @param settings how many cars to draw, and the level of the intervals
     */
    public static List<Sensitivity> of(SetUp car, Track track, Lane lane, LapForecaster.Settings settings) {
        ChangeForecaster forecaster = new ChangeForecaster(track.cells(lane), track.surface());
        List<Sensitivity> found = new ArrayList<>();
        for (What what : What.values()) {
            if (what.applies(car, track)) {
                Possible.of(() -> forecaster(what, forecaster, track, lane).forecast(car, what::more, settings))
                        .flatMap(forecast -> of(what, forecast))
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    /** Where the track is fed otherwise, one that drives it both ways. */
    private static ChangeForecaster forecaster(What what, ChangeForecaster plain, Track track, Lane lane) {
        Track after = what.more(track);
        return after.equals(track)
                ? plain
                : new ChangeForecaster(track.cells(lane), after.cells(lane), track.surface());
    }

    private static Optional<Sensitivity> of(What what, ChangeForecast forecast) {
        return Double.isFinite(forecast.centralS())
                ? forecast.differenceS().map(interval -> new Sensitivity(what, forecast.centralS(), interval))
                : Optional.empty();
    }

    /** At the height of the centre of gravity, so that the place along the car is all that is told. */
    private static SetUp ballast(SetUp car, double aheadMm) {
        List<Ballast> pieces = new ArrayList<>(car.ballast());
        Reading height = Reading.exact(car.massProperties().heightMm());
        pieces.add(new Ballast("one gram", Reading.exact(1), Reading.exact(aheadMm), Reading.exact(0), height));
        return car.withBallast(pieces);
    }

    private static SetUp higher(SetUp car) {
        WeighedCar mass = car.mass();
        return car.withMass(new WeighedCar(
                mass.totalG(), mass.balance(), mass.cgLeftMm(), plus(mass.cgHeightMm(), 1), mass.yawInertiaGmm2()));
    }

    private static SetUp wider(SetUp car) {
        Chassis was = car.chassis();
        return car.withChassis(new Chassis(
                was.guideToRearAxleMm(),
                was.wheelbaseMm(),
                plus(was.rearTrackMm(), 1),
                plus(was.frontTrackMm(), 1),
                was.frontWheels()));
    }

    private static Reading plus(Reading reading, double more) {
        return reading.withValue(reading.value() + more);
    }
}
