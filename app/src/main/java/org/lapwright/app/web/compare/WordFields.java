package org.lapwright.app.web.compare;

import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.trial.session.Session;

/**
 * The racer's word on a lap, as typed.
 *
 * @param run number of the run
 * @param lap number of the lap
 * @param kind what it was
 * @param reason why
 */
public record WordFields(String run, String lap, String kind, String reason) {
    /** Nothing typed yet. */
    public static final WordFields BLANK = about("", "");

    /** On a lap, by its number. */
    public static WordFields about(String run, String lap) {
        return new WordFields(run, lap, LapKind.CLEAN.code(), "");
    }

    /** As posted. */
    public static WordFields from(Fields fields) {
        return new WordFields(
                fields.text("say-run"), fields.text("say-lap"), fields.text("say-kind"), fields.text("say-reason"));
    }

    /**
     * The word on a lap of the session.
     *
     * @throws IllegalArgumentException with what would be right, if there is no such lap or no reason
     */
    public LapWord toWord(Session session) {
        int runNumber = wholeNumber(run, "run");
        int lapNumber = wholeNumber(lap, "lap");
        TimedLap timed = CompareReader.findLap(session, runNumber, lapNumber)
                .orElseThrow(() -> new IllegalArgumentException(
                        "there is no lap %d in run %d; the laps are listed under “Show the working”"
                                .formatted(lapNumber, runNumber)));
        LapKind found = LapKind.find(kind).orElseThrow(() -> new IllegalArgumentException("choose what the lap was"));
        return LapWord.on(runNumber, timed.seconds(), new Overrule(lapNumber, found, reason));
    }

    private static int wholeNumber(String text, String name) {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException notANumber) {
            throw new IllegalArgumentException(
                    "'%s' is not the number of a %s; it has to be a whole number from 1 on".formatted(text, name),
                    notANumber);
        }
    }
}
