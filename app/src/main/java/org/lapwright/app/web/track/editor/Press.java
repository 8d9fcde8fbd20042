package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Layout;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.track.Track;
import org.lapwright.core.track.closing.TapeScale;
import org.lapwright.core.units.NumberKey;

/** What the buttons of the editor do. A press that makes no sense changes nothing. */
public final class Press {
    private static final NumberKey COUNT = new NumberKey("", "lanes", 1, TrackForm.MOST_LANES);
    private static final NumberKey SPACING = new NumberKey("", "spacing_mm", 10, 500);

    /** A size that stands in the address of a button, as typed; a tilde is a minus. */
    private static final Pattern SIZE = Pattern.compile("~?[0-9.,]{1,30}");

    private final Editor was;
    private final List<PieceFields> pieces;
    private final List<LaneFields> lanes;

    private Press(Editor was) {
        this.was = was;
        this.pieces = new ArrayList<>(was.form().pieces());
        this.lanes = new ArrayList<>(was.form().lanes());
    }

    /** The editor after a press, named as {@code drop-3}. */
    public static Editor of(Editor editor, String wish) {
        String[] words = wish.split("-", -1);
        Press press = new Press(editor);
        int number = words.length > 1 && words[1].matches("\\d{1,4}") ? Integer.parseInt(words[1]) : 0;
        return switch (words[0]) {
            case "add" -> press.add(words);
            case "lane" -> press.lane(words);
            case "gate" -> press.gate(words);
            case "line" -> press.line(words);
            case "set" -> press.set(wish);
            case "scale" -> press.scale();
            case "undo" -> editor.undone();
            case "redo" -> editor.redone();
            case "after" -> editor.at(number);
            case "mirror" -> words[words.length - 1].equals("all") ? press.mirrorAll() : press.onOne(words[0], number);
            default -> press.onOne(words[0], number);
        };
    }

    private Editor onOne(String word, int number) {
        if (number < 1 || number > pieces.size()) {
            return was;
        }
        int at = number - 1;
        return switch (word) {
            case "drop" -> {
                pieces.remove(at);
                yield done(number <= was.place() ? -1 : 0, "Piece " + number + " removed");
            }
            case "copy" -> copy(at);
            case "up" -> swap(at - 1, "Piece " + number + " moved up");
            case "down" -> swap(at, "Piece " + number + " moved down");
            case "cross" -> cross(at);
            case "start" -> start(at);
            case "mirror" -> change(at, piece -> piece.mirrored(), "Piece " + number + " mirrored");
            default -> was;
        };
    }

    /** The lanes change places on this piece: the left one becomes the right one. */
    private Editor cross(int at) {
        List<Double> before = offsetsBefore(at);
        if (before.isEmpty()) {
            return was.saying("The lanes need their offsets before they can swap.");
        }
        List<Double> after = new ArrayList<>(before);
        Collections.reverse(after);
        PieceFields piece = pieces.get(at);
        pieces.set(at, piece.with(piece.extras().withEnds(after)));
        return done(0, "Lanes swap on piece " + (at + 1));
    }

    /** Where the lanes lie before a piece, mm; empty when that cannot be understood. */
    private List<Double> offsetsBefore(int at) {
        Typed quietly = new Typed();
        List<Double> offsets = new ArrayList<>();
        for (int i = 0; i < lanes.size(); i++) {
            lanes.get(i).read(i + 1, quietly).ifPresent(lane -> offsets.add(lane.offsetMm()));
        }
        List<Double> now = offsets;
        for (int i = 0; i < at; i++) {
            List<Double> ends = pieces.get(i)
                    .extras()
                    .read(i + 1, quietly)
                    .map(extras -> extras.laneEndsMm())
                    .orElse(List.of());
            now = ends.isEmpty() ? now : ends;
        }
        return quietly.faults().isEmpty() && now.size() == lanes.size() ? now : List.of();
    }

    /** The timing line moves to the start of this piece; gates and feeds stay where they are on the table. */
    private Editor start(int at) {
        Optional<Track> track = was.form().read().track().filter(read -> read.layout() instanceof PieceLayout);
        if (at == 0 || track.isEmpty()) {
            return track.isEmpty() ? was.saying("The pieces must make a track before its start can move.") : was;
        }
        Track moved = StartMove.moved(track.get(), at);
        TrackForm form = TrackForm.of(moved, was.form().name());
        return was.did(
                new TrackForm(
                        was.form().name(),
                        was.form().origin(),
                        was.form().replace(),
                        form.lanes(),
                        was.form().surface(),
                        form.power(),
                        form.pieces(),
                        form.line(),
                        form.gates()),
                was.place(),
                "The lap starts at what was piece " + (at + 1));
    }

    private Editor line(String[] words) {
        LinePoints line = was.form().line();
        String word = words.length > 1 ? words[1] : "";
        if (!line.isDrawn()) {
            return was;
        }
        return switch (word) {
            case "reverse" -> was.did(was.form().withLine(line.reversed()), was.place(), "Driven the other way");
            case "point" -> was.did(was.form().withLine(line.begunLater(1)), was.place(), "Begun one point later");
            case "tenth" ->
                was.did(
                        was.form().withLine(line.begunLater(Math.max(1, line.count() / 10))),
                        was.place(),
                        "Begun a tenth of the points later");
            default -> was;
        };
    }

    private Editor gate(String[] words) {
        List<GateFields> gates = new ArrayList<>(was.form().gates());
        String word = words.length > 1 ? words[1] : "";
        if (word.equals("add") && gates.size() < TrackForm.MOST_GATES) {
            gates.add(new GateFields("section " + (gates.size() + 1), gates.isEmpty() ? "50" : ""));
            return was.did(was.form().withGates(gates), was.place(), "Gate added; say where it stands");
        }
        if (word.equals("drop") && words.length > 2 && words[2].matches("\\d{1,2}")) {
            int number = Integer.parseInt(words[2]);
            if (number >= 1 && number <= gates.size()) {
                GateFields gone = gates.remove(number - 1);
                return was.did(was.form().withGates(gates), was.place(), "Gate '" + gone.name() + "' removed");
            }
        }
        return was;
    }

    private Editor done(int placeBy, String what) {
        return was.did(was.form().withPieces(pieces), was.place() + placeBy, what);
    }

    private Editor change(int at, UnaryOperator<PieceFields> how, String what) {
        pieces.set(at, how.apply(pieces.get(at)));
        return done(0, what);
    }

    private Editor swap(int at, String what) {
        if (at < 0 || at + 1 >= pieces.size()) {
            return was;
        }
        Collections.swap(pieces, at, at + 1);
        return done(0, what);
    }

    private Editor copy(int at) {
        if (!was.form().hasRoom()) {
            return full();
        }
        pieces.add(at + 1, pieces.get(at));
        return done(at + 1 <= was.place() ? 1 : 0, "Piece " + (at + 1) + " doubled");
    }

    private Editor mirrorAll() {
        pieces.replaceAll(piece -> piece.mirrored());
        return done(0, "All turns mirrored");
    }

    private Editor full() {
        return was.saying("There are %d pieces; more want a file.".formatted(TrackForm.MOST_PIECES));
    }

    private Editor add(String[] words) {
        if (!was.form().hasRoom()) {
            return full();
        }
        PieceFields piece = fresh(words);
        pieces.add(was.place(), piece);
        return done(1, "Piece %d added, a %s".formatted(was.place() + 1, piece.inWords()));
    }

    private static PieceFields fresh(String[] words) {
        String kind = words.length > 1 ? words[1] : "";
        boolean sized = true;
        for (int i = 2; i < words.length; i++) {
            sized &= SIZE.matcher(words[i]).matches();
        }
        PieceFields usual = PieceFields.fresh(kind);
        if (usual.isStraight()) {
            return sized && words.length == 3 ? usual.withLength(words[2]) : usual;
        }
        String bank = words.length == 5 ? words[4].replace('~', '-') : "";
        return sized && (words.length == 4 || words.length == 5)
                ? PieceFields.turn(kind, words[2], words[3], bank)
                : usual;
    }

    private Editor lane(String[] words) {
        String word = words.length > 1 ? words[1] : "";
        if (word.equals("add") && lanes.size() < TrackForm.MOST_LANES) {
            lanes.add(new LaneFields(freeName(), "", ""));
            return laid("Lane added; give it an offset");
        }
        if (word.equals("drop") && words.length > 2 && words[2].matches("\\d{1,2}")) {
            int number = Integer.parseInt(words[2]);
            if (number >= 1 && number <= lanes.size()) {
                LaneFields gone = lanes.remove(number - 1);
                return laid("Lane '" + gone.name() + "' removed");
            }
        }
        return word.equals("even") ? even() : was;
    }

    private Editor laid(String what) {
        return was.did(was.form().withLanes(lanes), was.place(), what);
    }

    private String freeName() {
        int number = lanes.size() + 1;
        while (named(number)) {
            number++;
        }
        return String.valueOf(number);
    }

    private boolean named(int number) {
        return lanes.stream().anyMatch(lane -> lane.name().strip().equals(String.valueOf(number)));
    }

    /** Names that are there stay. */
    private Editor even() {
        Typed typed = new Typed();
        double count = typed.number(was.ruler().lanes(), COUNT, "Lanes to lay out");
        double apart = typed.number(was.ruler().spacing(), SPACING, "Lane to lane");
        if (typed.problems().isEmpty() && count != Math.rint(count)) {
            typed.problem("Lanes to lay out is %s; it must be a whole number."
                    .formatted(was.ruler().lanes()));
        }
        if (!typed.problems().isEmpty()) {
            return was.saying(String.join(" ", typed.problems()));
        }
        List<LaneFields> before = List.copyOf(lanes);
        lanes.clear();
        for (int i = 0; i < count; i++) {
            String name = i < before.size() ? before.get(i).name() : freeName();
            String colour = i < before.size() ? before.get(i).colour() : "";
            lanes.add(new LaneFields(name, Written.rounded(apart * ((count - 1) / 2 - i)), colour));
        }
        return laid("%d lanes laid out %s mm apart".formatted((int) count, Written.rounded(apart)));
    }

    /** Puts numbers in that were worked out, as {@code set-length:3:1512-angle:4:180}; pieces count from 1. */
    private Editor set(String wish) {
        for (String part : wish.substring(wish.indexOf('-') + 1).split("-")) {
            String[] words = part.split(":");
            if (words.length != 3
                    || !words[1].matches("\\d{1,4}")
                    || !SIZE.matcher(words[2]).matches()) {
                return was;
            }
            int at = Integer.parseInt(words[1]) - 1;
            if (at < 0 || at >= pieces.size()) {
                return was;
            }
            PieceFields piece = pieces.get(at);
            pieces.set(
                    at,
                    switch (words[0]) {
                        case "length" -> piece.withLength(words[2]);
                        case "angle" -> piece.withAngle(words[2]);
                        default -> piece.withRadius(words[2]);
                    });
        }
        return done(0, "Track closed");
    }

    private Editor scale() {
        TapeOffer offer = TapeOffer.of(was);
        OptionalDouble factor = offer.factor();
        if (factor.isEmpty()) {
            return was.saying(offer.sentence());
        }
        if (was.form().line().isDrawn()) {
            Layout scaled = TapeScale.scaled(was.form().line().layout(), factor.getAsDouble());
            return was.did(
                    was.form().withLine(LinePoints.of((PointLayout) scaled)),
                    was.place(),
                    "Line scaled by %s".formatted(offer.shown()));
        }
        for (int i = 0; i < pieces.size(); i++) {
            PieceFields piece = pieces.get(i);
            pieces.set(
                    i,
                    piece.isStraight()
                            ? piece.withLength(times(piece.length(), factor.getAsDouble()))
                            : piece.withRadius(times(piece.radius(), factor.getAsDouble())));
        }
        Lane lane = offer.lane().orElseThrow();
        return done(0, "Straights and radii scaled by %s to lane %s".formatted(offer.shown(), lane.name()));
    }

    private static String times(String typed, double factor) {
        return Written.rounded(Double.parseDouble(typed.strip().replace(',', '.')) * factor);
    }
}
