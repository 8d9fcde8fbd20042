package org.lapwright.app.web.track;

import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.GateTimes;
import org.lapwright.app.usecase.physics.PredictLap;
import org.lapwright.app.usecase.physics.PredictionInWords;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

/**
 * One lane and the best lap on it.
 *
 * @param name of the lane
 * @param css how its colour is drawn; empty without one
 * @param length with its unit
 * @param lap the best lap with its unit; empty without a car or a lap
 * @param speeds top and slowest
 * @param shares where the time goes
 * @param sections times from gate to gate, a sentence each; none without gates
 * @param notes why there is no lap, or what to know before believing it
 * @param current whether it is the one drawn
 * @param link to draw it
 * @param howSure where to ask how sure the lap is; empty without one
 */
public record LaneCard(
        String name,
        String css,
        String length,
        String lap,
        String speeds,
        String shares,
        List<String> sections,
        List<String> notes,
        boolean current,
        String link,
        String howSure) {
    /** Copies the list. */
    public LaneCard {
        sections = List.copyOf(sections);
        notes = List.copyOf(notes);
    }

    /** A lane without a car on it. */
    public static LaneCard empty(Lane lane, double lengthM, boolean current, String link) {
        return new LaneCard(
                lane.name(), LaneMap.slot(lane), metres(lengthM), "", "", "", List.of(), List.of(), current, link, "");
    }

    /** A lane with the best lap of a car, or why it has none. */
    public static LaneCard of(Track track, PredictLap.OnLane lap, boolean current, String link, String howSure) {
        String name = lap.lane().name();
        String css = LaneMap.slot(lap.lane());
        if (!(lap.outcome() instanceof PredictedLap best)) {
            String why = PredictionInWords.noLap(lap.outcome());
            String sentence = why.isEmpty() ? "" : Character.toUpperCase(why.charAt(0)) + why.substring(1) + ".";
            return new LaneCard(
                    name, css, metres(lap.lengthM()), "", "", "", List.of(), List.of(sentence), current, link, "");
        }
        return new LaneCard(
                name,
                css,
                metres(lap.lengthM()),
                Figures.seconds(best.lapS()),
                "top %s m/s, slowest %s m/s"
                        .formatted(Figures.fixed(best.topMps(), 2), Figures.fixed(best.slowestMps(), 2)),
                PredictionInWords.shares(best),
                GateTimes.of(track, best.trace()).stream()
                        .map(section -> section.name() + ": " + Figures.seconds(section.seconds()))
                        .toList(),
                PredictionInWords.caveats(best),
                current,
                link,
                howSure);
    }

    private static String metres(double lengthM) {
        return Figures.fixed(lengthM, 2) + " m";
    }
}
