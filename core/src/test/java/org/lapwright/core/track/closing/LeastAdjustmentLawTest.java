package org.lapwright.core.track.closing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.Piece.Straight;
import org.lapwright.core.track.Piece.Turn;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.closing.Closing.Adjusted;
import org.lapwright.core.track.closing.Closing.Closed;

/** Any closed polygon with rounded corners, put out by known amounts: the way back by hand is never shorter. */
class LeastAdjustmentLawTest {
    /** A polygon of equal sides and corners, each side in two pieces. */
    private static List<Piece> polygon(int sides, double sideMm, double radiusMm, boolean left) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < sides; i++) {
            pieces.add(new Straight(sideMm * 0.4, 0));
            pieces.add(new Straight(sideMm * 0.6, 0));
            pieces.add(new Turn(radiusMm, 360.0 / sides, left, 0, 0));
        }
        return pieces;
    }

    @Property(tries = 200)
    void straightsPutOutComeBackByNoMore(
            @ForAll @IntRange(min = 3, max = 8) int sides,
            @ForAll @DoubleRange(min = 200, max = 900) double sideMm,
            @ForAll @DoubleRange(min = 100, max = 600) double radiusMm,
            @ForAll boolean left,
            @ForAll @Size(24) List<@DoubleRange(min = -40, max = 40) Double> out) {
        List<Piece> pieces = polygon(sides, sideMm, radiusMm, left);
        double squares = 0;
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i) instanceof Straight straight) {
                pieces.set(i, new Straight(straight.lengthMm() + out.get(i), 0));
                squares += out.get(i) * out.get(i);
            }
        }
        Closing closing = LeastAdjustment.of(new PieceLayout(pieces));
        if (closing instanceof Closed) {
            return;
        }
        Adjusted least = (Adjusted) closing;
        assertThat(least.layout().closingGap().distanceM()).isLessThan(1e-9);
        assertThat(least.norm()).isLessThanOrEqualTo(Math.sqrt(squares) * (1 + 1e-9) + 1e-6);
        assertThat(least.changes())
                .allSatisfy(change -> assertThat(change.quantity()).isEqualTo(Quantity.LENGTH));
        for (Adjusted alone : LeastAdjustment.alone(new PieceLayout(pieces))) {
            if (alone.changes().get(0).quantity() == Quantity.LENGTH) {
                assertThat(alone.norm()).isGreaterThanOrEqualTo(least.norm() * (1 - 1e-9));
            }
        }
    }

    @Property(tries = 200)
    void anglesPutOutComeBackByNoMore(
            @ForAll @IntRange(min = 3, max = 8) int sides,
            @ForAll @DoubleRange(min = 200, max = 900) double sideMm,
            @ForAll @DoubleRange(min = 100, max = 600) double radiusMm,
            @ForAll boolean left,
            @ForAll @IntRange(max = 2) int corner,
            @ForAll @DoubleRange(min = -4, max = 4) double out) {
        List<Piece> pieces = polygon(sides, sideMm, radiusMm, left);
        Turn turn = (Turn) pieces.get(3 * corner + 2);
        pieces.set(3 * corner + 2, new Turn(radiusMm, turn.angleDeg() + out, left, 0, 0));
        Closing closing = LeastAdjustment.of(new PieceLayout(pieces));
        if (closing instanceof Closed) {
            assertThat(Math.toRadians(Math.abs(out))).isLessThan(1e-8);
            return;
        }
        Adjusted least = (Adjusted) closing;
        assertThat(least.layout().closingGap().distanceM()).isLessThan(1e-9);
        assertThat(least.layout().closingGap().headingRad()).isLessThan(1e-9);
        assertThat(least.norm()).isLessThanOrEqualTo(10 * Math.abs(out) * (1 + 1e-9) + 1e-6);
    }

    /** What is closed needs nothing, and what was closed by us needs nothing more. */
    @Property(tries = 100)
    void whatIsClosedStays(
            @ForAll @IntRange(min = 3, max = 8) int sides,
            @ForAll @DoubleRange(min = 200, max = 900) double sideMm,
            @ForAll @DoubleRange(min = -40, max = 40) double out) {
        List<Piece> pieces = polygon(sides, sideMm, 300, true);
        PieceLayout closed = new PieceLayout(pieces);
        assertThat(LeastAdjustment.of(closed)).isInstanceOf(Closed.class);
        assertThat(LeastAdjustment.alone(closed)).isEmpty();
        pieces.set(0, new Straight(sideMm * 0.4 + out, 0));
        if (LeastAdjustment.of(new PieceLayout(pieces)) instanceof Adjusted once) {
            assertThat(LeastAdjustment.of(once.layout())).isInstanceOf(Closed.class);
        }
    }

    /** Held to a range: u = clamp(Aᵀλ) by its Karush–Kuhn–Tucker conditions, one row, worked for a row of ones. */
    @Property(tries = 200)
    void rangesAreKeptAndTheRestSharesEqually(
            @ForAll @Size(5) List<@DoubleRange(min = 0.1, max = 10) Double> room,
            @ForAll @DoubleRange(min = -0.99, max = 0.99) double share) {
        double[] high = room.stream().mapToDouble(width -> width).toArray();
        double[] low = room.stream().mapToDouble(width -> -width).toArray();
        double wanted = share * room.stream().mapToDouble(width -> width).sum();
        double[] u = BoxedLeastNorm.solve(new double[][] {{1, 1, 1, 1, 1}}, new double[] {wanted}, low, high);
        double sum = 0;
        double level = 0;
        for (int i = 0; i < u.length; i++) {
            assertThat(Math.abs(u[i])).isLessThanOrEqualTo(high[i] + 1e-12);
            sum += u[i];
            level = Math.max(level, Math.abs(u[i]));
        }
        assertThat(sum).isCloseTo(wanted, within(1e-9));
        for (int i = 0; i < u.length; i++) {
            assertThat(Math.abs(u[i])).isCloseTo(Math.min(level, high[i]), within(1e-9));
        }
    }
}
