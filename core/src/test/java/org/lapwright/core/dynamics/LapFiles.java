package org.lapwright.core.dynamics;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Drag;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Guide;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanPoint;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/** Reads the reference cars and tracks; the real reader lives outside the core. */
public final class LapFiles {
    private static final ObjectMapper JSON = new ObjectMapper();

    private LapFiles() {}

    /** A file under {@code reference/}. */
    public static JsonNode json(String name) {
        try (InputStream in = LapFiles.class.getResourceAsStream("/reference/" + name)) {
            return JSON.readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A car under {@code reference/lap/}. */
    public static SetUp car(String name) {
        return carAt("lap/" + name);
    }

    /** A car anywhere under {@code reference/}. */
    static SetUp carAt(String path) {
        JsonNode car = json(path + ".car.json");
        List<Ballast> ballast = new ArrayList<>();
        for (JsonNode piece : car.path("ballast")) {
            ballast.add(Ballast.of(piece.get("name").asText(), readings(piece)));
        }
        return new SetUp(
                car.get("name").asText(),
                Chassis.of(
                        readings(car.get("chassis")),
                        FrontWheels.of(car.get("chassis").get("front_wheels").asText())),
                WeighedCar.of(
                        readings(car.get("mass")),
                        Optional.ofNullable(car.get("mass").get("scales")).map(LapFiles::readings)),
                ballast,
                Guide.of(readings(car.get("guide"))),
                RearTyre.of(readings(car.get("rear_tyre"))),
                Gears.of(readings(car.get("gears"))),
                Motor.of(readings(car.get("motor"))),
                Optional.ofNullable(car.get("magnet")).map(magnet -> Magnet.of(readings(magnet))),
                Drag.of(readings(car.path("drag"))),
                Reading.exact(car.path("pickup_ohm").asDouble()));
    }

    /** A track under {@code reference/lap/}. */
    public static Track track(String name) {
        return trackAt("lap/" + name);
    }

    /** A track anywhere under {@code reference/}. */
    static Track trackAt(String path) {
        JsonNode track = json(path + ".track.json");
        List<Piece> pieces = new ArrayList<>();
        for (JsonNode piece : track.path("pieces")) {
            double rise = piece.path("rise_mm").asDouble();
            pieces.add(
                    piece.has("straight_mm")
                            ? new Piece.Straight(piece.get("straight_mm").asDouble(), rise)
                            : new Piece.Turn(
                                    piece.get("radius_mm").asDouble(),
                                    piece.get("angle_deg").asDouble(),
                                    piece.get("turn").asText().equals("left"),
                                    piece.path("bank_deg").asDouble(),
                                    rise));
        }
        List<Lane> lanes = new ArrayList<>();
        track.get("lanes")
                .forEach(lane -> lanes.add(new Lane(
                        lane.get("name").asText(), lane.get("offset_mm").asDouble())));
        JsonNode power = track.get("power");
        List<Double> taps = new ArrayList<>();
        power.get("taps_at").forEach(tap -> taps.add(tap.asDouble()));
        return new Track(
                track.get("name").asText(),
                new Surface(
                        track.get("surface").get("grip_factor").asDouble(),
                        track.get("surface").get("magnetic").asBoolean()),
                lanes,
                new Power(
                        power.get("supply_v").asDouble(),
                        power.get("source_ohm").asDouble(),
                        power.get("rail_ohm_per_m").asDouble(),
                        taps,
                        power.has("brake_ohm")
                                ? OptionalDouble.of(power.get("brake_ohm").asDouble())
                                : OptionalDouble.empty()),
                track.has("points_mm") ? new PointLayout(points(track)) : new PieceLayout(pieces));
    }

    private static List<PlanPoint> points(JsonNode track) {
        List<PlanPoint> points = new ArrayList<>();
        track.get("points_mm")
                .forEach(point -> points.add(
                        new PlanPoint(point.get(0).asDouble(), point.get(1).asDouble())));
        return points;
    }

    private static Readings readings(JsonNode object) {
        Readings numbers = Readings.none();
        for (var field : object.properties()) {
            if (field.getValue().isNumber()) {
                numbers = numbers.with(
                        field.getKey(), Reading.exact(field.getValue().asDouble()));
            }
        }
        return numbers;
    }
}
