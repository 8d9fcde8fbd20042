package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Gate;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/**
 * A track as typed, piece by piece, before it is believed.
 *
 * @param name what it is called
 * @param origin name of the kept track it was opened from; empty for a new one
 * @param replace whether it may take the place of another track of that name
 * @param lanes from the left one, as a rule
 * @param surface what the tyres run on
 * @param power what feeds the lanes
 * @param pieces from the timing line on
 * @param line the points of a drawn line, in place of pieces
 * @param gates timing gates beside the timing line
 */
public record TrackForm(
        String name,
        String origin,
        boolean replace,
        List<LaneFields> lanes,
        SurfaceFields surface,
        PowerFields power,
        List<PieceFields> pieces,
        LinePoints line,
        List<GateFields> gates) {
    /** More pieces than this want a file. */
    public static final int MOST_PIECES = 200;

    /** As many lanes as a track may have. */
    public static final int MOST_LANES = 16;

    /** As many gates beside the timing line as a track may have. */
    public static final int MOST_GATES = 12;

    private static final Pattern PIECE = Pattern.compile("pieces\\[(\\d+)]");

    /** Copies the lists. */
    public TrackForm {
        lanes = List.copyOf(lanes);
        pieces = List.copyOf(pieces);
        gates = List.copyOf(gates);
    }

    /** An oval to begin with. The resistances are usual ones (common practice, no source), not measured. */
    public static TrackForm oval() {
        return new TrackForm(
                "",
                "",
                false,
                List.of(new LaneFields("1", "50", ""), new LaneFields("2", "-50", "")),
                new SurfaceFields("1", false, ""),
                new PowerFields("12", "0.5", "0.1", "0.2", "0"),
                List.of(
                        PieceFields.straight("1500"),
                        PieceFields.turn(PieceFields.LEFT, "400", "180", ""),
                        PieceFields.straight("1500"),
                        PieceFields.turn(PieceFields.LEFT, "400", "180", "")),
                LinePoints.NONE,
                List.of());
    }

    /**
     * A kept track, every digit of it.
     *
     * @param track what is in the file
     * @param name what it is to be called
     */
    public static TrackForm of(Track track, String name) {
        List<Piece> laid = track.layout() instanceof PieceLayout layout ? layout.pieces() : List.of();
        return new TrackForm(
                name,
                track.name(),
                false,
                track.lanes().stream().map(lane -> LaneFields.of(lane)).toList(),
                SurfaceFields.of(track.surface()),
                PowerFields.of(track.power()),
                laid.stream().map(piece -> PieceFields.of(piece)).toList(),
                track.layout() instanceof PointLayout layout ? LinePoints.of(layout) : LinePoints.NONE,
                track.gates().stream().map(gate -> GateFields.of(gate)).toList());
    }

    /** What was typed. */
    public static TrackForm from(Fields fields) {
        List<LaneFields> lanes = new ArrayList<>();
        for (int i = 1; i <= MOST_LANES && fields.has("lane-name-" + i); i++) {
            lanes.add(LaneFields.from(fields, i));
        }
        List<PieceFields> pieces = new ArrayList<>();
        for (int i = 1; i <= MOST_PIECES && fields.has("kind-" + i); i++) {
            pieces.add(PieceFields.from(fields, i));
        }
        List<GateFields> gates = new ArrayList<>();
        for (int i = 1; i <= MOST_GATES && fields.has("gate-at-" + i); i++) {
            gates.add(GateFields.from(fields, i));
        }
        return new TrackForm(
                fields.text("name"),
                fields.text("origin"),
                fields.text("replace").equals("yes"),
                lanes,
                SurfaceFields.from(fields),
                PowerFields.from(fields),
                pieces,
                LinePoints.from(fields),
                gates);
    }

    /** The same as fields of a form. */
    Map<String, String> fields() {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("name", name);
        fields.put("origin", origin);
        fields.put("replace", replace ? "yes" : "");
        for (int i = 0; i < lanes.size(); i++) {
            lanes.get(i).into(fields, i + 1);
        }
        surface.into(fields);
        power.into(fields);
        for (int i = 0; i < pieces.size(); i++) {
            pieces.get(i).into(fields, i + 1);
        }
        line.into(fields);
        for (int i = 0; i < gates.size(); i++) {
            gates.get(i).into(fields, i + 1);
        }
        return fields;
    }

    /** Whether one more piece fits. */
    public boolean hasRoom() {
        return pieces.size() < MOST_PIECES;
    }

    TrackForm withPieces(List<PieceFields> others) {
        return new TrackForm(name, origin, replace, lanes, surface, power, others, line, gates);
    }

    TrackForm withLine(LinePoints other) {
        return new TrackForm(name, origin, replace, lanes, surface, power, pieces, other, gates);
    }

    TrackForm withGates(List<GateFields> others) {
        return new TrackForm(name, origin, replace, lanes, surface, power, pieces, line, others);
    }

    TrackForm withLanes(List<LaneFields> others) {
        return new TrackForm(name, origin, replace, others, surface, power, pieces, line, gates);
    }

    /** What was understood. */
    public Reading read() {
        Typed typed = new Typed();
        List<Piece> layout = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            pieces.get(i).read(i + 1, typed).ifPresent(layout::add);
        }
        if (pieces.isEmpty() && !line.isDrawn()) {
            typed.at("").problem("There are no pieces yet; add the first one.");
        }
        List<Lane> slots = new ArrayList<>();
        for (int i = 0; i < lanes.size(); i++) {
            lanes.get(i).read(i + 1, typed).ifPresent(slots::add);
        }
        if (lanes.isEmpty()) {
            typed.at("").problem("There is no lane; add one.");
        }
        List<Gate> timed = new ArrayList<>();
        for (int i = 0; i < gates.size(); i++) {
            gates.get(i).read(i + 1, typed).ifPresent(timed::add);
        }
        Optional<Surface> ground = surface.read(typed);
        Optional<Power> feed = power.read(typed);
        Optional<Track> track = typed.problems().isEmpty()
                ? built(
                        typed,
                        called -> new Track(
                                called,
                                ground.orElseThrow(),
                                slots,
                                feed.orElseThrow(),
                                line.isDrawn() ? line.layout() : new PieceLayout(layout),
                                timed))
                : Optional.empty();
        return new Reading(track, typed.faults());
    }

    /** What only shows when all is put together: the message counts pieces from 0 as files do, the form from 1. */
    private Optional<Track> built(Typed typed, Function<String, Track> maker) {
        String called = name.isBlank() ? "Track without a name" : name;
        try {
            return Optional.of(maker.apply(called));
        } catch (IllegalArgumentException unfit) {
            String said = String.valueOf(unfit.getMessage()).replace("lane_ends_mm", "“lanes at its end”");
            Optional<Integer> piece =
                    PIECE.matcher(said).results().findFirst().map(found -> Integer.parseInt(found.group(1)) + 1);
            typed.at(piece.map(number -> "radius-" + number).orElse(""))
                    .problem(PIECE.matcher(said).replaceAll(TrackForm::fromOne) + ".");
            return Optional.empty();
        }
    }

    private static String fromOne(MatchResult found) {
        return "piece " + (Integer.parseInt(found.group(1)) + 1);
    }

    /**
     * What was understood of the form.
     *
     * @param track the track; empty when there are faults
     * @param faults what could not be understood, with its field
     */
    public record Reading(Optional<Track> track, List<Typed.Fault> faults) {
        /** Copies the list. */
        public Reading {
            faults = List.copyOf(faults);
        }
    }
}
