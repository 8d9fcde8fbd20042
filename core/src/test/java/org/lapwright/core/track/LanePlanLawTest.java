package org.lapwright.core.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.lapwright.core.track.Tracks.CENTRE;
import static org.lapwright.core.track.Tracks.INNER;
import static org.lapwright.core.track.Tracks.OUTER;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.dynamics.LapFiles;
import org.lapwright.core.num.PeriodicSpline;

/** The plan of a lane against the geometry of circles and straight lines. */
class LanePlanLawTest {
    private static final double EXACT = 1e-9;

    private static void assertCloses(Track track, Lane lane, int turns) {
        LanePlan plan = LanePlan.of(track, lane);
        PlanPose start = plan.at(0);
        PlanPose end = plan.at(plan.cells());
        assertThat(Math.hypot(end.xM() - start.xM(), end.yM() - start.yM())).isLessThan(EXACT);
        assertThat(end.zM()).isEqualTo(0, within(EXACT));
        assertThat(end.headingRad() - start.headingRad()).isEqualTo(2 * Math.PI * turns, within(EXACT));
    }

    private static double length(LanePlan plan) {
        double length = 0;
        for (int i = 0; i < plan.cells(); i++) {
            length += Math.hypot(
                    plan.at(i + 1).xM() - plan.at(i).xM(),
                    plan.at(i + 1).yM() - plan.at(i).yM());
        }
        return length;
    }

    @Test
    void everyPlaceOfACircleIsOneRadiusFromItsMiddle() {
        Track track = Tracks.of(Tracks.left(800, 360));
        for (Lane lane : track.lanes()) {
            LanePlan plan = LanePlan.of(track, lane);
            double radius = 0.8 - lane.offsetM();
            for (PlanPose pose : plan.poses()) {
                assertThat(Math.hypot(pose.xM(), pose.yM() - 0.8)).isEqualTo(radius, within(EXACT));
            }
            assertCloses(track, lane, 1);
            assertThat(Tracks.area(track, lane)).isEqualTo(Math.PI * radius * radius, within(EXACT));
            assertThat(plan.bounds().widthM()).isEqualTo(2 * radius, within(1e-4));
        }
    }

    @Test
    void aStadiumHasItsLengthAreaAndExtent() {
        Track track = Tracks.stadium();
        for (Lane lane : List.of(CENTRE, INNER, OUTER)) {
            double radius = 0.5 - lane.offsetM();
            assertCloses(track, lane, 1);
            assertThat(track.cells(lane).lapM()).isEqualTo(4 + 2 * Math.PI * radius, within(EXACT));
            assertThat(Tracks.area(track, lane)).isEqualTo(4 * radius + Math.PI * radius * radius, within(EXACT));
            PlanBounds bounds = LanePlan.of(track, lane).bounds();
            assertThat(bounds.heightM()).isEqualTo(2 * radius, within(EXACT));
            assertThat(bounds.widthM()).isEqualTo(2 + 2 * radius, within(1e-3));
            assertThat(bounds.lowYM()).isEqualTo(lane.offsetM(), within(EXACT));
        }
    }

    /** Its loops turn opposite ways, so that the heading comes back and the areas cancel. */
    @Test
    void aFigureOfEightCrossesItselfOnceInItsMiddle() {
        Track track = Tracks.figureOfEight(0);
        assertCloses(track, CENTRE, 0);
        assertThat(Tracks.area(track, CENTRE)).isEqualTo(0, within(EXACT));
        assertThat(track.cells(CENTRE).lapM()).isEqualTo(1.6 + 2 * 0.4 * 1.5 * Math.PI, within(EXACT));
        LanePlan plan = LanePlan.of(track, CENTRE);
        assertThat(plan.crossings()).hasSize(1);
        Crossing crossing = plan.crossings().get(0);
        PlanPose under = plan.at(crossing.first());
        PlanPose over = plan.at(crossing.second());
        assertThat(under.xM()).isEqualTo(over.xM(), within(0.02));
        assertThat(under.yM()).isEqualTo(over.yM(), within(0.02));
        assertThat(crossing.riseM()).isEqualTo(0, within(EXACT));
    }

    @Test
    void aBridgeSaysHowHighItIs() {
        Track track = Tracks.figureOfEight(60);
        LanePlan plan = LanePlan.of(track, CENTRE);
        assertThat(plan.crossings()).hasSize(1);
        assertThat(Math.abs(plan.crossings().get(0).riseM())).isEqualTo(0.06, within(0.005));
    }

    /** Pythagoras: a ramp of 1,000 mm that rises 600 mm reaches 800 mm far. */
    @Test
    void aRampIsShorterOnThePlan() {
        PlanPose end = new PlanPose(0, 0, 0, 0).after(new Section(1, 0, 0, 0.6));
        assertThat(end.xM()).isEqualTo(0.8, within(EXACT));
        assertThat(end.zM()).isEqualTo(0.6, within(EXACT));
    }

    @Property
    void lanesRunBesideEachOther(
            @ForAll @IntRange(min = 1, max = 12) int pieces,
            @ForAll long seed,
            @ForAll @DoubleRange(min = 5, max = 60) double offsetMm) {
        var chance = new java.util.SplittableRandom(seed);
        List<Piece> row = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            row.add(
                    chance.nextBoolean()
                            ? Tracks.straight(chance.nextDouble(50, 2000))
                            : new Piece.Turn(
                                    chance.nextDouble(150, 900),
                                    chance.nextDouble(5, 200),
                                    chance.nextBoolean(),
                                    0,
                                    0));
        }
        PieceLayout layout = new PieceLayout(row);
        PlanPose centre = layout.course(LanePath.CENTRE, 600)
                .get(layout.course(LanePath.CENTRE, 600).size() - 1);
        PlanPose lane = layout.course(LanePath.beside(offsetMm / 1000), 600)
                .get(layout.course(LanePath.beside(offsetMm / 1000), 600).size() - 1);
        assertThat(lane.xM()).isEqualTo(centre.leftBy(offsetMm / 1000).xM(), within(1e-8));
        assertThat(lane.yM()).isEqualTo(centre.leftBy(offsetMm / 1000).yM(), within(1e-8));
        assertThat(lane.headingRad()).isEqualTo(centre.headingRad(), within(1e-8));
    }

    /** What the layout says of its gap is where its centre lane ends. */
    @ParameterizedTest
    @ValueSource(strings = {"loop", "hill", "long"})
    void aReferenceTrackMissesItsStartByItsGap(String name) {
        Track track = LapFiles.track(name);
        LanePlan plan = LanePlan.of(track, new Lane("middle", 0));
        PlanPose end = plan.at(plan.cells());
        ClosingGap gap = track.layout().closingGap();
        assertThat(Math.sqrt(end.xM() * end.xM() + end.yM() * end.yM() + end.zM() * end.zM()))
                .isEqualTo(gap.distanceM(), within(EXACT));
        assertThat(Math.abs(Math.IEEEremainder(end.headingRad(), 2 * Math.PI)))
                .isEqualTo(gap.headingRad(), within(EXACT));
        for (Lane lane : track.lanes()) {
            assertThat(LanePlan.of(track, lane).cells())
                    .isEqualTo(track.cells(lane).count());
        }
    }

    /** Every edge of a drawn lane stands square on the spline, at the lane's distance. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 40, -40})
    void aDrawnLaneLiesOnItsLine(double offsetMm) {
        PointLayout layout = bean();
        Track track = Tracks.of(layout);
        Lane lane = new Lane("drawn", offsetMm);
        LanePlan plan = LanePlan.of(track, lane);
        PeriodicSpline x = layout.spline(true);
        PeriodicSpline y = layout.spline(false);
        for (int i = 0; i < plan.cells(); i += 7) {
            PlanPose pose = plan.at(i);
            double t = nearest(x, y, pose);
            double distance = Math.hypot(pose.xM() - x.value(t), pose.yM() - y.value(t));
            assertThat(distance).isEqualTo(Math.abs(offsetMm) / 1000, within(1e-7));
        }
        assertCloses(track, lane, 1);
        assertThat(length(plan)).isEqualTo(track.lengthM(lane), within(2e-4 * track.lengthM(lane)));
    }

    /** Heading against curvature: what a drawn lane turns in a cell is what the equations of motion are told. */
    @Test
    void aDrawnLaneTurnsAsItsCellsSay() {
        Track track = Tracks.of(bean());
        LanePlan plan = LanePlan.of(track, INNER);
        LaneCells cells = track.cells(INNER);
        for (int i = 0; i < cells.count(); i++) {
            assertThat(plan.at(i + 1).headingRad() - plan.at(i).headingRad())
                    .isEqualTo(cells.curvature(i) * cells.lengthM(i), within(1e-6));
        }
    }

    private static PointLayout bean() {
        List<PlanPoint> points = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            double angle = 2 * Math.PI * i / 24;
            double radius = 900 + 200 * Math.cos(2 * angle) + 90 * Math.sin(3 * angle);
            points.add(new PlanPoint(500 + radius * Math.cos(angle), -200 + radius * Math.sin(angle)));
        }
        return new PointLayout(points);
    }

    private static double nearest(PeriodicSpline x, PeriodicSpline y, PlanPose pose) {
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        int steps = 4000;
        for (int k = 0; k < steps; k++) {
            double t = x.period() * k / steps;
            double d = Math.hypot(pose.xM() - x.value(t), pose.yM() - y.value(t));
            if (d < least) {
                least = d;
                best = t;
            }
        }
        double low = best - x.period() / steps;
        double high = best + x.period() / steps;
        for (int k = 0; k < 80; k++) {
            double a = low + (high - low) / 3;
            double b = high - (high - low) / 3;
            boolean left = Math.hypot(pose.xM() - x.value(a), pose.yM() - y.value(a))
                    < Math.hypot(pose.xM() - x.value(b), pose.yM() - y.value(b));
            low = left ? low : a;
            high = left ? b : high;
        }
        return (low + high) / 2;
    }
}
