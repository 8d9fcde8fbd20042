package org.lapwright.core.track.closing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.units.NumberKey;

/**
 * One number that may change, with its range.
 *
 * @param piece which, from 0
 * @param quantity what about it
 * @param value as it is, mm or degrees
 * @param low least it may become
 * @param high greatest it may become
 */
record Freedom(int piece, Quantity quantity, double value, double low, double high) {
    static List<Freedom> of(PieceLayout layout, Set<Quantity> movable) {
        List<Freedom> all = new ArrayList<>();
        for (int i = 0; i < layout.pieces().size(); i++) {
            if (layout.pieces().get(i) instanceof Piece.Turn turn) {
                double climb = Math.abs(turn.riseMm()) / Piece.STEEPEST;
                all.add(of(i, Quantity.ANGLE, turn.angleDeg(), Piece.ANGLE, Math.toDegrees(climb / turn.radiusMm())));
                all.add(of(i, Quantity.RADIUS, turn.radiusMm(), Piece.RADIUS, climb / Math.toRadians(turn.angleDeg())));
            } else if (layout.pieces().get(i) instanceof Piece.Straight straight) {
                double climb = Math.abs(straight.riseMm()) / Piece.STEEPEST;
                all.add(of(i, Quantity.LENGTH, straight.lengthMm(), Piece.STRAIGHT, climb));
            }
        }
        return all.stream()
                .filter(freedom -> movable.contains(freedom.quantity()))
                .toList();
    }

    /** What rises must stay longer than its slope allows; a little, so that rounding does not matter. */
    private static Freedom of(int piece, Quantity quantity, double value, NumberKey key, double shortest) {
        double low = Math.min(value, Math.max(key.min(), shortest * 1.001));
        return new Freedom(piece, quantity, value, low, key.max());
    }

    /** The number after a change of so many millimetres of straight, held to its range. */
    double after(double weighted) {
        return Math.min(high, Math.max(low, value + weighted / quantity.weight()));
    }

    /** The piece with this number changed. */
    Piece changed(Piece before, double to) {
        if (before instanceof Piece.Turn turn) {
            boolean angle = quantity == Quantity.ANGLE;
            return new Piece.Turn(
                    angle ? turn.radiusMm() : to,
                    angle ? to : turn.angleDeg(),
                    turn.left(),
                    turn.bankDeg(),
                    turn.riseMm(),
                    turn.extras());
        }
        return new Piece.Straight(to, before.riseMm(), before.extras());
    }
}
