package org.lapwright.app.usecase.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.ExplainedNumber.Input;
import org.lapwright.core.car.Balance;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.MotorStrength;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.numbers.Yield;
import org.lapwright.core.prediction.SetUpDoubt;

/** What a set-up works out to, each number with its meaning and its working. */
public final class NumbersInWords {
    /** A car whose two thresholds are nearer than this gives way now one way, now the other (common practice, no source). */
    private static final double CLOSE_CALL = 0.1;

    private final SetUp setUp;
    private final Function<SetUp, SetUpNumbers> workOut;
    private final SetUpNumbers numbers;
    private final SetUpDoubt doubt;
    private final double volts;
    private final double grip;

    NumbersInWords(SetUp setUp, Function<SetUp, SetUpNumbers> workOut, double volts, double grip) {
        this.setUp = setUp;
        this.workOut = workOut;
        this.numbers = workOut.apply(setUp);
        this.doubt = new SetUpDoubt(setUp);
        this.volts = volts;
        this.grip = grip;
    }

    /** The set-up. */
    public SetUp setUp() {
        return setUp;
    }

    /** The bare numbers. */
    public SetUpNumbers numbers() {
        return numbers;
    }

    /** Whether it slides or tips first, and whether that is good. */
    public String yieldsFirst() {
        Optional<Yield> first = numbers.holding().yieldsFirst();
        if (first.isEmpty()) {
            return "The car is too long for a circle of 300 mm radius, so slide and tip cannot be compared there.";
        }
        double slide = numbers.holding().slideG().orElseThrow();
        double tip = numbers.holding().tipG();
        String margin = "%s g against %s g".formatted(Figures.fixed(slide, 2), Figures.fixed(tip, 2));
        if (Math.abs(slide - tip) < CLOSE_CALL * tip) {
            return "Slides and tips at nearly the same sideways g (" + margin
                    + "): now one, now the other. Lower weight or a wider track makes it slide first.";
        }
        return first.get() == Yield.SLIDE
                ? "Slides before it tips (" + margin + "): good, it warns before it goes."
                : "Tips before it slides (" + margin
                        + "): it goes over without warning. Lower weight, a wider track or less grip would change that.";
    }

    /** Every number in the order of the bench. */
    public List<ExplainedNumber> all() {
        List<ExplainedNumber> all = new ArrayList<>(balance());
        all.addAll(loads());
        all.addAll(gearing());
        all.addAll(holding());
        all.addAll(motor());
        return all;
    }

    private List<ExplainedNumber> balance() {
        SetUpNumbers.Standing standing = numbers.standing();
        boolean scales = setUp.mass().balance() instanceof Balance.OnTwoScales;
        return List.of(
                number("total_g", "weight", all -> all.standing().totalG(), "g", 1)
                        .because("The whole car, ballast included.", "m = weighed + Σ mᵢ", weights(Axis.NONE)),
                number(
                                "cg_ahead_of_rear_axle_mm",
                                "balance point",
                                all -> all.standing().cgAheadMm(),
                                "mm",
                                1)
                        .because(
                                "Where the car balances, ahead of the rear axle: %s of the way to the guide."
                                        .formatted(percent(standing.cgAheadMm() / lengthMm())),
                                scales
                                        ? "x = Σ mᵢ xᵢ / m, weighed x = L W_guide / (W_guide + W_rear)"
                                        : "x = Σ mᵢ xᵢ / m",
                                weights(Axis.AHEAD)),
                number(
                                "cg_left_mm",
                                "off centre (left +)",
                                all -> all.standing().cgLeftMm(),
                                "mm",
                                1)
                        .because(
                                Math.abs(standing.cgLeftMm()) < 0.05
                                        ? "The weight lies on the centre line."
                                        : "The weight lies to the %s: that side's turns tip it sooner."
                                                .formatted(standing.cgLeftMm() > 0 ? "left; right" : "right; left"),
                                "y = Σ mᵢ yᵢ / m",
                                weights(Axis.LEFT)),
                number(
                                "cg_height_mm",
                                "height of the weight",
                                all -> all.standing().cgHeightMm(),
                                "mm",
                                1)
                        .because(
                                "Height of the centre of gravity above the track; lower tips later.",
                                "h = Σ mᵢ zᵢ / m",
                                weights(Axis.UP)));
    }

    private List<ExplainedNumber> loads() {
        SetUpNumbers.Standing standing = numbers.standing();
        double least = setUp.guide().minGuideLoadG().value();
        double pull = standing.guideLoadG() + standing.rearLoadG() - standing.totalG();
        List<Input> inputs = new ArrayList<>(List.of(
                grams("m", "weight", standing.totalG()),
                mm("x", "balance point", standing.cgAheadMm()),
                mm("L", "guide to rear axle", lengthMm())));
        boolean pulled = pull > 1e-9;
        if (pulled) {
            inputs.add(grams("F", "magnet", pull));
            setUp.magnet()
                    .ifPresent(fitted -> inputs.add(mm(
                            "x_M", "magnet ahead of the rear axle", fitted.xMm().value())));
        }
        return List.of(
                number(
                                "guide_load_g",
                                "load on the guide",
                                all -> all.standing().guideLoadG(),
                                "g",
                                1)
                        .because(
                                "At rest, with what front wheels that touch carry of it. "
                                        + (standing.guideLoadG() > least
                                                ? "The braids want %s g at least."
                                                        .formatted(Figures.significant(least, 3))
                                                : "That is less than the %s g that keep the braids down."
                                                        .formatted(Figures.significant(least, 3))),
                                pulled ? "m x / L + F x_M / L" : "m x / L",
                                inputs),
                number(
                                "rear_load_g",
                                "load on the rear tyres",
                                all -> all.standing().rearLoadG(),
                                "g",
                                1)
                        .because(
                                "At rest; what the tyres' grip works with." + (pulled ? " The magnet is counted." : ""),
                                pulled ? "m + F − guide load" : "m − guide load",
                                inputs));
    }

    private List<ExplainedNumber> gearing() {
        SetUpNumbers.Gearing gearing = numbers.gearing();
        List<Input> gears = List.of(
                new Input(
                        "",
                        "teeth on the axle",
                        Figures.significant(setUp.gears().axleTeeth().value(), 4)),
                new Input(
                        "",
                        "teeth on the motor",
                        Figures.significant(setUp.gears().pinionTeeth().value(), 4)));
        Input diameter = mm("d", "rear tyre", setUp.rearTyre().diameterMm().value());
        Input ratio = new Input("i", "gear ratio", Figures.fixed(gearing.ratio(), 3));
        return List.of(
                number("ratio", "gear ratio", all -> all.gearing().ratio(), "", 3)
                        .because("Motor turns for one turn of the axle.", "i = axle teeth / motor teeth", gears),
                number(
                                "mm_per_motor_turn",
                                "way per motor turn",
                                all -> all.gearing().mmPerMotorTurn(),
                                "mm",
                                2)
                        .because(
                                "Way over the ground for one turn of the motor: more is longer gearing.",
                                "π d / i",
                                List.of(diameter, ratio)),
                number("free_speed_m_s", "free speed", all -> all.gearing().freeSpeedMps(), "m/s", 2)
                        .because(
                                "Speed with the motor running free at %s V; on the track it stays below."
                                        .formatted(Figures.significant(volts, 3)),
                                "ω₀ d / (2 i), ω₀ = (V − R I₀) / K",
                                List.of(
                                        new Input("V", "voltage", Figures.significant(volts, 4) + " V"),
                                        diameter,
                                        ratio,
                                        constant(),
                                        resistance(),
                                        noLoadCurrent())));
    }

    private List<ExplainedNumber> holding() {
        SetUpNumbers.Holding holding = numbers.holding();
        boolean touching = setUp.chassis().frontWheels() == FrontWheels.TOUCHING;
        boolean pulled = holding.tipG() != holding.tipWithoutMagnetG();
        return List.of(
                number("slide_g", "slides at", all -> all.holding().slideG().orElse(Double.NaN), "g", 2)
                        .because(
                                "Sideways g at which the rear lets go on a steady circle of 300 mm radius.",
                                "a_y / g at the centre of gravity where X² + Y² = (μ N_rear)², sin ψ = L / 300 mm",
                                List.of(
                                        new Input("μ", "grip", Figures.fixed(grip, 3)),
                                        grams(
                                                "",
                                                "load on the rear tyres",
                                                numbers.standing().rearLoadG()),
                                        mm(
                                                "x",
                                                "balance point",
                                                numbers.standing().cgAheadMm()),
                                        mm(
                                                "h",
                                                "height of the weight",
                                                numbers.standing().cgHeightMm()),
                                        mm("L", "guide to rear axle", lengthMm()))),
                number("tip_g", "tips at", all -> all.holding().tipG(), "g", 2)
                        .because(
                                "Sideways g at which it tips over the outer rear wheel and %s, standing still."
                                                .formatted(touching ? "front wheel" : "the guide")
                                        + (pulled
                                                ? " Without the magnet %s g, which is what a tilt test shows."
                                                        .formatted(Figures.fixed(holding.tipWithoutMagnetG(), 2))
                                                : ""),
                                pulled ? "(e + e_M F / m) / h, e_M: the magnet to the tipping line" : "e / h",
                                List.of(
                                        mm(
                                                "e",
                                                "centre of gravity to the tipping line, in plan",
                                                setUp.tippingEdgeMm()),
                                        mm(
                                                "h",
                                                "height of the weight",
                                                numbers.standing().cgHeightMm()))));
    }

    private List<ExplainedNumber> motor() {
        boolean torque = setUp.motor().strength() instanceof MotorStrength.StallTorque;
        List<Input> inputs = List.of(
                new Input(
                        "V", "test voltage", plain(setUp.motor().testVoltageV().value(), "V")),
                new Input("ω₀", "no-load speed", plain(setUp.motor().noLoadRpm().value(), "rpm")),
                noLoadCurrent(),
                setUp.motor().strength() instanceof MotorStrength.StallTorque stall
                        ? new Input("T", "stall torque", plain(stall.gcm().value(), "gf·cm"))
                        : new Input(
                                "I_s",
                                "stall current",
                                plain(
                                        ((MotorStrength.StallCurrent)
                                                        setUp.motor().strength())
                                                .ampere()
                                                .value(),
                                        "A")));
        return List.of(
                number(
                                "motor_constant_v_s",
                                "motor constant",
                                all -> all.motor().constantVs(),
                                "V·s",
                                5)
                        .because(
                                "Volts per turning speed, and torque per ampere.",
                                torque ? "K: root of I₀ ω₀ K² + T ω₀ K − T V = 0" : "K = (V − R I₀) / ω₀",
                                inputs),
                number("motor_ohm", "motor resistance", all -> all.motor().resistanceOhm(), "ohm", 2)
                        .because(
                                "Of the winding, with what the brushes add.",
                                torque ? "R = K V / (T + K I₀)" : "R = V / I_s",
                                inputs));
    }

    private enum Axis {
        NONE,
        AHEAD,
        LEFT,
        UP
    }

    private List<Input> weights(Axis axis) {
        List<Input> inputs = new ArrayList<>();
        var weighed = setUp.mass().massProperties(lengthMm());
        inputs.add(weight(
                "weighed car",
                weighed.totalG(),
                switch (axis) {
                    case NONE -> OptionalDouble.empty();
                    case AHEAD -> OptionalDouble.of(weighed.aheadMm());
                    case LEFT -> OptionalDouble.of(weighed.leftMm());
                    case UP -> OptionalDouble.of(weighed.heightMm());
                }));
        for (Ballast piece : setUp.ballast()) {
            inputs.add(weight(
                    piece.name(),
                    piece.massG().value(),
                    switch (axis) {
                        case NONE -> OptionalDouble.empty();
                        case AHEAD -> OptionalDouble.of(piece.xMm().value());
                        case LEFT -> OptionalDouble.of(piece.yMm().value());
                        case UP -> OptionalDouble.of(piece.zMm().value());
                    }));
        }
        return inputs;
    }

    private static Input weight(String name, double grams, OptionalDouble atMm) {
        String shown = plain(grams, "g");
        return new Input("", name, atMm.isPresent() ? shown + " at " + plain(atMm.getAsDouble(), "mm") : shown);
    }

    private double lengthMm() {
        return setUp.chassis().guideToRearAxleMm().value();
    }

    private Input constant() {
        return new Input("K", "motor constant", plain(numbers.motor().constantVs(), "V·s"));
    }

    private Input resistance() {
        return new Input("R", "motor resistance", plain(numbers.motor().resistanceOhm(), "ohm"));
    }

    private Input noLoadCurrent() {
        return new Input("I₀", "no-load current", plain(numbers.motor().noLoadCurrentA(), "A"));
    }

    private static Input grams(String symbol, String name, double value) {
        return new Input(symbol, name, plain(value, "g"));
    }

    private static Input mm(String symbol, String name, double value) {
        return new Input(symbol, name, plain(value, "mm"));
    }

    private static String plain(double value, String unit) {
        return Figures.significant(value, 4) + " " + unit;
    }

    private static String percent(double share) {
        return Figures.fixed(100 * share, 0) + " %";
    }

    private Unexplained number(
            String key, String label, ToDoubleFunction<SetUpNumbers> which, String unit, int decimals) {
        double value = which.applyAsDouble(numbers);
        if (Double.isNaN(value)) {
            return new Unexplained(key, label, OptionalDouble.empty(), 0, unit, decimals);
        }
        double plusMinus =
                doubt.linear(car -> which.applyAsDouble(workOut.apply(car))).standardUncertainty();
        return new Unexplained(
                key, label, OptionalDouble.of(value), Double.isFinite(plusMinus) ? plusMinus : 0, unit, decimals);
    }

    /** A number before its working. */
    private record Unexplained(
            String key, String label, OptionalDouble value, double plusMinus, String unit, int decimals) {
        ExplainedNumber because(String meaning, String formula, List<Input> inputs) {
            return new ExplainedNumber(key, label, value, plusMinus, unit, decimals, meaning, formula, inputs);
        }
    }
}
