package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.lapwright.core.track.Gate;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Track;

/** Moves the timing line to the start of another piece. */
final class StartMove {
    private StartMove() {}

    /**
     * The same track with its lap begun elsewhere; gates and feeds stay where they are on the table.
     *
     * @param track made of pieces
     * @param at the piece that is to be the first, from 0
     */
    static Track moved(Track track, int at) {
        List<Piece> pieces = new ArrayList<>(((PieceLayout) track.layout()).pieces());
        double whole = lengthM(pieces);
        double share = lengthM(pieces.subList(0, at)) / whole;
        List<Lane> lanes = lanesAt(track, pieces.subList(0, at));
        Collections.rotate(pieces, -at);
        Power power = track.power();
        return new Track(
                track.name(),
                track.surface(),
                lanes,
                new Power(
                        power.supplyV(),
                        power.sourceOhm(),
                        power.railOhmPerM(),
                        power.tapsAt().stream().map(tap -> after(tap, share)).toList(),
                        power.brakeOhm()),
                new PieceLayout(pieces),
                gates(track, share));
    }

    /** A gate that the timing line has moved to is the timing line now; where it was a gate is left. */
    private static List<Gate> gates(Track track, double share) {
        List<Gate> gates = new ArrayList<>();
        for (Gate gate : track.gates()) {
            double at = after(gate.at(), share);
            if (at >= Gate.AT.min() && at <= Gate.AT.max()) {
                gates.add(new Gate(gate.name(), at));
            }
        }
        return gates;
    }

    private static List<Lane> lanesAt(Track track, List<Piece> before) {
        List<Lane> lanes = new ArrayList<>();
        for (int i = 0; i < track.lanes().size(); i++) {
            Lane lane = track.lanes().get(i);
            double offsetMm = lane.offsetMm();
            for (Piece piece : before) {
                List<Double> ends = piece.extras().laneEndsMm();
                offsetMm = ends.isEmpty() ? offsetMm : ends.get(i);
            }
            lanes.add(new Lane(lane.name(), offsetMm, lane.painted()));
        }
        return lanes;
    }

    /** Shares to a millionth: nobody places a gate more finely. */
    private static double after(double at, double share) {
        double moved = at - share;
        return Math.round(1e6 * (moved < 0 ? moved + 1 : moved)) / 1e6;
    }

    private static double lengthM(List<Piece> pieces) {
        return pieces.stream().mapToDouble(piece -> piece.along(0).lengthM()).sum();
    }
}
