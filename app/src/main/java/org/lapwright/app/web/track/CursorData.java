package org.lapwright.app.web.track;

import java.util.Locale;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.SectionTimes;
import org.lapwright.core.dynamics.LapTrace;
import org.lapwright.core.track.LanePlan;

/**
 * What the cursor says at places along the lap; each a list with blanks between, the first for the timing line.
 *
 * @param last number of the last place, from 0
 * @param lap length of the lap, m
 * @param places m from the timing line
 * @param speeds m/s
 * @param limits words
 * @param across on the drawing from above, percent
 * @param down on the drawing from above, percent
 * @param losses s against the other lap; empty without one
 */
public record CursorData(
        int last, String lap, String places, String speeds, String limits, String across, String down, String losses) {
    private static final int MOST_PLACES = 400;

    static CursorData of(LapTrace trace, LanePlan plan, MapFrame frame, Optional<SectionTimes> times) {
        int stride = 1 + trace.cells() / MOST_PLACES;
        int last = (trace.cells() - 1) / stride;
        Column places = new Column();
        Column speeds = new Column();
        Column limits = new Column();
        Column across = new Column();
        Column down = new Column();
        Column losses = new Column();
        for (int i = 0; i <= last; i++) {
            int edge = i * stride;
            places.add("%.2f", trace.placeM(edge));
            speeds.add("%.2f", trace.speedMps(edge));
            limits.add(trace.limit(edge).word());
            across.add("%.1f", 100 * frame.shareX(plan.at(edge)));
            down.add("%.1f", 100 * frame.shareY(plan.at(edge)));
            times.ifPresent(held -> losses.add("%.3f", held.lossS().get(edge)));
        }
        return new CursorData(
                last,
                Figures.fixed(trace.placeM(trace.cells()), 3),
                places.toString(),
                speeds.toString(),
                limits.toString(),
                across.toString(),
                down.toString(),
                losses.toString());
    }

    private static final class Column {
        private final StringBuilder text = new StringBuilder();

        void add(String format, double value) {
            add(String.format(Locale.ROOT, format, value + 0.0));
        }

        void add(String word) {
            text.append(text.isEmpty() ? "" : " ").append(word);
        }

        @Override
        public String toString() {
            return text.toString();
        }
    }
}
