package org.lapwright.app.usecase.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.ExplainedNumber.Input;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.MassProperties;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.numbers.SetUpNumbers;

/** What goes into the numbers of a set-up, by symbol, name and value, as their workings list it. */
final class NumberInputs {
    private final SetUp setUp;
    private final SetUpNumbers numbers;

    NumberInputs(SetUp setUp, SetUpNumbers numbers) {
        this.setUp = setUp;
        this.numbers = numbers;
    }

    /** The weighed car and every piece of ballast. */
    List<Input> weights() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(of("", "weighed car", weighed().totalG(), "g"));
        setUp.ballast()
                .forEach(piece -> inputs.add(of("", piece.name(), piece.massG().value(), "g")));
        return inputs;
    }

    /** The same with their places along one axis. */
    List<Input> weights(ToDoubleFunction<MassProperties> car, ToDoubleFunction<Ballast> piece) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(at("weighed car", weighed().totalG(), car.applyAsDouble(weighed())));
        setUp.ballast()
                .forEach(added -> inputs.add(at(added.name(), added.massG().value(), piece.applyAsDouble(added))));
        return inputs;
    }

    /** Weight, balance and length; with the magnet where it pulls so many g. */
    List<Input> loads(double pullG) {
        List<Input> inputs =
                new ArrayList<>(List.of(of("m", "weight", numbers.standing().totalG(), "g"), balancePoint(), length()));
        if (pullG > 0) {
            inputs.add(of("F", "magnet", pullG, "g"));
            setUp.magnet()
                    .ifPresent(fitted -> inputs.add(of(
                            "x_M", "magnet ahead of the rear axle", fitted.xMm().value(), "mm")));
        }
        return inputs;
    }

    List<Input> teeth() {
        return List.of(
                new Input(
                        "",
                        "teeth on the axle",
                        Figures.significant(setUp.gears().axleTeeth().value(), 4)),
                new Input(
                        "",
                        "teeth on the motor",
                        Figures.significant(setUp.gears().pinionTeeth().value(), 4)));
    }

    /** The bench test of the motor. */
    List<Input> motorTest() {
        Input strength = setUp.motor().strength() instanceof MotorStrength.StallTorque torque
                ? of("T", "stall torque", torque.gcm().value(), "gf·cm")
                : of(
                        "I_s",
                        "stall current",
                        ((MotorStrength.StallCurrent) setUp.motor().strength())
                                .ampere()
                                .value(),
                        "A");
        return List.of(
                of("V", "test voltage", setUp.motor().testVoltageV().value(), "V"),
                of("ω₀", "no-load speed", setUp.motor().noLoadRpm().value(), "rpm"),
                noLoadCurrent(),
                strength);
    }

    double lengthMm() {
        return setUp.chassis().guideToRearAxleMm().value();
    }

    Input length() {
        return of("L", "guide to rear axle", lengthMm(), "mm");
    }

    Input balancePoint() {
        return of("x", "balance point", numbers.standing().cgAheadMm(), "mm");
    }

    Input height() {
        return of("h", "height of the weight", numbers.standing().cgHeightMm(), "mm");
    }

    Input tippingEdge() {
        return of("e", "centre of gravity to the tipping line, in plan", setUp.tippingEdgeMm(), "mm");
    }

    Input rearLoad() {
        return of("", "load on the rear tyres", numbers.standing().rearLoadG(), "g");
    }

    Input tyre() {
        return of("d", "rear tyre", setUp.rearTyre().diameterMm().value(), "mm");
    }

    Input ratio() {
        return new Input("i", "gear ratio", Figures.fixed(numbers.gearing().ratio(), 3));
    }

    Input constant() {
        return of("K", "motor constant", numbers.motor().constantVs(), "V·s");
    }

    Input resistance() {
        return of("R", "motor resistance", numbers.motor().resistanceOhm(), "ohm");
    }

    Input noLoadCurrent() {
        return of("I₀", "no-load current", numbers.motor().noLoadCurrentA(), "A");
    }

    static Input of(String symbol, String name, double value, String unit) {
        return new Input(symbol, name, plain(value, unit));
    }

    private MassProperties weighed() {
        return setUp.mass().massProperties(lengthMm());
    }

    private static Input at(String name, double grams, double atMm) {
        return new Input("", name, plain(grams, "g") + " at " + plain(atMm, "mm"));
    }

    private static String plain(double value, String unit) {
        return Figures.significant(value, 4) + " " + unit;
    }
}
