package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.track.ClosingGap;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

/**
 * A track put together piece by piece.
 *
 * @param shell around it
 * @param form as typed
 * @param problems what cannot be understood yet
 * @param sum what the pieces come to, if they make a track
 * @param taken whether the name belongs to another track of the owner's
 * @param said what happened at the last press, for those who do not see it; may be empty
 */
public record DrawPage(
        Shell shell, TrackForm form, List<String> problems, Optional<Sum> sum, boolean taken, String said) {
    /** Copies the list. */
    public DrawPage {
        problems = List.copyOf(problems);
    }

    /**
     * What the pieces come to.
     *
     * @param lengths a sentence for each lane
     * @param gap how the layout closes
     * @param closes whether it does
     * @param map from above
     */
    public record Sum(List<String> lengths, String gap, boolean closes, LaneMap map) {
        /** Copies the list. */
        public Sum {
            lengths = List.copyOf(lengths);
        }

        /** Measures a track. */
        public static Sum of(Track track) {
            List<String> lengths = new ArrayList<>();
            for (Lane lane : track.lanes()) {
                lengths.add("lane %s: %s m".formatted(lane.name(), Figures.fixed(track.lengthM(lane), 3)));
            }
            ClosingGap gap = track.layout().closingGap();
            String size = "%s mm and %s°"
                    .formatted(
                            Figures.fixed(1000 * gap.distanceM(), 1),
                            Figures.fixed(Math.toDegrees(gap.headingRad()), 1));
            return new Sum(
                    lengths,
                    gap.isOpen()
                            ? "It does not close: the end misses the start by " + size + "."
                            : "It closes (gap " + size + ").",
                    !gap.isOpen(),
                    LaneMap.plain(track, track.lanes().get(0)));
        }
    }
}
