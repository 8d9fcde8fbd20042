package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Pieces that are added by one tap: round sizes such as home tracks have (common practice, no source), and those that occur
 * in the track already.
 *
 * @param straights lengths
 * @param rows turns of one radius
 * @param own sizes that this track has and the others lack
 */
public record Kit(List<Add> straights, List<Row> rows, List<Add> own) {
    private static final List<String> LENGTHS = List.of("350", "175");
    private static final List<String> RADII = List.of("250", "350", "450");
    private static final List<String> ANGLES = List.of("90", "60", "45");
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
     * Turns of one radius.
     *
     * @param radius mm
     * @param adds the sharpest left turn first, the sharpest right turn last
     */
    public record Row(String radius, List<Add> adds) {
        /** Copies the list. */
        public Row {
            adds = List.copyOf(adds);
        }
    }

    static Kit of(TrackForm form) {
        List<Add> straights = LENGTHS.stream().map(length -> straight(length)).toList();
        List<Row> rows = new ArrayList<>();
        Set<String> known =
                new LinkedHashSet<>(straights.stream().map(add -> add.wish()).toList());
        for (String radius : RADII) {
            List<Add> adds = new ArrayList<>();
            ANGLES.forEach(angle -> adds.add(turn(PieceFields.LEFT, radius, angle, angle + "°")));
            for (int i = ANGLES.size() - 1; i >= 0; i--) {
                adds.add(turn(PieceFields.RIGHT, radius, ANGLES.get(i), ANGLES.get(i) + "°"));
            }
            adds.forEach(add -> known.add(add.wish()));
            rows.add(new Row(radius, adds));
        }
        return new Kit(straights, rows, own(form, known));
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
            return straight(piece.length());
        }
        String arrow = piece.kind().equals(PieceFields.LEFT) ? "↶" : "↷";
        return turn(
                piece.kind(),
                piece.radius(),
                piece.angle(),
                "%s R %s, %s°".formatted(arrow, piece.radius(), piece.angle()));
    }

    private static Add straight(String length) {
        return new Add("add-straight-" + length, "Add a straight of %s mm".formatted(length), length + " mm");
    }

    private static Add turn(String kind, String radius, String angle, String text) {
        return new Add(
                "add-%s-%s-%s".formatted(kind, radius, angle),
                "Add a %s turn, radius %s mm, %s°".formatted(kind, radius, angle),
                text);
    }
}
