package org.lapwright.core.track;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is different on one piece: its surface, and where the lanes lie at its far end.
 *
 * @param gripFactor grip here over grip where the tyres were measured, in place of the track's
 * @param magnetic whether a magnet pulls here, in place of the track's
 * @param laneEndsMm where each lane lies at the far end, left of the centre line, mm, in the order of the track's lanes; empty when
 *     they go on as they came
 */
public record PieceExtras(OptionalDouble gripFactor, Optional<Boolean> magnetic, List<Double> laneEndsMm) {
    /** Nothing is different. */
    public static final PieceExtras NONE = new PieceExtras(OptionalDouble.empty(), Optional.empty(), List.of());

    /** Checks each number. */
    public PieceExtras {
        gripFactor.ifPresent(Surface.GRIP_FACTOR.in("pieces")::check);
        laneEndsMm = List.copyOf(laneEndsMm);
        laneEndsMm.forEach(Lane.OFFSET.in("pieces.lane_ends_mm")::check);
    }

    /** The same with other ends of the lanes. */
    public PieceExtras withLaneEnds(List<Double> endsMm) {
        return new PieceExtras(gripFactor, magnetic, endsMm);
    }

    /** The same as seen in a mirror along the direction of travel: what lay left lies right. */
    public PieceExtras mirrored() {
        return withLaneEnds(laneEndsMm.stream().map(end -> 0.0 - end).toList());
    }

    /** Where a lane lies at the far end, m left of the centre line. */
    double endM(LanePath lane, double startM) {
        boolean told = lane.number() >= 0 && lane.number() < laneEndsMm.size();
        return told ? laneEndsMm.get(lane.number()) / 1000 : startM;
    }
}
