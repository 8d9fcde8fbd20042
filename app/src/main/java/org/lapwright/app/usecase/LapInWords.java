package org.lapwright.app.usecase;

import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.LapKind;

/** What kind a lap is and why, in plain words. */
public final class LapInWords {
    private LapInWords() {}

    /** The kind as people say it. */
    public static String kind(LapKind kind) {
        return switch (kind) {
            case CLEAN -> "clean";
            case FIRST -> "first from standstill";
            case OFF -> "came off or stopped";
            case MISSED -> "gate missed a pass";
            case DOUBLE -> "gate fired twice";
            case OFF_OR_MISSED -> "off or missed gate";
            case SLOW -> "slow";
        };
    }

    /** Why the lap is of its kind: the numbers the rule went by, or the racer's own word. */
    public static String why(Lap lap) {
        return lap.overrule()
                .map(word -> "You say %s: “%s”. The rule says %s."
                        .formatted(kind(word.kind()), word.reason(), kind(lap.ruledKind())))
                .orElseGet(() -> rule(lap));
    }

    private static String rule(Lap lap) {
        if (lap.localPaceS() <= 0) {
            return lap.ruledKind().counts() ? "Too few laps to hold it against." : "Cannot be a lap.";
        }
        String pace = Figures.seconds(lap.localPaceS());
        String times = Figures.fixed(lap.seconds() / lap.localPaceS(), 2);
        return switch (lap.ruledKind()) {
            case CLEAN ->
                lap.limitS() > 0
                        ? "Within the limit of %s there.".formatted(Figures.seconds(lap.limitS()))
                        : "In line.";
            case FIRST ->
                "First of its run and over the limit of %s: it started from standstill."
                        .formatted(Figures.seconds(lap.limitS()));
            case OFF, SLOW -> overTheLimit(lap, pace);
            case MISSED -> "%s times the pace of %s around it: two or more laps in one.".formatted(times, pace);
            case DOUBLE -> "%s of the pace of %s around it: one lap in two.".formatted(times, pace);
            case OFF_OR_MISSED ->
                "%s times the pace of %s around it: an off or a missed gate, time alone cannot tell."
                        .formatted(times, pace);
        };
    }

    private static String overTheLimit(Lap lap, String pace) {
        double over = lap.seconds() / lap.localPaceS() - 1;
        return "%s over the pace of %s around it; the limit there was %s."
                .formatted(Figures.significant(over * 100, 2) + " %", pace, Figures.seconds(lap.limitS()));
    }
}
