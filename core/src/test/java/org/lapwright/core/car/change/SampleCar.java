package org.lapwright.core.car.change;

import java.util.List;
import java.util.Optional;
import org.lapwright.core.car.Balance;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Drag;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Guide;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.units.Reading;

/** An invented car with round numbers. */
public final class SampleCar {
    private SampleCar() {}

    /** 80 g, 100 mm from guide to rear axle, a magnet, one piece of ballast. */
    public static SetUp setUp() {
        return new SetUp(
                "Sample",
                new Chassis(exact(100), exact(80), exact(50), exact(50), FrontWheels.TOUCHING),
                new WeighedCar(
                        exact(80),
                        new Balance.OnTwoScales(new Reading(32, 0.5), new Reading(48, 0.5)),
                        exact(0),
                        exact(14),
                        Optional.empty()),
                List.of(new Ballast("pod", exact(5), exact(20), exact(10), exact(4))),
                new Guide(exact(6.5), exact(0.2), exact(1), exact(2)),
                new RearTyre(exact(20), exact(1.05)),
                new Gears(exact(11), exact(28), exact(0.88)),
                new Motor(exact(12), exact(20_500), exact(0.12), new MotorStrength.StallTorque(exact(190)), exact(150)),
                Optional.of(new Magnet(exact(60), exact(15))),
                Drag.NONE,
                exact(0));
    }

    /** The same with nothing noted beside the numbers. */
    public static Build build() {
        return Build.of(setUp());
    }

    static Reading exact(double value) {
        return Reading.exact(value);
    }
}
