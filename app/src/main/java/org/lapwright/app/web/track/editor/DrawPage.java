package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.CrossingsInWords;
import org.lapwright.app.web.track.LaneMap;
import org.lapwright.app.web.track.Typed.Fault;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.ClosingGap;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Track;
import org.lapwright.core.track.kit.PieceBox;

/**
 * A track put together piece by piece.
 *
 * @param shell around it
 * @param editor what is typed
 * @param faults what cannot be understood yet
 * @param sum what the pieces come to, if they make a track
 * @param laps what a car could do on it
 * @param tape what the tape says; empty without one
 * @param kit pieces to be added by one tap
 * @param taken whether the name belongs to another track of the owner's
 */
public record DrawPage(
        Shell shell,
        Editor editor,
        List<Fault> faults,
        Optional<Sum> sum,
        DrawnLaps laps,
        Optional<TapeOffer> tape,
        Kit kit,
        boolean taken) {
    /** Copies the list. */
    public DrawPage {
        faults = List.copyOf(faults);
    }

    /** The page of an editor. */
    public static DrawPage of(
            Shell shell,
            Editor editor,
            List<Fault> faults,
            Optional<Track> track,
            DrawnLaps laps,
            PieceBox box,
            boolean taken) {
        return new DrawPage(
                shell,
                editor,
                faults,
                track.map(read -> Sum.of(read, laps.first(), box)),
                laps,
                editor.ruler().tape().isBlank() ? Optional.empty() : Optional.of(TapeOffer.of(editor)),
                Kit.of(editor.form(), box),
                taken);
    }

    /** The form. */
    public TrackForm form() {
        return editor.form();
    }

    /** What is wrong with a field, or nothing. */
    public @Nullable String fault(String field) {
        return Fault.about(field, faults);
    }

    /** How long the lanes are, a sentence for each. */
    public static List<String> lengths(Track track) {
        return track.lanes().stream()
                .map(lane -> "lane %s: %s m".formatted(lane.name(), Figures.fixed(track.lengthM(lane), 3)))
                .toList();
    }

    /**
     * What the pieces come to.
     *
     * @param lengths a sentence for each lane, each crossing and each kind of piece of which there are too few
     * @param gap how the layout closes
     * @param closes whether it does
     * @param ways how it could be made to close
     * @param map from above
     */
    public record Sum(List<String> lengths, String gap, boolean closes, ClosingOffer.Ways ways, LaneMap map) {
        /** Copies the list. */
        public Sum {
            lengths = List.copyOf(lengths);
        }

        /** Measures a track, and colours it by the speed of a lap on its first lane. */
        static Sum of(Track track, Optional<PredictedLap> lap, PieceBox box) {
            ClosingGap gap = track.layout().closingGap();
            String size = "%s mm and %s°"
                    .formatted(
                            Figures.fixed(1000 * gap.distanceM(), 1),
                            Figures.fixed(Math.toDegrees(gap.headingRad()), 1));
            List<String> lengths = new ArrayList<>(DrawPage.lengths(track));
            lengths.addAll(CrossingsInWords.of(track));
            if (track.layout() instanceof PieceLayout layout) {
                box.shortages(layout.pieces())
                        .forEach(shortage -> lengths.add("takes %d of %s; you have %d"
                                .formatted(
                                        shortage.needed(),
                                        shortage.kind().inWords(),
                                        shortage.kind().owned().orElse(0))));
            }
            return new Sum(
                    lengths,
                    gap.isOpen()
                            ? "It does not close: the end misses the start by " + size + "."
                            : "It closes (gap " + size + ").",
                    !gap.isOpen(),
                    track.layout() instanceof PieceLayout layout
                            ? ClosingOffer.of(layout)
                            : new ClosingOffer.Ways(List.of(), ""),
                    LaneMap.numbered(track, lap));
        }
    }
}
