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

    private static final double CENTRED_MM = 0.05;
    private static final double ROUNDING = 1e-9;

    private final SetUp setUp;
    private final Function<SetUp, SetUpNumbers> workOut;
    private final SetUpNumbers numbers;
    private final SetUpDoubt doubt;
    private final NumberInputs inputs;
    private final double volts;
    private final double grip;

    NumbersInWords(SetUp setUp, Function<SetUp, SetUpNumbers> workOut, double volts, double grip) {
        this.setUp = setUp;
        this.workOut = workOut;
        this.numbers = workOut.apply(setUp);
        this.doubt = new SetUpDoubt(setUp);
        this.inputs = new NumberInputs(setUp, numbers);
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
        String side = standing.cgLeftMm() > 0 ? "left; right" : "right; left";
        return List.of(
                number("total_g", "weight", all -> all.standing().totalG(), "g", 1)
                        .because("The whole car, ballast included.", "m = weighed + Σ mᵢ", inputs.weights()),
                number(
                                "cg_ahead_of_rear_axle_mm",
                                "balance point",
                                all -> all.standing().cgAheadMm(),
                                "mm",
                                1)
                        .because(
                                "Where the car balances, ahead of the rear axle: %s of the way to the guide."
                                        .formatted(percent(standing.cgAheadMm() / inputs.lengthMm())),
                                scales
                                        ? "x = Σ mᵢ xᵢ / m, weighed x = L W_guide / (W_guide + W_rear)"
                                        : "x = Σ mᵢ xᵢ / m",
                                inputs.weights(
                                        car -> car.aheadMm(),
                                        piece -> piece.xMm().value())),
                number(
                                "cg_left_mm",
                                "off centre (left +)",
                                all -> all.standing().cgLeftMm(),
                                "mm",
                                1)
                        .because(
                                Math.abs(standing.cgLeftMm()) < CENTRED_MM
                                        ? "The weight lies on the centre line."
                                        : "The weight lies to the %s turns tip it sooner.".formatted(side),
                                "y = Σ mᵢ yᵢ / m",
                                inputs.weights(
                                        car -> car.leftMm(),
                                        piece -> piece.yMm().value())),
                number(
                                "cg_height_mm",
                                "height of the weight",
                                all -> all.standing().cgHeightMm(),
                                "mm",
                                1)
                        .because(
                                "Height of the centre of gravity above the track; lower tips later.",
                                "h = Σ mᵢ zᵢ / m",
                                inputs.weights(
                                        car -> car.heightMm(),
                                        piece -> piece.zMm().value())));
    }

    private List<ExplainedNumber> loads() {
        SetUpNumbers.Standing standing = numbers.standing();
        double least = setUp.guide().minGuideLoadG().value();
        double pull = Math.max(0, standing.guideLoadG() + standing.rearLoadG() - standing.totalG());
        boolean pulled = pull > ROUNDING;
        List<Input> from = inputs.loads(pulled ? pull : 0);
        String enough = standing.guideLoadG() > least
                ? "The braids want %s g at least."
                : "That is less than the %s g that keep the braids down.";
        return List.of(
                number(
                                "guide_load_g",
                                "load on the guide",
                                all -> all.standing().guideLoadG(),
                                "g",
                                1)
                        .because(
                                "At rest, with what front wheels that touch carry of it. "
                                        + enough.formatted(Figures.significant(least, 3)),
                                pulled ? "m x / L + F x_M / L" : "m x / L",
                                from),
                number(
                                "rear_load_g",
                                "load on the rear tyres",
                                all -> all.standing().rearLoadG(),
                                "g",
                                1)
                        .because(
                                "At rest; what the tyres' grip works with." + (pulled ? " The magnet is counted." : ""),
                                pulled ? "m + F − guide load" : "m − guide load",
                                from));
    }

    private List<ExplainedNumber> gearing() {
        return List.of(
                number("ratio", "gear ratio", all -> all.gearing().ratio(), "", 3)
                        .because(
                                "Motor turns for one turn of the axle.",
                                "i = axle teeth / motor teeth",
                                inputs.teeth()),
                number(
                                "mm_per_motor_turn",
                                "way per motor turn",
                                all -> all.gearing().mmPerMotorTurn(),
                                "mm",
                                2)
                        .because(
                                "Way over the ground for one turn of the motor: more is longer gearing.",
                                "π d / i",
                                List.of(inputs.tyre(), inputs.ratio())),
                number("free_speed_m_s", "free speed", all -> all.gearing().freeSpeedMps(), "m/s", 2)
                        .because(
                                "Speed with the motor running free at %s V; on the track it stays below."
                                        .formatted(Figures.significant(volts, 3)),
                                "ω₀ d / (2 i), ω₀ = (V − R I₀) / K",
                                List.of(
                                        NumberInputs.of("V", "voltage", volts, "V"),
                                        inputs.tyre(),
                                        inputs.ratio(),
                                        inputs.constant(),
                                        inputs.resistance(),
                                        inputs.noLoadCurrent())));
    }

    private List<ExplainedNumber> holding() {
        SetUpNumbers.Holding holding = numbers.holding();
        String front = setUp.chassis().frontWheels() == FrontWheels.TOUCHING ? "front wheel" : "the guide";
        boolean pulled = holding.tipG() != holding.tipWithoutMagnetG();
        String without = " Without the magnet %s g, which is what a tilt test shows."
                .formatted(Figures.fixed(holding.tipWithoutMagnetG(), 2));
        return List.of(
                number("slide_g", "slides at", all -> all.holding().slideG().orElse(Double.NaN), "g", 2)
                        .because(
                                "Sideways g at which the rear lets go on a steady circle of 300 mm radius.",
                                "a_y / g at the centre of gravity where X² + Y² = (μ N_rear)², sin ψ = L / 300 mm",
                                List.of(
                                        new Input("μ", "grip", Figures.fixed(grip, 3)),
                                        inputs.rearLoad(),
                                        inputs.balancePoint(),
                                        inputs.height(),
                                        inputs.length())),
                number("tip_g", "tips at", all -> all.holding().tipG(), "g", 2)
                        .because(
                                "Sideways g at which it tips over the outer rear wheel and %s, standing still.%s"
                                        .formatted(front, pulled ? without : ""),
                                pulled ? "(e + e_M F / m) / h, e_M: the magnet to the tipping line" : "e / h",
                                List.of(inputs.tippingEdge(), inputs.height())));
    }

    private List<ExplainedNumber> motor() {
        boolean torque = setUp.motor().strength() instanceof MotorStrength.StallTorque;
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
                                inputs.motorTest()),
                number("motor_ohm", "motor resistance", all -> all.motor().resistanceOhm(), "ohm", 2)
                        .because(
                                "Of the winding, with what the brushes add.",
                                torque ? "R = K V / (T + K I₀)" : "R = V / I_s",
                                inputs.motorTest()));
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
