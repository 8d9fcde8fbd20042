package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.Track;

/**
 * How the tail follows, against Hipparchus' Dormand–Prince 8(5,3) integrator, the tractrix (M. W. Sayers, Vehicle offtracking
 * models, Transportation Research Record 1052, 1986), and published off-tracking (AASHTO low-speed formula); numbers in
 * {@code reference/physics/statics_and_tyre_examples.json}.
 */
class TrailedLaneReferenceTest {
    private static final JsonNode EXAMPLES = LapFiles.json("physics/statics_and_tyre_examples.json");

    /** Three laps from a tail straight behind, the third compared: hitch angle and its change at the middle of every cell. */
    @ParameterizedTest
    @CsvSource({"loop,0.098", "long,0.11", "hill,0.085", "loop,0.2"})
    void hitchAngleRoundALap(String name, double lengthM) {
        Track track = LapFiles.track(name);
        for (Lane lane : track.lanes()) {
            LaneCells cells = track.cells(lane);
            TrailedLane trail = new TrailedLane(cells);
            trail.follow(lengthM);
            double angle = 0;
            for (int lap = 0; lap < 3; lap++) {
                for (int i = 0; i < cells.count(); i++) {
                    double half = cells.lengthM(i) / 2;
                    double curve = cells.curvature(i);
                    double middle = HitchOde.after(angle, half, curve, lengthM);
                    angle = HitchOde.after(middle, half, curve, lengthM);
                    if (lap == 2) {
                        assertThat(trail.rows.get(TrailedLane.SIN, i))
                                .as("lane %s cell %d", lane.name(), i)
                                .isCloseTo(Math.sin(middle), within(1e-9));
                        double turn = curve - Math.sin(middle) / lengthM;
                        assertThat(trail.rows.get(TrailedLane.YAW_W, i) * lengthM)
                                .isCloseTo(Math.cos(middle) * turn, within(1e-8));
                    }
                }
            }
        }
    }

    /**
     * The classical tractrix, out of a circle on to a straight. On the circle the tail stands at the angle of the published curve
     * half a length on; from there the rear axle has to lie on the curve.
     */
    @Test
    void tractrixOnAStraight() {
        JsonNode example = at("TX1");
        double length = 0.1;
        JsonNode us = example.get("inputs").get("u");
        double begin = us.get(0).asDouble();
        double radius = length / example.get("expected").get("y").get(0).asDouble();
        double run = 40 * length;
        Piece turn = PointCar.turn(run / 4, radius);
        LaneCells lane = PointCar.lane(List.of(turn, turn, turn, turn, PointCar.straight(12 * length)), 9000);
        TrailedLane trail = new TrailedLane(lane);
        trail.follow(length);
        double place = 0;
        int held = 0;
        for (int i = 0; i < lane.count(); i++) {
            double on = (place + lane.lengthM(i) / 2 - run) / length + begin;
            place += lane.lengthM(i);
            for (int k = 1; k < us.size(); k++) {
                if (Math.abs(on - us.get(k).asDouble()) <= 0.51 * lane.lengthM(i) / length) {
                    held++;
                    double cos = trail.rows.get(TrailedLane.COS, i);
                    assertThat(trail.rows.get(TrailedLane.SIN, i))
                            .isCloseTo(example.get("expected").get("y").get(k).asDouble(), within(2e-3));
                    assertThat(on - cos)
                            .isCloseTo(example.get("expected").get("x").get(k).asDouble(), within(2e-3));
                }
            }
            if (on > begin && on < 10) {
                assertThat(trail.rows.get(TrailedLane.SIN, i)).isCloseTo(1 / Math.cosh(on), within(1e-4));
            }
        }
        assertThat(held).isGreaterThanOrEqualTo(2);
    }

    /** A circle entered from a straight: tan(ψ/2) = κ tanh(λs) / (2λ + tanh(λs)/L), 4λ² = 1/L² − κ². */
    @ParameterizedTest
    @CsvSource({"0.098,0.25", "0.098,0.4", "0.15,1.5"})
    void circleEnteredFromAStraight(double lengthM, double radius) {
        double run = 60 * lengthM;
        LaneCells lane = PointCar.lane(List.of(PointCar.straight(run), PointCar.turn(4 * radius, radius)), 4000);
        TrailedLane trail = new TrailedLane(lane);
        trail.follow(lengthM);
        double root = Math.sqrt(1 / (lengthM * lengthM) - 1 / (radius * radius)) / 2;
        double place = 0;
        for (int i = 0; i < lane.count(); i++) {
            double on = place + lane.lengthM(i) / 2 - run;
            place += lane.lengthM(i);
            if (on > 0) {
                double tanh = Math.tanh(root * on);
                double half = tanh / radius / (2 * root + tanh / lengthM);
                assertThat(trail.rows.get(TrailedLane.SIN, i)).isCloseTo(Math.sin(2 * Math.atan(half)), within(1e-11));
                assertThat(Math.sin(HitchOde.after(0, on, 1 / radius, lengthM)))
                        .isCloseTo(Math.sin(2 * Math.atan(half)), within(1e-10));
            }
        }
    }

    /** Published off-tracking on a steady circle, R − √(R² − L²), at one hundredth of the size and in metres for feet. */
    @Test
    void offTracking() {
        JsonNode example = at("TX2");
        double radius = example.get("inputs").get("R_ft").asDouble() / 100;
        double length = example.get("inputs").get("L_ft").get(0).asDouble() / 100;
        TrailedLane trail = new TrailedLane(PointCar.lane(List.of(PointCar.turn(2 * Math.PI * radius, radius)), 600));
        trail.follow(length);
        double inside = radius * (1 - trail.rows.get(TrailedLane.COS, 300));
        assertThat(100 * inside).isCloseTo(example.get("expected").get("OT_ft").asDouble(), within(1e-5));
    }

    private static JsonNode at(String id) {
        return StreamSupport.stream(EXAMPLES.spliterator(), false)
                .filter(node -> node.get("id").asText().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
