package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.SectionTimes;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.LanePlan;
import org.lapwright.core.track.Stretches;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/**
 * One track.
 *
 * @param shell around it
 * @param choice what is shown
 * @param saved whether it was saved just now
 * @param example whether it belongs to the example garage
 * @param editable whether the editor can take it
 * @param notices what could not be shown, and why
 * @param surface what the tyres run on, in words
 * @param crossings where it passes over itself, in words
 * @param map the lane from above
 * @param lap the lap on it, if there is one
 * @param lanes all lanes
 */
public record TrackPage(
        Shell shell,
        TrackChoice choice,
        boolean saved,
        boolean example,
        boolean editable,
        List<String> notices,
        String surface,
        List<String> crossings,
        LaneMap map,
        Optional<LapView> lap,
        List<LaneCard> lanes) {
    /** Copies the lists. */
    public TrackPage {
        notices = List.copyOf(notices);
        crossings = List.copyOf(crossings);
        lanes = List.copyOf(lanes);
    }

    /**
     * A lap on the lane.
     *
     * @param headline the lap in a sentence
     * @param drawing the lap over its distance
     * @param cursor what the cursor says
     * @param loss where it loses against the other car, if one is chosen
     */
    public record LapView(String headline, LapDrawing drawing, CursorData cursor, Optional<LossView> loss) {
        /**
         * A lap, alone or against another one.
         *
         * @param here the car's name and lap
         * @param other the other's, if there is one
         */
        public static LapView of(Track track, Lane lane, Driven here, Optional<Driven> other) {
            LaneCells cells = track.cells(lane);
            Optional<SectionTimes> times = other.map(held -> SectionTimes.of(cells, here.lap(), held.lap()));
            return new LapView(
                    "%s could do %s on lane %s."
                            .formatted(here.car(), Figures.seconds(here.lap().lapS()), lane.name()),
                    LapDrawing.of(here.lap(), Stretches.of(cells), other.map(held -> held.lap()), times),
                    CursorData.of(here.lap().trace(), LanePlan.of(track, lane), LaneMap.frame(track), times),
                    times.map(
                            held -> LossView.of(here.car(), other.orElseThrow().car(), held)));
        }
    }

    /**
     * A car's best lap.
     *
     * @param car its name
     * @param lap the lap
     */
    public record Driven(String car, PredictedLap lap) {}

    /** Grip, rails and conditions. */
    public static String surface(Surface surface) {
        String grip = surface.gripFactor() == 1
                ? "Grip as where the tyres were measured"
                : "Grip %s of what it was where the tyres were measured"
                        .formatted(Figures.significant(surface.gripFactor(), 3));
        String words = surface.conditions();
        return "%s; %s.%s"
                .formatted(
                        grip,
                        surface.magnetic() ? "steel rails, magnets pull" : "magnets do not pull",
                        words.isEmpty() ? "" : " Conditions: " + words + (words.endsWith(".") ? "" : "."));
    }

    /** The lane from above: with the lap, if there is one. */
    public static LaneMap map(Track track, Lane lane, Optional<PredictedLap> lap, boolean byLimit) {
        if (lap.isEmpty()) {
            return LaneMap.plain(track, lane);
        }
        return byLimit ? LaneMap.byLimit(track, lane, lap.get()) : LaneMap.bySpeed(track, lane, lap.get());
    }

    /** What to know before believing what is shown: each sentence once. */
    public List<String> caveats() {
        List<String> once = new ArrayList<>();
        lanes.stream()
                .flatMap(lane -> lane.notes().stream())
                .filter(note -> !once.contains(note))
                .forEach(once::add);
        return once;
    }
}
