package org.lapwright.app.files.drawing.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.drawing.Trouble;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LanePath;
import org.lapwright.core.track.PlanPose;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/** What a drawn loop becomes: a spline that stays where it was drawn, of the right length, the right way round. */
class CentreLineLawTest {
    private static final String STADIUM = "M0 0H2000A400 400 0 0 1 2000 800H0A400 400 0 0 1 0 0z";
    private static final CentreLine.Wish PLAIN = new CentreLine.Wish(true, 0, 0);

    private static Loop loop(String svg) {
        return Loops.find(Drawn.read(svg), 1, 1, Loops.FLAT_MM).loops().get(0);
    }

    private static List<PlanPose> course(CentreLine line) {
        return new PointLayout(line.points()).course(LanePath.CENTRE, 3000);
    }

    private static double length(CentreLine line) {
        return 1000 * new PointLayout(line.points()).lengthM(LanePath.CENTRE);
    }

    @Test
    void aCircleStaysACircle() {
        CentreLine line = CentreLine.of(loop(Drawn.svg("<circle cx='1000' cy='1000' r='1000'/>")), PLAIN);
        assertThat(course(line))
                .allSatisfy(pose -> assertThat(1000 * Math.hypot(pose.xM() - 1, pose.yM() - 1))
                        .isCloseTo(1000, within(0.5)));
        assertThat(length(line)).isCloseTo(2000 * Math.PI, within(0.5));
        assertThat(course(line).get(3000).headingRad() - course(line).get(0).headingRad())
                .isCloseTo(2 * Math.PI, within(1e-6));
    }

    /** Curvature is what a lap is reckoned from: away from the joints it has to be that of the drawing. */
    @Test
    void aStadiumKeepsItsCourseAndItsCurvature() {
        CentreLine line = CentreLine.of(loop(Drawn.path(STADIUM)), PLAIN);
        for (PlanPose pose : course(line)) {
            double x = 1000 * pose.xM() - 400;
            double y = 1000 * pose.yM() - 400;
            double off = x < 0 ? Math.hypot(x, y) : x > 2000 ? Math.hypot(x - 2000, y) : Math.abs(y);
            assertThat(off).isCloseTo(400, within(0.5));
        }
        assertThat(length(line)).isCloseTo(4000 + 800 * Math.PI, within(1.0));
        Track track = new Track(
                "Stadium",
                Surface.BENCH,
                List.of(new Lane("1", 0)),
                new Power(12, 0, 0, List.of(0.0), OptionalDouble.empty()),
                new PointLayout(line.points()));
        var cells = track.cells(track.lanes().get(0));
        int inBend = 0;
        double at = 0;
        double bend = Math.PI * 0.4;
        for (int i = 0; i < cells.count(); i++) {
            double middle = at + cells.lengthM(i) / 2;
            at += cells.lengthM(i);
            // The drawing starts at a joint; left round, the first thing is a bend.
            double s = middle % (2 + bend);
            if (s > 0.15 && s < bend - 0.15) {
                assertThat(cells.curvature(i)).isCloseTo(2.5, within(0.05));
                inBend++;
            } else if (s > bend + 0.15 && s < bend + 1.85) {
                assertThat(cells.curvature(i)).isCloseTo(0, within(0.05));
            }
        }
        assertThat(inBend).isGreaterThan(50);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void theDirectionIsTheOneAskedFor(boolean left) {
        CentreLine line = CentreLine.of(loop(Drawn.path(STADIUM)), new CentreLine.Wish(left, 0, 0));
        List<PlanPose> course = course(line);
        assertThat(course.get(3000).headingRad() - course.get(0).headingRad())
                .isCloseTo(left ? 2 * Math.PI : -2 * Math.PI, within(1e-6));
        // Whichever way, the drawing begins at its upper left, which is (400, 800) on the plan.
        assertThat(line.points().get(0).xMm()).isCloseTo(400, within(0.01));
        assertThat(line.points().get(0).yMm()).isCloseTo(800, within(0.01));
    }

    @Test
    void theTimingLineIsWhereItIsAskedFor() {
        // Drawn with the clock, so with the clock 500 mm are 500 mm to the right.
        CentreLine line = CentreLine.of(loop(Drawn.path(STADIUM)), new CentreLine.Wish(false, 500, 0));
        assertThat(line.points().get(0).xMm()).isCloseTo(900, within(0.01));
        assertThat(line.points().get(0).yMm()).isCloseTo(800, within(0.01));
        double lap = 4000 + 800 * Math.PI;
        CentreLine round = CentreLine.of(loop(Drawn.path(STADIUM)), new CentreLine.Wish(false, 500 - 3 * lap, 0));
        assertThat(round.points().get(0).xMm()).isCloseTo(900, within(0.05));
    }

    /** A rectangle with its corners rounded is a rectangle with rounded corners. */
    @Test
    void roundedCornersAreArcs() {
        Loop sharp = loop(Drawn.svg("<rect width='2000' height='1000'/>"));
        CentreLine left = CentreLine.of(sharp, PLAIN);
        assertThat(left.remarks()).first().asString().contains("4 sharp corners");
        CentreLine line = CentreLine.of(sharp, new CentreLine.Wish(true, 100, 200));
        assertThat(length(line)).isCloseTo(6000 - 8 * 200 + 400 * Math.PI, within(1.0));
        for (PlanPose pose : course(line)) {
            double x = Math.max(0, Math.abs(1000 * pose.xM() - 1000) - 800);
            double y = Math.max(0, Math.abs(1000 * pose.yM() - 500) - 300);
            assertThat(Math.hypot(x, y)).isLessThan(200.5);
            assertThat(x > 0 || y > 0).isTrue();
        }
        assertThat(line.remarks())
                .first()
                .asString()
                .contains("corners rounded: 4, with a radius of 200.0 mm.", "by up to 82.8 mm");
        assertThat(CentreLine.of(sharp, new CentreLine.Wish(true, 0, 900)).remarks())
                .first()
                .asString()
                .contains("no room for that, down to 450.0 mm");
    }

    @Test
    void whatIsNoTrackSaysSo() {
        assertThatThrownBy(() -> CentreLine.of(loop(Drawn.svg("<circle r='3'/>")), PLAIN))
                .isInstanceOf(Trouble.class)
                .hasMessageContaining("a lap is from 0.1 to 1000 m")
                .hasMessageContaining("a length you know");
        assertThatThrownBy(() -> CentreLine.of(loop(Drawn.svg("<circle r='3e5'/>")), PLAIN))
                .isInstanceOf(Trouble.class);
    }

    /** Smooth loops by chance: a few waves on a circle, drawn as many short lines. */
    @Property(tries = 60)
    void aWavyLoopIsFollowed(@ForAll long seed, @ForAll @IntRange(min = 2, max = 7) int waves) {
        Random random = new Random(seed);
        double size = 300 + 3000 * random.nextDouble();
        double depth = 0.5 * random.nextDouble() / waves;
        StringBuilder points = new StringBuilder();
        int n = 4000;
        double truth = 0;
        double[] before = {size * (1 + depth), 0};
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i / n;
            double radius = size * (1 + depth * Math.cos(waves * angle));
            double[] here = {radius * Math.cos(angle), radius * Math.sin(angle)};
            truth += Math.hypot(here[0] - before[0], here[1] - before[1]);
            before = here;
            points.append(here[0]).append(' ').append(here[1]).append(' ');
        }
        truth += Math.hypot(size * (1 + depth) - before[0], before[1]);
        CentreLine line = CentreLine.of(loop(Drawn.svg("<polygon points='" + points + "'/>")), PLAIN);
        assertThat(line.points()).hasSizeBetween(16, 5000);
        assertThat(length(line)).isCloseTo(truth, within(2e-3 * truth));
        double left = 0;
        double low = 0;
        for (int i = 0; i < n; i++) {
            double angle = 2 * Math.PI * i / n;
            double radius = size * (1 + depth * Math.cos(waves * angle));
            left = Math.min(left, radius * Math.cos(angle));
            low = Math.min(low, -radius * Math.sin(angle));
        }
        for (PlanPose pose : course(line)) {
            double x = 1000 * pose.xM() + left;
            double y = -(1000 * pose.yM() + low);
            double angle = Math.atan2(y, x);
            // Along the radius, which is not shorter than the distance from the curve.
            double slope = -size * depth * waves * Math.sin(waves * angle);
            double radius = size * (1 + depth * Math.cos(waves * angle));
            double off = Math.abs(Math.hypot(x, y) - radius) * radius / Math.hypot(radius, slope);
            assertThat(off).isLessThan(0.5);
        }
    }
}
