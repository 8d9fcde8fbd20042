package org.lapwright.app.usecase.physics;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.dynamics.Caveat;
import org.lapwright.core.dynamics.LapOutcome;
import org.lapwright.core.dynamics.Limit;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.dynamics.Stuck;
import org.lapwright.core.dynamics.TooTight;

/** A predicted lap, or why there is none, in plain words. */
public final class PredictionInWords {
    private static final Map<Limit, String> MEANINGS = new EnumMap<>(Map.of(
            Limit.SLIDE, "the rear tyres are at their grip",
            Limit.POWER, "the motor gives all it has",
            Limit.BRAKE, "the motor brakes as hard as it can",
            Limit.NOSE, "more would lift the guide",
            Limit.TIP, "more would tip the car over"));

    private PredictionInWords() {}

    /** What a limit means at the track side. */
    public static String meaning(Limit limit) {
        return MEANINGS.getOrDefault(limit, "");
    }

    /** Why the car cannot be driven round, and what would be right; empty when it can. */
    public static String noLap(LapOutcome outcome) {
        if (outcome instanceof Stuck stuck) {
            return "no lap: %s m past the timing line %s. %s"
                    .formatted(Figures.fixed(stuck.atM(), 2), hindrance(stuck.limit()), remedy(stuck.limit()));
        }
        if (outcome instanceof TooTight tight) {
            return ("no lap: %s m past the timing line the bend of %s mm radius is too tight for this car, whose tail"
                            + " would stand across the slot. A wider bend or a shorter chassis.guide_to_rear_axle_mm"
                            + " would be right")
                    .formatted(Figures.fixed(tight.atM(), 2), Figures.significant(1000 * tight.radiusM(), 3));
        }
        return "";
    }

    /** What to know before believing a lap. */
    public static List<String> caveats(LapOutcome outcome) {
        List<String> said = new ArrayList<>();
        if (outcome instanceof PredictedLap lap) {
            lap.caveats().forEach(caveat -> said.add(caveat(caveat)));
        }
        return said;
    }

    /** Where the time goes: {@code sliding 62 % of the time, power 30 %}. */
    public static String shares(PredictedLap lap) {
        return lap.shares().entrySet().stream()
                .sorted(Map.Entry.<Limit, Double>comparingByValue().reversed())
                .filter(share -> share.getValue() >= 0.005)
                .map(share -> share.getKey().word() + " " + Figures.fixed(100 * share.getValue(), 0) + " %")
                .collect(Collectors.joining(", "));
    }

    private static String caveat(Caveat caveat) {
        if (caveat instanceof Caveat.OpenLayout open) {
            return ("The layout does not close: its end misses its start by %s mm and %s°. The lap is reckoned as if they"
                            + " met; check the pieces.")
                    .formatted(
                            Figures.significant(1000 * open.gap().distanceM(), 3),
                            Figures.significant(Math.toDegrees(open.gap().headingRad()), 3));
        }
        Caveat.TailFarOut out = (Caveat.TailFarOut) caveat;
        return "The car stands up to %s° across the slot in the tightest bend; beyond 45° the model is coarse."
                .formatted(Figures.fixed(Math.toDegrees(out.angleRad()), 0));
    }

    private static String hindrance(Limit limit) {
        return switch (limit) {
            case SLIDE -> "the rear tyres would slide at any speed";
            case POWER -> "the motor cannot pull the car on";
            case BRAKE -> "the car cannot slow down as it must";
            case NOSE -> "the guide would lift at any speed";
            case TIP -> "the car would tip over at any speed";
        };
    }

    private static String remedy(Limit limit) {
        return switch (limit) {
            case SLIDE -> "Check rear_tyre.grip and surface.grip_factor, the bank and the slope there";
            case POWER -> "Check power.supply_v and the resistances, the gears, the drag, and the slope there";
            case BRAKE -> "Check power.brake_ohm and the slope there";
            case NOSE -> "Check guide.min_guide_load_g, mass.cg_ahead_of_rear_axle_mm and magnet.x_mm";
            case TIP -> "Check mass.cg_height_mm, mass.cg_left_mm, the track widths, and the bank there";
        };
    }
}
