package org.lapwright.core.track.closing;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.track.LanePath;
import org.lapwright.core.track.Layout;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanPoint;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.units.NumberKey;

/** Brings a layout to the length that a tape found on one of its lanes. */
public final class TapeScale {
    /** Length of a lane by tape. */
    public static final NumberKey TAPE = new NumberKey("", "tape_mm", 100, 1_000_000);

    private TapeScale() {}

    /** Lanes that move sideways along a piece do not grow quite in step; a few steps settle it. */
    private static final int STEPS = 6;

    /**
     * The factor that gives a lane a length: for straights and radii, or for the points of a drawn line. Lanes stay as far apart as they
     * are, so a lane of a layout that turns through Φ to the left measures f C − o Φ, with C along the centre line and o its offset.
     *
     * @param tapeMm length of the lane by tape, mm
     * @throws IllegalArgumentException if the lane cannot be so short
     */
    public static double factor(Layout layout, LanePath lane, double tapeMm) {
        double centreMm = 1000 * layout.lengthM(LanePath.CENTRE);
        TAPE.check(tapeMm);
        double factor = 1 + (tapeMm - 1000 * layout.lengthM(lane)) / centreMm;
        for (int step = 0; step < STEPS && factor > 0; step++) {
            factor += (tapeMm - 1000 * scaled(layout, factor).lengthM(lane)) / centreMm;
        }
        if (!(factor > 0)) {
            throw new IllegalArgumentException(
                    "the lane is longer than %s mm however small the track".formatted(Math.round(tapeMm)));
        }
        return factor;
    }

    /**
     * The layout with straights and radii, or the places of its points, times a factor; angles, banks and rises stay.
     *
     * @throws IllegalArgumentException if a number leaves its range, naming the piece
     */
    public static Layout scaled(Layout layout, double factor) {
        if (layout instanceof PointLayout line) {
            return new PointLayout(line.points().stream()
                    .map(point -> new PlanPoint(point.xMm() * factor, point.yMm() * factor))
                    .toList());
        }
        List<Piece> before = ((PieceLayout) layout).pieces();
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            try {
                pieces.add(scaled(before.get(i), factor));
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
