package org.lapwright.app.web.view;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.LapInWords;
import org.lapwright.app.web.chart.Symbol;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.trial.JudgedRun;

/**
 * One lap in a list.
 *
 * @param run number of its run in the order driven
 * @param lap its number in the run
 * @param time as timed
 * @param kind what it was
 * @param why by which rule or whose word
 * @param limit slowest clean time there; a dash when there were too few laps to say
 * @param shape as drawn
 * @param side before or after
 * @param counts whether it counts for pace and spread
 * @param overruled whether the kind is the racer's word
 */
public record LapLine(
        int run,
        int lap,
        String time,
        String kind,
        String why,
        String limit,
        Symbol shape,
        String side,
        boolean counts,
        boolean overruled) {

    /** All laps of a run. */
    static List<LapLine> of(int run, JudgedRun judged) {
        List<LapLine> lines = new ArrayList<>();
        for (Lap lap : judged.stint().laps()) {
            lines.add(new LapLine(
                    run,
                    lap.number(),
                    Figures.seconds(lap.seconds()),
                    LapInWords.kind(lap.kind()),
                    LapInWords.why(lap),
                    lap.limitS() > 0 ? Figures.fixed(lap.limitS(), 3) : Figures.NONE,
                    Symbol.of(judged.side(), lap.kind()),
                    judged.side().code(),
                    lap.counts(),
                    lap.overrule().isPresent()));
        }
        return lines;
    }

    /** How a form names the lap. */
    public String code() {
        return run + "." + lap;
    }
}
