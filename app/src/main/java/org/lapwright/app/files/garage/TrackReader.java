package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.lapwright.core.track.Gate;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Layout;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceExtras;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanPoint;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/** Reads a track file, all of it, and names everything that is wrong in it. */
final class TrackReader {
    private static final String POINTS = "points_mm";
    private static final String PIECES = "pieces";
    static final String LANE_ENDS = "lane_ends_mm";

    private TrackReader() {}

    static FileReading<TrackFile> read(String text) {
        Document.Read document = Document.read(text, TrackFile.FORMAT);
        if (document.problem().isPresent()) {
            return FileReading.refused(document.problem().get());
        }
        ObjectNode json = document.object().orElseThrow();
        Findings findings = new Findings();
        Optional<Track> track = track(new JsonSection("", json, findings));
        return new FileReading<>(
                track.map(read -> new TrackFile(read, json)),
                track.isPresent() ? List.of() : findings.problems(),
                findings.notes());
    }

    private static Optional<Track> track(JsonSection file) {
        file.text("format");
        String name = file.requiredText("name", "Shed loop");
        Optional<Surface> surface = surface(file.requiredChild("surface"));
        List<Lane> lanes = lanes(file);
        Optional<Power> power = power(file.requiredChild("power"));
        List<Gate> gates = file.has("gates") ? gates(file) : List.of();
        Optional<Layout> layout = layout(file);
        return file.build(
                () -> new Track(name, surface.orElseThrow(), lanes, power.orElseThrow(), layout.orElseThrow(), gates));
    }

    private static Optional<Surface> surface(JsonSection section) {
        double factor = section.number(Surface.GRIP_FACTOR).orElse(1);
        boolean magnetic = section.flag("magnetic").orElse(false);
        String conditions = section.text("conditions").orElse("");
        return section.build(() -> new Surface(factor, magnetic, conditions));
    }

    private static List<Lane> lanes(JsonSection file) {
        List<Lane> lanes = new ArrayList<>();
        for (JsonSection section : file.children("lanes")) {
            String name = section.requiredText("name", "red");
            double offset = section.required(Lane.OFFSET);
            // A colour that has no word here stays in the file and is not drawn.
            Optional<Lane.Colour> colour = section.text("colour").flatMap(Lane.Colour::of);
            section.build(() -> new Lane(name, offset, colour)).ifPresent(lanes::add);
        }
        return lanes;
    }

    private static Optional<Power> power(JsonSection section) {
        double supply = section.required(Power.SUPPLY);
        double source = section.required(Power.SOURCE);
        double rail = section.required(Power.RAIL);
        OptionalDouble brake = section.number(Power.BRAKE);
        List<Double> taps = numbers(section, "taps_at");
        return section.build(
                () -> new Power(supply, source, rail, section.has("taps_at") ? taps : List.of(0.0), brake));
    }

    private static List<Double> numbers(JsonSection section, String key) {
        List<Double> numbers = new ArrayList<>();
        List<JsonNode> entries = section.entries(key);
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i).isNumber()) {
                numbers.add(entries.get(i).doubleValue());
            } else {
                section.problem(section.pathOf(key) + "[" + i + "] is " + JsonSection.shown(entries.get(i))
                        + "; it must be a number");
            }
        }
        return numbers;
    }

    private static Optional<Layout> layout(JsonSection file) {
        if (file.has(PIECES) == file.has(POINTS)) {
            file.problem(
                    file.has(PIECES)
                            ? "the file has both pieces and points_mm; keep the one that is the track"
                            : "pieces is missing; give a list of pieces, or points_mm for a drawn line");
            return Optional.empty();
        }
        if (file.has(POINTS)) {
            List<PlanPoint> points = points(file);
            return file.build(() -> new PointLayout(points));
        }
        List<Piece> pieces = pieces(file);
        return file.build(() -> new PieceLayout(pieces));
    }

    private static List<Piece> pieces(JsonSection file) {
        List<Piece> pieces = new ArrayList<>();
        for (JsonSection section : file.children(PIECES)) {
            piece(section).ifPresent(pieces::add);
        }
        return pieces;
    }

    private static Optional<Piece> piece(JsonSection section) {
        boolean straight = section.has(Piece.STRAIGHT.name());
        if (straight == section.has(Piece.RADIUS.name())) {
            section.problem(section.pathOf(
                    straight
                            ? "straight_mm stands beside radius_mm; a piece is either straight or a turn"
                            : "straight_mm is missing, and so is radius_mm; a piece needs one of them"));
            return Optional.empty();
        }
        double rise = section.number(Piece.RISE).orElse(0);
        OptionalDouble grip = section.number(Surface.GRIP_FACTOR);
        Optional<Boolean> magnetic = section.flag("magnetic");
        List<Double> ends = numbers(section, LANE_ENDS);
        Supplier<PieceExtras> extras = () -> new PieceExtras(grip, magnetic, ends);
        return straight ? straight(section, rise, extras) : turn(section, rise, extras);
    }

    private static List<Gate> gates(JsonSection file) {
        List<Gate> gates = new ArrayList<>();
        for (JsonSection section : file.children("gates")) {
            String name = section.requiredText("name", "after the hairpin");
            double at = section.required(Gate.AT);
            section.build(() -> new Gate(name, at)).ifPresent(gates::add);
        }
        return gates;
    }

    private static Optional<Piece> straight(JsonSection section, double rise, Supplier<PieceExtras> extras) {
        double length = section.required(Piece.STRAIGHT);
        return section.build(() -> new Piece.Straight(length, rise, extras.get()));
    }

    private static Optional<Piece> turn(JsonSection section, double rise, Supplier<PieceExtras> extras) {
        double radius = section.required(Piece.RADIUS);
        double angle = section.required(Piece.ANGLE);
        double bank = section.number(Piece.BANK).orElse(0);
        String way = section.requiredText("turn", "left");
        if (!way.equals("left") && !way.equals("right")) {
            section.problem(section.pathOf("turn") + " is '" + way + "'; it must be left or right");
        }
        return section.build(() -> new Piece.Turn(radius, angle, way.equals("left"), bank, rise, extras.get()));
    }

    private static List<PlanPoint> points(JsonSection file) {
        List<PlanPoint> points = new ArrayList<>();
        List<JsonNode> entries = file.entries(POINTS);
        for (int i = 0; i < entries.size(); i++) {
            JsonNode entry = entries.get(i);
            String at = POINTS + "[" + i + "]";
            if (entry.size() != 2 || !entry.path(0).isNumber() || !entry.path(1).isNumber()) {
                file.problem(at + " is " + JsonSection.shown(entry) + "; it must be two numbers in brackets, [x, y]");
                continue;
            }
            try {
                points.add(
                        new PlanPoint(entry.get(0).doubleValue(), entry.get(1).doubleValue()));
            } catch (IllegalArgumentException outside) {
                file.problem(at + ": " + outside.getMessage());
            }
        }
        return points;
    }
}
