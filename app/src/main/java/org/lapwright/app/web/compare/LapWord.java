package org.lapwright.app.web.compare;

import java.util.Locale;
import java.util.Optional;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;

/**
 * The racer's word on one lap of the session.
 *
 * @param run number of the run in the order driven, from 1
 * @param lap number of the lap in its run
 * @param millis the lap time it was given for, in thousandths of a second: another time is another lap
 * @param overrule what it was and why
 */
public record LapWord(int run, int lap, long millis, Overrule overrule) {

    /** A word on a lap of so many seconds. */
    public static LapWord on(int run, double seconds, Overrule overrule) {
        return new LapWord(run, overrule.lap(), Math.round(seconds * 1000), overrule);
    }

    /** Whether the lap still is the one that the word was given for. */
    public boolean isAbout(double seconds) {
        return Math.round(seconds * 1000) == millis;
    }

    /** As carried in a hidden field. */
    public String code() {
        return String.format(
                Locale.ROOT, "%d|%d|%d|%s|%s", run, lap, millis, overrule.kind().code(), overrule.reason());
    }

    /** Reads a hidden field; empty if it makes no sense. */
    static Optional<LapWord> read(String code) {
        String[] parts = code.split("\\|", 5);
        if (parts.length < 5) {
            return Optional.empty();
        }
        try {
            int lap = Integer.parseInt(parts[1]);
            long millis = Long.parseLong(parts[2]);
            int run = Integer.parseInt(parts[0]);
            return LapKind.find(parts[3]).map(kind -> new LapWord(run, lap, millis, new Overrule(lap, kind, parts[4])));
        } catch (IllegalArgumentException nonsense) {
            return Optional.empty();
        }
    }
}
