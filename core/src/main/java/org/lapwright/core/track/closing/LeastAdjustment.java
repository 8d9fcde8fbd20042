package org.lapwright.core.track.closing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.closing.Closing.Adjusted;
import org.lapwright.core.track.closing.Closing.Closed;
import org.lapwright.core.track.closing.Closing.Impossible;
import org.lapwright.core.track.closing.Closing.Reason;

/**
 * The smallest change of a layout that makes its ends meet, in place and in direction.
 *
 * <p>Smallest is the root of the sum of squares, in millimetres of straight; {@link Quantity} says what the others weigh.
 * Straights are tried first, by themselves: radii and angles of bought pieces are what they are. Straights cannot turn the
 * end, so angles join where the heading is wrong or the straights do not reach, and radii last.
 *
 * <p>Method: the layout is replaced by its tangent, the shortest change from the layout as given that closes the tangent is
 * found ({@link BoxedLeastNorm}), and this is repeated until nothing moves (Gauss–Newton for a constraint with a minimum norm).
 */
public final class LeastAdjustment {
    /** More than this between the directions of the ends is a missing piece, not a wrong number; our choice. */
    private static final double WIDEST_RAD = Math.toRadians(20);

    /** One metre: a milliradian counts as a millimetre while closing. */
    private static final double LEVER_MM = 1000;

    private static final double CLOSED_MM = 1e-6;
    private static final double STILL_MM = 1e-10;
    /** A change of less than this, mm or degrees, is rounding. */
    private static final double LEAST = 1e-9;

    private static final int MOST_ROUNDS = 100;
    private static final int FEW_ROUNDS = 12;
    private static final int MOST_ALONE = 3;

    private LeastAdjustment() {}

    /** The smallest change that closes a layout. */
    public static Closing of(PieceLayout layout) {
        Optional<Closing> settled = settled(layout);
        if (settled.isPresent()) {
            return settled.get();
        }
        Set<Quantity> movable = EnumSet.noneOf(Quantity.class);
        for (Quantity next : Quantity.values()) {
            movable.add(next);
            Optional<Adjusted> found = close(layout, Freedom.of(layout, movable), MOST_ROUNDS);
            if (found.isPresent()) {
                return found.get();
            }
        }
        return new Impossible(Reason.REACH, 1000 * layout.closingGap().distanceM());
    }

    /**
     * The changes of a single number that close a layout, for one that was misread or mistyped: lengths before angles before
     * radii, and the smallest first.
     *
     * @return at most three; none when it is closed, or no single number does it
     */
    public static List<Adjusted> alone(PieceLayout layout) {
        if (settled(layout).isPresent()) {
            return List.of();
        }
        boolean turned = Math.abs(LEVER_MM * new Course(layout).headingRad()) > CLOSED_MM;
        List<Adjusted> found = new ArrayList<>();
        for (Freedom one : Freedom.of(
                layout, turned ? EnumSet.of(Quantity.ANGLE) : EnumSet.of(Quantity.LENGTH, Quantity.RADIUS))) {
            close(layout, List.of(one), FEW_ROUNDS).ifPresent(found::add);
        }
        found.sort(Comparator.comparing((Adjusted one) -> one.changes().get(0).quantity())
                .thenComparingDouble(one -> one.norm()));
        return found.subList(0, Math.min(MOST_ALONE, found.size()));
    }

    private static Optional<Closing> settled(PieceLayout layout) {
        Course course = new Course(layout);
        if (isClosed(course) && Math.abs(course.heightMm()) <= CLOSED_MM) {
            return Optional.of(new Closed());
        }
        if (Math.abs(course.heightMm()) > CLOSED_MM) {
            return Optional.of(new Impossible(Reason.HEIGHT, course.heightMm()));
        }
        return Math.abs(course.headingRad()) > WIDEST_RAD
                ? Optional.of(new Impossible(Reason.HEADING, Math.toDegrees(course.headingRad())))
                : Optional.empty();
    }

    private static boolean isClosed(Course course) {
        double[] miss = course.miss(LEVER_MM);
        return Math.hypot(miss[0], miss[1]) <= CLOSED_MM && Math.abs(miss[2]) <= CLOSED_MM;
    }

    private static Optional<Adjusted> close(PieceLayout layout, List<Freedom> free, int rounds) {
        if (free.isEmpty()) {
            return Optional.empty();
        }
        double[] change = new double[free.size()];
        PieceLayout changed = layout;
        for (int round = 0; round < rounds; round++) {
            double[] next = next(new Course(changed), free, change);
            double moved = 0;
            for (int i = 0; i < next.length; i++) {
                moved = Math.max(moved, Math.abs(next[i] - change[i]));
            }
            change = next;
            changed = with(layout, free, change);
            if (moved <= STILL_MM) {
                break;
            }
        }
        return isClosed(new Course(changed)) ? Optional.of(adjusted(changed, free, change)) : Optional.empty();
    }

    /** The shortest change from the layout as given that closes its tangent at the change before. */
    private static double[] next(Course course, List<Freedom> free, double[] change) {
        double[] right = course.miss(LEVER_MM);
        double[][] rows = new double[right.length][free.size()];
        double[] low = new double[free.size()];
        double[] high = new double[free.size()];
        for (int i = 0; i < free.size(); i++) {
            double weight = free.get(i).quantity().weight();
            double[] slope = course.slope(free.get(i), LEVER_MM);
            for (int row = 0; row < rows.length; row++) {
                rows[row][i] = slope[row] / weight;
            }
            low[i] = weight * (free.get(i).low() - free.get(i).value());
            high[i] = weight * (free.get(i).high() - free.get(i).value());
        }
        for (int row = 0; row < rows.length; row++) {
            right[row] = -right[row];
            for (int i = 0; i < change.length; i++) {
                right[row] += rows[row][i] * change[i];
            }
        }
        return BoxedLeastNorm.solve(rows, right, low, high);
    }

    private static PieceLayout with(PieceLayout layout, List<Freedom> free, double[] change) {
        List<Piece> pieces = new ArrayList<>(layout.pieces());
        for (int i = 0; i < change.length; i++) {
            Freedom one = free.get(i);
            pieces.set(one.piece(), one.changed(pieces.get(one.piece()), one.after(change[i])));
        }
        return new PieceLayout(pieces);
    }

    private static Adjusted adjusted(PieceLayout changed, List<Freedom> free, double[] change) {
        List<Change> changes = new ArrayList<>();
        double squares = 0;
        for (int i = 0; i < change.length; i++) {
            Freedom one = free.get(i);
            squares += change[i] * change[i];
            if (Math.abs(one.after(change[i]) - one.value()) > LEAST) {
                changes.add(new Change(one.piece(), one.quantity(), one.value(), one.after(change[i])));
            }
        }
        return new Adjusted(changed, changes, Math.sqrt(squares));
    }
}
