package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.track.Piece;

/**
 * Minimum-time problems of a point mass with exact answers, or answers found in two independent ways (Runge–Kutta sweeps and the
 * interior-point optimiser IPOPT), put to the real solver by {@link PointCar}. The numbers stand in
 * {@code reference/physics/time_optimal_problems.json}.
 *
 * <p>Not asked: BB1 to BB4 and the runs from rest to rest of SL1 and SL2, because a closed lap has no rest; and the instance of
 * TOPP-RA (H. Pham and Q.-C. Pham 2018), because the sweeps know cars and not arms.
 */
class PointMassReferenceTest {
    private static final int FINE = 6000;

    /** The file grants 1e-4; found apart by at most 3e-7. */
    private static final double CLOSE = 1e-6;

    private static final JsonNode PROBLEMS = LapFiles.json("physics/time_optimal_problems.json");

    /** A stadium: lateral limit, constant drive and brake. The grip of the bend is more than drive and brake ask for. */
    @Test
    void stadiumCs1() {
        JsonNode in = at("analytic", "CS1").get("inputs");
        JsonNode expected = at("analytic", "CS1").get("expected");
        double radius = in.get("R").asDouble();
        Piece straight = PointCar.straight(in.get("L").asDouble());
        Piece bend = PointCar.turn(Math.PI * radius, radius);
        ResolvedCar car = PointCar.of(
                in.get("ay").asDouble() / ResolvedCar.GRAVITY,
                in.get("a").asDouble(),
                PointCar.ENDLESS,
                in.get("b").asDouble());
        PredictedLap lap = solve(List.of(straight, bend, straight, bend), car);
        assertThat(lap.lapS()).isCloseTo(number(expected, "T"), within(CLOSE * number(expected, "T")));
        assertThat(lap.topMps()).isCloseTo(number(expected, "vp"), within(0.003));
        assertThat(lap.slowestMps()).isCloseTo(number(expected, "vc"), within(0.003));
    }

    /**
     * Tracks with speed limits. A limit v is a bend of radius v²/a_y; on the exact closed lap the car keeps each limit below
     * that of the straights from end to end, so that what the circle of grip leaves for driving there is not asked for.
     */
    @ParameterizedTest
    @ValueSource(strings = {"SL1", "SL2"})
    void speedLimits(String id) {
        JsonNode problem = at("speed_limit_tracks", id);
        JsonNode expected = problem.get("expected");
        double sideways = 9;
        double free = StreamSupport.stream(problem.get("inputs").get("segments").spliterator(), false)
                .mapToDouble(segment -> segment.get(1).asDouble())
                .max()
                .orElseThrow();
        List<Piece> pieces = new ArrayList<>();
        for (JsonNode segment : problem.get("inputs").get("segments")) {
            double length = segment.get(0).asDouble();
            double most = segment.get(1).asDouble();
            pieces.add(most == free ? PointCar.straight(length) : PointCar.turn(length, most * most / sideways));
        }
        ResolvedCar car = PointCar.of(
                sideways / ResolvedCar.GRAVITY,
                problem.get("inputs").get("a").asDouble(),
                PointCar.ENDLESS,
                problem.get("inputs").get("b").asDouble());
        PredictedLap lap = solve(pieces, car);
        double lapS = number(expected, "closed_lap_T");
        assertThat(lap.lapS()).isCloseTo(lapS, within(CLOSE * lapS));
        double place = 0;
        for (int k = 0; k < pieces.size(); k++) {
            double from = place;
            place += pieces.get(k).along(0).lengthM();
            assertThat(peak(lap.trace(), from, place))
                    .as("peak of segment %d", k)
                    .isCloseTo(expected.get("closed_segment_peaks").get(k).asDouble(), within(0.003));
        }
    }

    /** Circle of grip, motor's line, brakes limited by grip alone. */
    @ParameterizedTest
    @ValueSource(strings = {"FL1", "FL2"})
    void frictionCircle(String id) {
        JsonNode problem = at("friction_circle_laps", id);
        JsonNode in = problem.get("inputs");
        JsonNode expected = problem.get("expected");
        List<Piece> pieces = new ArrayList<>();
        for (JsonNode segment : in.get("segments")) {
            double length = segment.get(0).asDouble();
            double radius = segment.get(1).asDouble();
            pieces.add(radius == 0 ? PointCar.straight(length) : PointCar.turn(length, radius));
        }
        assertThat(number(in, "g")).isEqualTo(ResolvedCar.GRAVITY);
        ResolvedCar car = PointCar.of(number(in, "mu"), number(in, "A0"), number(in, "vm"), PointCar.ENDLESS);
        PredictedLap lap = solve(pieces, car);
        double lapS = number(expected, "lap_T");
        assertThat(lap.lapS()).isCloseTo(lapS, within(CLOSE * lapS));
        double off = number(problem.get("tolerance"), "speed_abs");
        assertThat(lap.topMps()).isCloseTo(number(expected, "vmax"), within(off));
        assertThat(lap.slowestMps()).isCloseTo(number(expected, "vmin"), within(off));
    }

    /** Out of a tight bend that gives the speed v0 into a wider one, drive without limit. */
    @Test
    void circleExitFc1() {
        JsonNode in = at("analytic", "FC1").get("inputs");
        double v0 = number(in, "v0");
        double tight = v0 * v0 / (number(in, "mu") * ResolvedCar.GRAVITY);
        double turned = Math.PI * tight;
        ResolvedCar car = PointCar.of(number(in, "mu"), PointCar.ENDLESS, PointCar.ENDLESS, PointCar.ENDLESS);
        PredictedLap lap = solve(
                List.of(PointCar.turn(turned, tight), PointCar.turn(0.1, number(in, "R")), PointCar.straight(2)), car);
        double expected = number(at("analytic", "FC1").get("expected"), "v");
        assertThat(Math.sqrt(PointCar.squareAt(lap.trace(), turned + number(in, "s"))))
                .isCloseTo(expected, within(1e-3 * expected));
    }

    /** Time and way along the motor's line from the end of a bend to the published speed; the formulas start from rest. */
    @Test
    void motorLineMu1() {
        JsonNode in = at("analytic", "MU1").get("inputs");
        JsonNode expected = at("analytic", "MU1").get("expected");
        double drive = number(in, "a0");
        double top = number(in, "vm");
        double end = number(in, "v");
        assertThat(timeTo(end, drive, top)).isCloseTo(number(expected, "t"), within(1e-9));
        assertThat(wayTo(end, drive, top)).isCloseTo(number(expected, "x"), within(1e-7));
        Piece bend = PointCar.turn(Math.PI * 0.25, 0.25);
        PredictedLap lap = solve(List.of(PointCar.straight(4), bend), PointCar.of(1.2, drive, top, PointCar.ENDLESS));
        LapTrace trace = lap.trace();
        int edge = 0;
        double seconds = 0;
        while (trace.speedMps(edge + 1) < end) {
            double ds = trace.placeM(edge + 1) - trace.placeM(edge);
            seconds += 2 * ds / (trace.speedMps(edge) + trace.speedMps(edge + 1));
            edge++;
        }
        double from = trace.speedMps(0);
        double to = trace.speedMps(edge);
        assertThat(to).isCloseTo(end, within(0.01));
        assertThat(seconds).isCloseTo(timeTo(to, drive, top) - timeTo(from, drive, top), within(1e-4));
        assertThat(trace.placeM(edge)).isCloseTo(wayTo(to, drive, top) - wayTo(from, drive, top), within(2e-4));
    }

    private static double timeTo(double v, double drive, double top) {
        return -top / drive * Math.log(1 - v / top);
    }

    private static double wayTo(double v, double drive, double top) {
        return -top / drive * (v + top * Math.log(1 - v / top));
    }

    private static double peak(LapTrace trace, double from, double to) {
        double most = 0;
        for (int edge = 0; edge <= trace.cells(); edge++) {
            if (trace.placeM(edge) >= from - 1e-9 && trace.placeM(edge) <= to + 1e-9) {
                most = Math.max(most, trace.speedMps(edge));
            }
        }
        return most;
    }

    private static PredictedLap solve(List<Piece> pieces, ResolvedCar car) {
        LapOutcome outcome = new LapSolver(PointCar.lane(pieces, FINE)).solve(car);
        assertThat(outcome).isInstanceOf(PredictedLap.class);
        return (PredictedLap) outcome;
    }

    private static JsonNode at(String list, String id) {
        return StreamSupport.stream(PROBLEMS.get(list).spliterator(), false)
                .filter(node -> node.get("id").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static double number(JsonNode node, String name) {
        return node.get(name).asDouble();
    }
}
