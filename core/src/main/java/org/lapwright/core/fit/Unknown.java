package org.lapwright.core.fit;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.car.Drag;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/**
 * A number of a car that laps may tell something of.
 *
 * @param name its key in the car file, as {@code grip}
 * @param path its place in the car file, as {@code rear_tyre.grip}
 * @param written as it stands there
 * @param belief what is believed of it before any lap
 * @param benchDeviation standard deviation that a careful measurement on the bench would leave
 */
public record Unknown(String name, String path, double written, Belief belief, double benchDeviation) {
    /**
     * How sure a number is that nobody gave a {@code plus_minus}, and how well the bench can know it: as a share of the number,
     * or of the least amount that matters where the number is near 0. Common practice, no source.
     */
    private enum Usual {
        GRIP(RearTyre.GRIP, 0.12, 0.03, 0),
        SPEED(Motor.NO_LOAD_RPM, 0.05, 0.01, 0),
        TORQUE(Motor.STALL_TORQUE, 0.12, 0.05, 0),
        CURRENT(Motor.STALL_CURRENT, 0.12, 0.05, 0),
        PICKUP(SetUp.PICKUP, 0.3, 0.1, 0.5),
        PULL(Magnet.DOWNFORCE, 0.15, 0.03, 0),
        ROLLING(Drag.ROLLING_RESISTANCE, 0.4, 0.15, 0.02);

        private final NumberKey key;
        private final double share;
        private final double bench;
        private final double least;

        Usual(NumberKey key, double share, double bench, double least) {
            this.key = key;
            this.share = share;
            this.bench = bench;
            this.least = least;
        }

        boolean isAbout(NamedReading number) {
            return number.path().equals(key.path());
        }

        Unknown of(NamedReading number) {
            Reading reading = number.reading();
            double size = Math.max(reading.value(), least);
            double deviation = reading.isUncertain() ? reading.plusMinus() : share * size;
            return new Unknown(
                    key.name(),
                    number.path(),
                    reading.value(),
                    new Belief(reading.value(), deviation, key.min(), key.max()),
                    Math.min(bench * size, deviation));
        }
    }

    /**
     * The badly known numbers of a car.
     *
     * @param magnetic whether its magnet, if it has one, pulls where it drives
     */
    public static List<Unknown> of(SetUp car, boolean magnetic) {
        List<Unknown> found = new ArrayList<>();
        for (NamedReading number : car.numbers()) {
            for (Usual usual : Usual.values()) {
                boolean idle =
                        usual == Usual.PULL && (!magnetic || number.reading().value() == 0);
                if (usual.isAbout(number) && !idle) {
                    found.add(usual.of(number));
                }
            }
        }
        return List.copyOf(found);
    }

    /**
     * What the number of another set-up of the car would be. Where the first is not 0 both are wrong by the same factor: a tyre
     * trued or a magnet moved keeps what was not known of it.
     *
     * @param there the number as that set-up has it
     * @param value a value of this one
     */
    double carriedTo(double there, double value) {
        double carried = written > 0 && there > 0 ? there * value / written : there + value - written;
        return Math.min(Math.max(carried, belief.low()), belief.high());
    }
}
