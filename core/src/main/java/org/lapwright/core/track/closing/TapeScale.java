package org.lapwright.core.track.closing;

import java.util.List;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LanePath;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.units.NumberKey;

/** Brings a layout to the length that a tape found on one of its lanes. */
public final class TapeScale {
    /** Length of a lane by tape. */
    public static final NumberKey TAPE = new NumberKey("", "tape_mm", 100, 1_000_000);

    private TapeScale() {}

    /**
     * The factor for straights and radii that gives a lane a length. Lanes stay as far apart as they are, so a lane of a
     * layout that turns through Φ to the left measures f C − o Φ, with C along the centre line and o its offset.
     *
     * @param tapeMm length of the lane by tape, mm
     * @throws IllegalArgumentException if the lane cannot be so short
     */
    public static double factor(PieceLayout layout, Lane lane, double tapeMm) {
        double centreMm = 1000 * layout.lengthM(LanePath.CENTRE);
        double turned = 0;
        for (Piece piece : layout.pieces()) {
            if (piece instanceof Piece.Turn turn) {
                turned += (turn.left() ? 1 : -1) * Math.toRadians(turn.angleDeg());
            }
        }
        double factor = (TAPE.check(tapeMm) + lane.offsetMm() * turned) / centreMm;
        if (factor <= 0) {
            throw new IllegalArgumentException("lane '%s' is longer than %s mm however small the track"
                    .formatted(lane.name(), Math.round(tapeMm)));
        }
        return factor;
    }

    /**
     * The layout with straights and radii times a factor; angles, banks and rises stay.
     *
     * @throws IllegalArgumentException if a number leaves its range, naming the piece
     */
    public static PieceLayout scaled(PieceLayout layout, double factor) {
        List<Piece> pieces = new java.util.ArrayList<>();
        for (int i = 0; i < layout.pieces().size(); i++) {
            try {
                pieces.add(scaled(layout.pieces().get(i), factor));
            } catch (IllegalArgumentException outside) {
                throw new IllegalArgumentException("pieces[" + i + "]: " + outside.getMessage(), outside);
            }
        }
        return new PieceLayout(pieces);
    }

    private static Piece scaled(Piece piece, double factor) {
        Piece scaled = piece instanceof Piece.Turn turn
                ? new Piece.Turn(turn.radiusMm() * factor, turn.angleDeg(), turn.left(), turn.bankDeg(), turn.riseMm())
                : new Piece.Straight(((Piece.Straight) piece).lengthMm() * factor, piece.riseMm());
        return scaled.with(piece.extras());
    }
}
