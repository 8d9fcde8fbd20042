package org.lapwright.app.web.track;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LanePlan;
import org.lapwright.core.track.PlanPose;
import org.lapwright.core.track.Section;

/** A course drawn by chords looks as the course does; the distance to a chord by {@link Line2D}. */
class ChordsLawTest {
    private static LanePlan plan(List<PlanPose> poses) {
        return new LanePlan(new Lane("1", 0), poses);
    }

    private static List<Integer> ends(LanePlan plan, double toleranceM) {
        List<Integer> ends = new ArrayList<>();
        new Chords(plan, toleranceM).between(0, plan.cells(), ends::add);
        return ends;
    }

    private static LanePlan wandering(long seed, int edges) {
        Random random = new Random(seed);
        List<PlanPose> poses = new ArrayList<>(List.of(new PlanPose(0, 0, 0, 0)));
        double curvature = 0;
        for (int i = 0; i < edges; i++) {
            curvature = i % 7 == 0 ? 5 * random.nextGaussian() : curvature;
            poses.add(poses.get(i).after(new Section(0.02, curvature, 0, 0)));
        }
        return plan(poses);
    }

    @Property(tries = 200)
    void noEdgeLiesFurtherBesideItsChordThanAllowed(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 400) int edges,
            @ForAll @DoubleRange(min = 0.01, max = 200) double toleranceMm) {
        LanePlan plan = wandering(seed, edges);
        int from = 0;
        for (int to : ends(plan, toleranceMm / 1000)) {
            assertThat(to).isGreaterThan(from);
            for (int edge = from; edge <= to; edge++) {
                PlanPose a = plan.at(from);
                PlanPose b = plan.at(to);
                PlanPose at = plan.at(edge);
                assertThat(Line2D.ptSegDist(a.xM(), a.yM(), b.xM(), b.yM(), at.xM(), at.yM()))
                        .isLessThanOrEqualTo(toleranceMm / 1000 + 1e-9);
            }
            from = to;
        }
        assertThat(from).isEqualTo(edges);
    }

    /** A closed circle: a chord that lies t inside spans 2 acos(1 - t/R); halving takes at most twice as many as needed. */
    @Property(tries = 100)
    void aCircleTakesAsManyChordsAsItsSagittaAsks(
            @ForAll @DoubleRange(min = 0.2, max = 3) double radiusM,
            @ForAll @DoubleRange(min = 0.1, max = 10) double toleranceMm) {
        int edges = 2000;
        List<PlanPose> poses = new ArrayList<>(List.of(new PlanPose(0, 0, 0, 0)));
        for (int i = 0; i < edges; i++) {
            poses.add(poses.get(i).after(new Section(2 * Math.PI * radiusM / edges, 1 / radiusM, 0, 0)));
        }
        double needed = 2 * Math.PI / (2 * Math.acos(1 - toleranceMm / 1000 / radiusM));
        assertThat(ends(plan(poses), toleranceMm / 1000))
                .hasSizeBetween((int) Math.floor(needed), (int) Math.ceil(2.1 * needed) + 1);
    }

    @Property(tries = 50)
    void aStraightIsOneChord(@ForAll @IntRange(min = 1, max = 500) int edges) {
        List<PlanPose> poses = new ArrayList<>(List.of(new PlanPose(0.3, -1, 0, 0.7)));
        for (int i = 0; i < edges; i++) {
            poses.add(poses.get(i).after(new Section(0.01, 0, 0, 0)));
        }
        assertThat(ends(plan(poses), 1e-6)).containsExactly(edges);
    }
}
