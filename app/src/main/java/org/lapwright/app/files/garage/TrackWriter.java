package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.track.Gate;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceExtras;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanPoint;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/** Brings the JSON of a track file up to a track, touching only what is different. */
final class TrackWriter {
    private static final String MAGNETIC = "magnetic";
    private static final String GATES = "gates";

    private TrackWriter() {}

    static ObjectNode updated(ObjectNode json, Track track) {
        JsonPart file = new JsonPart(json);
        file.text("format", TrackFile.FORMAT);
        file.text("name", track.name());
        JsonPart surface = file.child("surface");
        surface.number(Surface.GRIP_FACTOR.name(), track.surface().gripFactor());
        surface.flag(MAGNETIC, track.surface().magnetic());
        if (track.surface().conditions().isEmpty()) {
            surface.drop("conditions");
        } else {
            surface.text("conditions", track.surface().conditions());
        }
        lanes(json, track.lanes());
        gates(json, track.gates());
        power(file.child("power"), json.withObjectProperty("power"), track.power());
        if (track.layout() instanceof PieceLayout layout) {
            pieces(json, layout.pieces());
            file.drop("points_mm");
        } else if (track.layout() instanceof PointLayout layout) {
            points(json, layout.points());
            file.drop("pieces");
        }
        return json;
    }

    /** Each lane goes on in the entry that has its name, so that what else the entry says stays with it. */
    private static void lanes(ObjectNode json, List<Lane> lanes) {
        ArrayNode before = json.withArrayProperty("lanes").deepCopy();
        ArrayNode after = json.putArray("lanes");
        for (Lane lane : lanes) {
            ObjectNode entry = Entries.takeOut(before, lane.name(), "").orElseGet(json::objectNode);
            JsonPart part = new JsonPart(entry);
            part.text("name", lane.name());
            part.number(Lane.OFFSET.name(), lane.offsetMm());
            if (lane.painted().isPresent()) {
                part.text("colour", lane.painted().get().word());
            } else if (Lane.Colour.of(entry.path("colour").asText()).isPresent()) {
                part.drop("colour");
            }
            after.add(entry);
        }
    }

    private static void power(JsonPart part, ObjectNode json, Power power) {
        part.number(Power.SUPPLY.name(), power.supplyV());
        part.number(Power.SOURCE.name(), power.sourceOhm());
        part.number(Power.RAIL.name(), power.railOhmPerM());
        if (!written(json.path("taps_at")).equals(Optional.of(power.tapsAt()))) {
            ArrayNode taps = json.putArray("taps_at");
            power.tapsAt().forEach(tap -> taps.add(JsonPart.decimal(tap)));
        }
        if (power.brakeOhm().isPresent()) {
            part.number(Power.BRAKE.name(), power.brakeOhm().getAsDouble());
        } else {
            part.drop(Power.BRAKE.name());
        }
    }

    private static Optional<List<Double>> written(JsonNode taps) {
        if (!taps.isArray()) {
            return Optional.empty();
        }
        List<Double> places = new java.util.ArrayList<>();
        taps.forEach(tap -> places.add(tap.doubleValue()));
        return Optional.of(places);
    }

    /**
     * A piece that is already written in its place stays; one that moved is looked for further on, so that taking a piece
     * out leaves the others as they were.
     */
    private static void pieces(ObjectNode json, List<Piece> pieces) {
        ArrayNode before = json.withArrayProperty("pieces").deepCopy();
        ArrayNode after = json.putArray("pieces");
        for (Piece piece : pieces) {
            after.add(Entries.takeOutFirst(before, entry -> says(entry, piece)).orElseGet(() -> written(json, piece)));
        }
    }

    private static boolean says(JsonNode entry, Piece piece) {
        if (entry.path(Piece.RISE.name()).asDouble(0) != piece.riseMm() || !says(entry, piece.extras())) {
            return false;
        }
        if (piece instanceof Piece.Straight straight) {
            return entry.path(Piece.STRAIGHT.name()).asDouble(0) == straight.lengthMm();
        }
        Piece.Turn turn = (Piece.Turn) piece;
        return entry.path(Piece.RADIUS.name()).asDouble(0) == turn.radiusMm()
                && entry.path(Piece.ANGLE.name()).asDouble(0) == turn.angleDeg()
                && entry.path(Piece.BANK.name()).asDouble(0) == turn.bankDeg()
                && entry.path("turn").asText().equals(way(turn));
    }

    private static boolean says(JsonNode entry, PieceExtras extras) {
        JsonNode grip = entry.path(Surface.GRIP_FACTOR.name());
        JsonNode magnetic = entry.path(MAGNETIC);
        return grip.isNumber() == extras.gripFactor().isPresent()
                && grip.asDouble(0) == extras.gripFactor().orElse(0)
                && magnetic.isBoolean() == extras.magnetic().isPresent()
                && magnetic.asBoolean(false) == extras.magnetic().orElse(false)
                && written(entry.path(TrackReader.LANE_ENDS)).orElse(List.of()).equals(extras.laneEndsMm());
    }

    private static void write(JsonPart part, ObjectNode entry, PieceExtras extras) {
        extras.gripFactor().ifPresent(factor -> part.number(Surface.GRIP_FACTOR.name(), factor));
        extras.magnetic().ifPresent(magnetic -> part.flag(MAGNETIC, magnetic));
        if (!extras.laneEndsMm().isEmpty()) {
            ArrayNode ends = entry.putArray(TrackReader.LANE_ENDS);
            extras.laneEndsMm().forEach(end -> ends.add(JsonPart.decimal(end)));
        }
    }

    /** Each gate goes on in the entry that has its name. */
    private static void gates(ObjectNode json, List<Gate> gates) {
        if (gates.isEmpty()) {
            json.remove(GATES);
            return;
        }
        ArrayNode before = json.withArrayProperty(GATES).deepCopy();
        ArrayNode after = json.putArray(GATES);
        for (Gate gate : gates) {
            ObjectNode entry = Entries.takeOut(before, gate.name(), "").orElseGet(json::objectNode);
            JsonPart part = new JsonPart(entry);
            part.text("name", gate.name());
            part.number(Gate.AT.name(), gate.at());
            after.add(entry);
        }
    }

    private static ObjectNode written(ObjectNode json, Piece piece) {
        ObjectNode entry = json.objectNode();
        JsonPart part = new JsonPart(entry);
        if (piece instanceof Piece.Straight straight) {
            part.number(Piece.STRAIGHT.name(), straight.lengthMm());
        } else {
            Piece.Turn turn = (Piece.Turn) piece;
            part.number(Piece.RADIUS.name(), turn.radiusMm());
            part.number(Piece.ANGLE.name(), turn.angleDeg());
            part.text("turn", way(turn));
            if (turn.bankDeg() != 0) {
                part.number(Piece.BANK.name(), turn.bankDeg());
            }
        }
        if (piece.riseMm() != 0) {
            part.number(Piece.RISE.name(), piece.riseMm());
        }
        write(part, entry, piece.extras());
        return entry;
    }

    private static String way(Piece.Turn turn) {
        return turn.left() ? "left" : "right";
    }

    private static void points(ObjectNode json, List<PlanPoint> points) {
        ArrayNode before = json.withArrayProperty("points_mm").deepCopy();
        ArrayNode after = json.putArray("points_mm");
        for (int i = 0; i < points.size(); i++) {
            PlanPoint point = points.get(i);
            JsonNode there = before.path(i);
            boolean same =
                    there.path(0).asDouble() == point.xMm() && there.path(1).asDouble() == point.yMm();
            after.add(
                    same && there.isArray()
                            ? there
                            : json.arrayNode()
                                    .add(JsonPart.decimal(point.xMm()))
                                    .add(JsonPart.decimal(point.yMm())));
        }
    }
}
