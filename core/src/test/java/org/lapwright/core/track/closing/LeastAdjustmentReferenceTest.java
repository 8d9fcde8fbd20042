package org.lapwright.core.track.closing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.Piece.Straight;
import org.lapwright.core.track.Piece.Turn;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.closing.Closing.Adjusted;
import org.lapwright.core.track.closing.Closing.Impossible;
import org.lapwright.core.track.closing.Closing.Reason;

/** Least changes that can be worked out by hand; closed forms of plane geometry. */
class LeastAdjustmentReferenceTest {
    private static PieceLayout layout(Piece... pieces) {
        return new PieceLayout(Arrays.asList(pieces));
    }

    private static Piece straight(double lengthMm) {
        return new Straight(lengthMm, 0);
    }

    private static Piece left(double radiusMm, double angleDeg) {
        return new Turn(radiusMm, angleDeg, true, 0, 0);
    }

    private static Piece right(double radiusMm, double angleDeg) {
        return new Turn(radiusMm, angleDeg, false, 0, 0);
    }

    private static Adjusted least(PieceLayout layout) {
        Closing closing = LeastAdjustment.of(layout);
        assertThat(closing).isInstanceOf(Adjusted.class);
        Adjusted adjusted = (Adjusted) closing;
        assertThat(adjusted.layout().closingGap().distanceM()).isLessThan(1e-9);
        assertThat(adjusted.layout().closingGap().headingRad()).isLessThan(1e-9);
        return adjusted;
    }

    private static void assertChange(Change change, int piece, Quantity quantity, double by) {
        assertThat(change.piece()).isEqualTo(piece);
        assertThat(change.quantity()).isEqualTo(quantity);
        assertThat(change.by()).isCloseTo(by, within(1e-6));
    }

    /** Opposite straights a and b must be equal: the least of (da, db) with da − db = −12 is (−6, 6), norm 6√2. */
    @Test
    void anOvalWithOneStraightTooLongSharesItOut() {
        PieceLayout oval = layout(straight(1512), left(400, 180), straight(1500), left(400, 180));
        Adjusted least = least(oval);
        assertThat(least.changes()).hasSize(2);
        assertChange(least.changes().get(0), 0, Quantity.LENGTH, -6);
        assertChange(least.changes().get(1), 2, Quantity.LENGTH, 6);
        assertThat(least.norm()).isCloseTo(6 * Math.sqrt(2), within(1e-9));
    }

    /** Or one straight by all of it, either one. */
    @Test
    void oneStraightAloneTakesAllOfIt() {
        PieceLayout oval = layout(straight(1512), left(400, 180), straight(1500), left(400, 180));
        List<Adjusted> alone = LeastAdjustment.alone(oval);
        assertThat(alone).hasSize(2);
        assertChange(alone.get(0).changes().get(0), 0, Quantity.LENGTH, -12);
        assertChange(alone.get(1).changes().get(0), 2, Quantity.LENGTH, 12);
        assertThat(alone)
                .allSatisfy(
                        one -> assertThat(one.layout().closingGap().distanceM()).isLessThan(1e-9));
    }

    /** Two straights on one side share the 12 with the one opposite: da + db − dc = −12, least −4, −4, +4. */
    @Test
    void everyStraightOfASideTakesItsPart() {
        Adjusted least = least(layout(straight(750), straight(762), left(400, 180), straight(1500), left(400, 180)));
        assertThat(least.changes()).extracting(Change::piece).containsExactly(0, 1, 3);
        assertThat(least.changes())
                .extracting(change -> (double) Math.round(1e6 * change.by()) / 1e6)
                .containsExactly(-4.0, -4.0, 4.0);
    }

    /** A rectangle with 10 mm too much along and 4 mm across: each pair of sides by itself. */
    @Test
    void bothWaysCloseAtOnce() {
        Piece corner = left(300, 90);
        Adjusted least = least(
                layout(straight(1010), corner, straight(500), corner, straight(1000), corner, straight(504), corner));
        assertThat(least.changes())
                .extracting(Change::piece, change -> (double) Math.round(1e6 * change.by()) / 1e6)
                .containsExactly(Tuple.tuple(0, -5.0), Tuple.tuple(2, 2.0), Tuple.tuple(4, 5.0), Tuple.tuple(6, -2.0));
    }

    /** The ends of an oval meet only if both turns are 180°; its straights are equal already, so nothing else moves. */
    @Test
    void aTurnOf178DegreesGetsItsTwoDegrees() {
        PieceLayout oval = layout(straight(1500), left(400, 180), straight(1500), left(400, 178));
        Adjusted least = least(oval);
        assertThat(least.changes()).hasSize(1);
        assertChange(least.changes().get(0), 3, Quantity.ANGLE, 2);
        assertThat(least.norm()).as("a degree weighs 10 mm").isCloseTo(20, within(1e-6));
        assertChange(LeastAdjustment.alone(oval).get(0).changes().get(0), 3, Quantity.ANGLE, 2);
    }

    /** Two half circles alone meet only with one radius: da − db = 10, least (5, −5); angles cannot do it. */
    @Test
    void withoutStraightsTheRadiiGive() {
        Adjusted least = least(layout(left(400, 180), left(410, 180)));
        assertThat(least.changes()).hasSize(2);
        assertChange(least.changes().get(0), 0, Quantity.RADIUS, 5);
        assertChange(least.changes().get(1), 1, Quantity.RADIUS, -5);
    }

    /** Parallel straights cannot mend a step to the side; of one turn's angle more and the other's less there is enough. */
    @Test
    void whereStraightsDoNotReachAnglesJoin() {
        Adjusted least = least(layout(straight(1500), left(400, 180), straight(1500), left(410, 180)));
        assertThat(least.changes())
                .filteredOn(change -> change.quantity() == Quantity.ANGLE)
                .hasSize(2);
        assertThat(least.changes().get(1).by())
                .isCloseTo(-least.changes().get(3).by(), within(1e-9));
        // The straights lean until 1500 mm of one makes up the 20 mm, within what the turns add.
        assertThat(Math.abs(least.changes().get(1).by()))
                .isCloseTo(Math.toDegrees(Math.asin(20.0 / 1500)), within(0.01));
    }

    /** A ramp of 30 mm on 500 mm covers √(500² − 30²) of plan; up and down again the oval misses twice what that lacks. */
    @Test
    void slopingStraightsCountByTheirPlan() {
        PieceLayout ramps =
                layout(new Straight(500, 30), new Straight(500, -30), left(400, 180), straight(1000), left(400, 180));
        Adjusted least = least(ramps);
        double plan = Math.sqrt(500.0 * 500 - 30 * 30);
        double s = 500 / plan;
        double missing = 1000 - 2 * plan;
        // Tangent: s da + s db − dc = missing, so da = db ≈ s m / (2 s² + 1), dc ≈ −m / (2 s² + 1).
        assertThat(least.changes().get(0).by()).isCloseTo(s * missing / (2 * s * s + 1), within(1e-5));
        assertThat(least.changes().get(2).by()).isCloseTo(-missing / (2 * s * s + 1), within(1e-5));
    }

    /** 2 and 13 mm against 3: 12 too long, and a straight is never shorter than 1 mm. */
    @Test
    void aNumberAtTheEndOfItsRangeStaysThere() {
        Adjusted least = least(layout(straight(2), straight(13), left(400, 180), straight(3), left(400, 180)));
        // da + db − dc = −12 shares as −4, −4, +4; but 2 mm may only become 1, so −1, and −5.5, +5.5 for the rest.
        assertThat(least.changes())
                .extracting(Change::piece, change -> (double) Math.round(1e6 * change.by()) / 1e6)
                .containsExactly(Tuple.tuple(0, -1.0), Tuple.tuple(1, -5.5), Tuple.tuple(3, 5.5));
    }

    @Test
    void aRiseThatIsNotMadeUpIsNamed() {
        assertThat(LeastAdjustment.of(layout(new Straight(1500, 30), left(400, 180), straight(1500), left(400, 180))))
                .isInstanceOfSatisfying(Impossible.class, why -> {
                    assertThat(why.reason()).isEqualTo(Reason.HEIGHT);
                    assertThat(why.amount()).isCloseTo(30, within(1e-9));
                });
    }

    @Test
    void aMissingTurnIsNamed() {
        assertThat(LeastAdjustment.of(layout(straight(1500), left(400, 180), straight(1500), left(400, 135))))
                .isInstanceOfSatisfying(Impossible.class, why -> {
                    assertThat(why.reason()).isEqualTo(Reason.HEADING);
                    assertThat(why.amount()).isCloseTo(-45, within(1e-9));
                });
    }

    /** A straight cannot shrink to nothing. */
    @Test
    void aStraightAloneCannotClose() {
        assertThat(LeastAdjustment.of(layout(straight(1500)))).isInstanceOfSatisfying(Impossible.class, why -> {
            assertThat(why.reason()).isEqualTo(Reason.REACH);
            assertThat(why.amount()).isCloseTo(1500, within(1e-9));
        });
        assertThat(LeastAdjustment.alone(layout(straight(1500)))).isEmpty();
    }

    @Test
    void anEightClosesToo() {
        Adjusted least = least(layout(straight(620), left(300, 270), straight(600), right(300, 270)));
        assertThat(least.norm()).isLessThanOrEqualTo(20);
    }
}
