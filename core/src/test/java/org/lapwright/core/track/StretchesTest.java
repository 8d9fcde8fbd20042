package org.lapwright.core.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lapwright.core.track.Stretch.Kind.LEFT;
import static org.lapwright.core.track.Stretch.Kind.RIGHT;
import static org.lapwright.core.track.Stretch.Kind.STRAIGHT;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.dynamics.LapFiles;

class StretchesTest {
    private static List<Stretch> of(Track track) {
        return Stretches.of(track.cells(track.lanes().get(0)));
    }

    @Test
    void aStadiumHasTwoStraightsAndTwoTurns() {
        List<Stretch> found = of(Tracks.stadium());
        assertThat(found).extracting(Stretch::kind).containsExactly(STRAIGHT, LEFT, STRAIGHT, LEFT);
        assertThat(found.get(0).lengthM()).isEqualTo(2, within(1e-9));
        assertThat(found.get(1).lengthM()).isEqualTo(0.5 * Math.PI, within(1e-9));
        assertThat(found.get(1).turnedRad()).isEqualTo(Math.PI, within(1e-9));
    }

    @Test
    void aCircleIsOneTurn() {
        assertThat(of(Tracks.of(Tracks.right(500, 360))))
                .extracting(Stretch::kind)
                .containsExactly(RIGHT);
    }

    @Test
    void piecesThatGoOnAreOne() {
        Track track = Tracks.of(
                Tracks.straight(900),
                Tracks.straight(900),
                Tracks.left(400, 90),
                Tracks.straight(20),
                Tracks.left(400, 90),
                Tracks.straight(1820),
                Tracks.left(400, 180));
        List<Stretch> found = of(track);
        assertThat(found).extracting(Stretch::kind).containsExactly(STRAIGHT, LEFT, STRAIGHT, LEFT);
        assertThat(found.get(1).turnedRad()).isEqualTo(Math.PI, within(1e-9));
    }

    @Test
    void bothWaysOfAChicaneAreTold() {
        Track track =
                Tracks.of(Tracks.straight(2000), Tracks.left(300, 45), Tracks.right(300, 45), Tracks.straight(500));
        assertThat(of(track)).extracting(Stretch::kind).containsExactly(STRAIGHT, LEFT, RIGHT, STRAIGHT);
    }

    @Test
    void aStraightAloneIsOneStretch() {
        assertThat(of(Tracks.of(Tracks.straight(3000)))).hasSize(1);
    }

    /** The points lie on the stadium; the spline rounds off where straight meets turn, by a point's distance at most. */
    @Test
    void aDrawnStadiumIsDividedLikeItsPieces() {
        List<PlanPoint> points = new ArrayList<>();
        for (int x = 0; x < 2000; x += 100) {
            points.add(new PlanPoint(x, 0));
        }
        for (int k = 0; k < 18; k++) {
            points.add(onArc(2000, -90 + 10 * k));
        }
        for (int x = 2000; x > 0; x -= 100) {
            points.add(new PlanPoint(x, 1000));
        }
        for (int k = 0; k < 18; k++) {
            points.add(onArc(0, 90 + 10 * k));
        }
        List<Stretch> found = of(Tracks.of(new PointLayout(points)));
        assertThat(found).extracting(Stretch::kind).containsExactly(STRAIGHT, LEFT, STRAIGHT, LEFT);
        assertThat(found.get(2).lengthM()).isEqualTo(2, within(0.2));
    }

    private static PlanPoint onArc(double middleXMm, double angleDeg) {
        double angle = Math.toRadians(angleDeg);
        return new PlanPoint(middleXMm + 500 * Math.cos(angle), 500 + 500 * Math.sin(angle));
    }

    @ParameterizedTest
    @ValueSource(strings = {"loop", "hill", "long"})
    void theyCoverTheLapWithoutGaps(String name) {
        Track track = LapFiles.track(name);
        LaneCells cells = track.cells(track.lanes().get(0));
        List<Stretch> found = Stretches.of(cells);
        int cell = 0;
        double at = 0;
        double turned = 0;
        for (Stretch stretch : found) {
            assertThat(stretch.fromCell()).isEqualTo(cell);
            assertThat(stretch.fromM()).isEqualTo(at);
            cell = stretch.toCell();
            at = stretch.toM();
            turned += stretch.turnedRad();
        }
        assertThat(cell).isEqualTo(cells.count());
        assertThat(at).isEqualTo(cells.lapM(), within(1e-9));
        assertThat(found).hasSizeBetween(4, 15);
        assertThat(Math.abs(Math.IEEEremainder(turned, 2 * Math.PI)))
                .isEqualTo(track.layout().closingGap().headingRad(), within(1e-6));
    }
}
