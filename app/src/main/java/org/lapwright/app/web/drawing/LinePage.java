package org.lapwright.app.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.drawing.DrawingFile;
import org.lapwright.app.files.drawing.DrawnScale;
import org.lapwright.app.files.drawing.course.Loop;
import org.lapwright.app.files.drawing.course.Spot;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.track.LaneMap;
import org.lapwright.app.web.track.editor.DrawPage;
import org.lapwright.app.web.track.editor.DrawnLaps;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Track;

/**
 * A track's line taken from a drawing.
 *
 * @param shell around it
 * @param form as typed
 * @param reading what was understood
 * @param problems what stands in the way
 * @param laps what a car could do on it
 * @param sum what the line comes to, if it makes a track
 * @param taken whether the name belongs to another track of the owner's
 * @param said what happened at the last press; may be empty
 */
public record LinePage(
        Shell shell,
        LineForm form,
        LineReading reading,
        List<String> problems,
        DrawnLaps laps,
        Optional<Sum> sum,
        boolean taken,
        String said) {
    private static final int MOST_LOOPS = 12;
    private static final int MOST_PLACES = 300;

    /** Copies the list. */
    public LinePage {
        problems = List.copyOf(problems);
    }

    /**
     * What the line comes to.
     *
     * @param lengths a sentence for each lane
     * @param map from above
     */
    public record Sum(List<String> lengths, LaneMap map) {
        /** Copies the list. */
        public Sum {
            lengths = List.copyOf(lengths);
        }

        /** Measures a track, and colours it by the speed of a lap on its first lane. */
        public static Sum of(Track track, Optional<PredictedLap> lap) {
            return new Sum(DrawPage.lengths(track), LaneMap.numbered(track, lap));
        }
    }

    /**
     * One of the loops that were found.
     *
     * @param number to choose it by
     * @param label length and size
     * @param viewBox extent of its drawing
     * @param course its path
     * @param chosen whether it is the centre line
     */
    public record LoopView(int number, String label, String viewBox, String course, boolean chosen) {}

    /** Units to choose from, in words. */
    public List<String> units() {
        return DrawingFile.units().stream().map(LinePage::unit).toList();
    }

    private static String unit(DrawnScale scale) {
        return scale.sentence().replace("One unit of the drawing is one ", "").replace(", as you say.", "");
    }

    /** Whether the racer may say what a unit is: the drawing does not. */
    public boolean asksUnit() {
        return reading.scale().isPresent()
                && (!reading.scale().get().stated() || !form.value("unit").isEmpty());
    }

    /** The longest loops, as drawn, before a known length makes them larger or smaller. */
    public List<LoopView> loops() {
        int chosen = reading.chosen().map(Loop::number).orElse(0);
        List<LoopView> views = new ArrayList<>();
        for (Loop loop : reading.loops()) {
            if (views.size() < MOST_LOOPS || loop.number() == chosen) {
                views.add(view(loop, loop.number() == chosen));
            }
        }
        return views;
    }

    /** How many loops are not shown. */
    public int hiddenLoops() {
        return reading.loops().size() - loops().size();
    }

    /** Length and size of the centre line. */
    public String size() {
        return reading.chosen()
                .map(loop -> "The line is %s long, %s from side to side, %s from front to back."
                        .formatted(metres(loop.lengthMm()), metres(loop.widthMm()), metres(loop.heightMm())))
                .orElse("");
    }

    private static String metres(double mm) {
        return mm < 1000 ? Figures.fixed(mm, 1) + " mm" : Figures.fixed(mm / 1000, 3) + " m";
    }

    private static LoopView view(Loop loop, boolean chosen) {
        double unit = 100 / Math.max(Math.max(loop.widthMm(), loop.heightMm()), 1e-9);
        StringBuilder course = new StringBuilder();
        int stride = 1 + loop.spots().size() / MOST_PLACES;
        for (int i = 0; i < loop.spots().size(); i += stride) {
            Spot spot = loop.spots().get(i);
            course.append(i == 0 ? 'M' : 'L')
                    .append(Figures.fixed(unit * (spot.x() - loop.leftMm()), 1))
                    .append(' ')
                    .append(Figures.fixed(unit * (loop.topMm() - spot.y()), 1));
        }
        return new LoopView(
                loop.number(),
                "%s long, %s × %s%s"
                        .formatted(
                                metres(loop.lengthMm()),
                                metres(loop.widthMm()),
                                metres(loop.heightMm()),
                                loop.pieces() > 1 ? ", joined from " + loop.pieces() + " pieces" : ""),
                "-4 -4 %s %s"
                        .formatted(
                                Figures.fixed(unit * loop.widthMm() + 8, 1),
                                Figures.fixed(unit * loop.heightMm() + 8, 1)),
                course.append('Z').toString(),
                chosen);
    }
}
