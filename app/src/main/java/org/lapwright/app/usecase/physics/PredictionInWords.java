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
import org.lapwright.core.prediction.ForecastCaveat;
import org.lapwright.core.prediction.LapForecast;

/** A predicted lap, or why there is none, in plain words. */
public final class PredictionInWords {
    private static final Map<Limit, String> MEANINGS = new EnumMap<>(Map.of(
            Limit.SLIDE, "the rear tyres are at their grip",
            Limit.POWER, "the motor gives all it has",
            Limit.BRAKE, "the motor brakes as hard as it can",
            Limit.NOSE, "more would lift the guide",
            Limit.TIP, "more would tip the car over"));

    /** What brings less than this is not worth a word, s. */
    private static final double LEAST_TOLD_S = 0.0005;

    private static final int MOST_TOLD = 4;

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

    /** What to know before believing a forecast. */
    public static List<String> caveats(LapForecast forecast) {
        List<String> said = new ArrayList<>(caveats(forecast.central()));
        forecast.caveats().forEach(caveat -> said.add(caveat(caveat)));
        return said;
    }

    /** Where the lap lies, with the numbers as sure as they are said to be: {@code 5.62 to 5.91 s}. */
    public static String between(LapForecast forecast) {
        return forecast.knownS()
                .map(interval -> {
                    int decimals = Figures.decimals(interval);
                    return Figures.fixed(interval.low(), decimals) + " to " + Figures.fixed(interval.high(), decimals)
                            + " s";
                })
                .orElse(Figures.NONE);
    }

    /** Which numbers make the lap unsure, most first; empty when nothing is in doubt. */
    public static String doubts(LapForecast forecast) {
        if (forecast.shares().isEmpty()) {
            return "";
        }
        return forecast.shares().stream()
                .filter(share -> Double.isFinite(share.amount()) && Math.abs(share.amount()) >= LEAST_TOLD_S)
                .limit(MOST_TOLD)
                .map(share -> "%s (± %s s)"
                        .formatted(share.number().path(), Figures.significant(Math.abs(share.amount()), 2)))
                .collect(Collectors.joining(", ", "In doubt most by ", ". Measured better, the width shrinks."));
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

    private static String caveat(ForecastCaveat caveat) {
        if (caveat instanceof ForecastCaveat.MethodsPart part) {
            return ("The doubts are so wide that two ways to reckon the interval part by %s s; that of cars drawn by chance is"
                            + " shown.")
                    .formatted(Figures.significant(part.apartS(), 2));
        }
        if (caveat instanceof ForecastCaveat.MayNotGetRound may) {
            return "%s of the cars within the doubts cannot be driven round at all; the interval is that of the others."
                    .formatted(Figures.percent(may.chance()));
        }
        return "No number has a plus_minus, so how sure the lap is cannot be told.";
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
