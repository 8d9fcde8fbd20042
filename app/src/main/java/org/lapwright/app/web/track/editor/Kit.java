package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.kit.PieceBox;
import org.lapwright.core.track.kit.PieceKind;
import org.lapwright.core.units.Check;

/**
 * Pieces that are added by one tap: the kinds on the owner's list, and those that occur in the track already.
 *
 * @param straights lengths
 * @param rows turns of one radius and bank
 * @param own sizes that this track has and the list lacks
 */
public record Kit(List<Add> straights, List<Row> rows, List<Add> own) {
    private static final int MOST_OWN = 12;

    /** Copies the lists. */
    public Kit {
        straights = List.copyOf(straights);
        rows = List.copyOf(rows);
        own = List.copyOf(own);
    }

    /**
     * A button that adds a piece.
     *
     * @param wish its word
     * @param label what it does, in full
     * @param text what stands on it
     */
    public record Add(String wish, String label, String text) {}

    /**
     * Turns of one radius and bank.
     *
     * @param size radius, and bank if there is one
     * @param lefts left turns, the sharpest first
     * @param rights right turns, the sharpest last
     */
    public record Row(String size, List<Add> lefts, List<Add> rights) {
        /** Copies the lists. */
        public Row {
            lefts = List.copyOf(lefts);
            rights = List.copyOf(rights);
        }
    }

    static Kit of(TrackForm form, PieceBox box) {
        List<Add> straights = new ArrayList<>();
        Map<String, List<PieceKind>> turns = new LinkedHashMap<>();
        for (PieceKind kind : box.kinds()) {
            if (kind.piece() instanceof Piece.Turn turn) {
                turns.computeIfAbsent(size(turn), size -> new ArrayList<>()).add(kind);
            } else {
                straights.add(straight(Check.number(((Piece.Straight) kind.piece()).lengthMm()), kind.name()));
            }
        }
        List<Row> rows = new ArrayList<>();
        turns.forEach((size, kinds) -> rows.add(row(size, kinds)));
        Set<String> known = new LinkedHashSet<>();
        straights.forEach(add -> known.add(add.wish()));
        rows.stream()
                .flatMap(row -> Stream.concat(row.lefts().stream(), row.rights().stream()))
                .forEach(add -> known.add(add.wish()));
        return new Kit(straights, rows, own(form, known));
    }

    private static String size(Piece.Turn turn) {
        String bank = turn.bankDeg() == 0 ? "" : ", banked " + Check.number(turn.bankDeg()) + "°";
        return "R %s mm%s".formatted(Check.number(turn.radiusMm()), bank);
    }

    private static Row row(String size, List<PieceKind> kinds) {
        List<PieceKind> ordered = new ArrayList<>(kinds);
        ordered.sort(Comparator.comparingDouble(Kit::angle));
        List<Add> rights =
                ordered.stream().map(kind -> turn(PieceFields.RIGHT, kind)).toList();
        Collections.reverse(ordered);
        return new Row(
                size, ordered.stream().map(kind -> turn(PieceFields.LEFT, kind)).toList(), rights);
    }

    private static double angle(PieceKind kind) {
        return ((Piece.Turn) kind.piece()).angleDeg();
    }

    private static List<Add> own(TrackForm form, Set<String> known) {
        List<Add> own = new ArrayList<>();
        for (PieceFields piece : form.pieces()) {
            Add add = of(piece);
            boolean plain = (piece.isStraight() ? piece.length() : piece.radius() + piece.angle()).matches("[0-9.,]+");
            if (plain && own.size() < MOST_OWN && known.add(add.wish())) {
                own.add(add);
            }
        }
        return own;
    }

    private static Add of(PieceFields piece) {
        if (piece.isStraight()) {
            return straight(piece.length(), "");
        }
        String arrow = piece.kind().equals(PieceFields.LEFT) ? "↶" : "↷";
        return turn(
                piece.kind(),
                piece.radius(),
                piece.angle(),
                "",
                "%s R %s, %s°".formatted(arrow, piece.radius(), piece.angle()));
    }

    private static Add straight(String length, String name) {
        return new Add(
                "add-straight-" + length,
                "Add a straight of %s mm%s".formatted(length, name.isEmpty() ? "" : ", " + name),
                name.isEmpty() ? length + " mm" : name + " · " + length + " mm");
    }

    private static Add turn(String way, PieceKind kind) {
        Piece.Turn turn = (Piece.Turn) kind.piece();
        String angle = Check.number(turn.angleDeg());
        Add add = turn(
                way,
                Check.number(turn.radiusMm()),
                angle,
                turn.bankDeg() == 0 ? "" : Check.number(turn.bankDeg()),
                angle + "°");
        return kind.name().isEmpty() ? add : new Add(add.wish(), add.label() + ", " + kind.name(), add.text());
    }

    private static Add turn(String way, String radius, String angle, String bank, String text) {
        return new Add(
                "add-%s-%s-%s%s".formatted(way, radius, angle, bank.isEmpty() ? "" : "-" + bank.replace('-', '~')),
                "Add a %s turn, radius %s mm, %s°%s"
                        .formatted(way, radius, angle, bank.isEmpty() ? "" : ", banked " + bank + "°"),
                text);
    }
}
