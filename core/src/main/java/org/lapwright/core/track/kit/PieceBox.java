package org.lapwright.core.track.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.track.Piece;

/**
 * The owner's kinds of pieces, in the owner's order.
 *
 * @param kinds each size once, at most {@value #MOST}
 */
public record PieceBox(List<PieceKind> kinds) {
    /** Most kinds. */
    public static final int MOST = 60;

    /** Round sizes such as home tracks have, to begin with (common practice, no source). */
    public static final PieceBox USUAL = new PieceBox(List.of(
            PieceKind.straight(350),
            PieceKind.straight(175),
            PieceKind.turn(250, 90),
            PieceKind.turn(250, 60),
            PieceKind.turn(250, 45),
            PieceKind.turn(350, 90),
            PieceKind.turn(350, 60),
            PieceKind.turn(350, 45),
            PieceKind.turn(450, 90),
            PieceKind.turn(450, 60),
            PieceKind.turn(450, 45)));

    /** Checks that no size is there twice. */
    public PieceBox {
        kinds = List.copyOf(kinds);
        if (kinds.size() > MOST) {
            throw new IllegalArgumentException(
                    "there are %d kinds of pieces; at most %d fit".formatted(kinds.size(), MOST));
        }
        for (int i = 0; i < kinds.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (kinds.get(i).piece().equals(kinds.get(j).piece())) {
                    throw new IllegalArgumentException("%s is there twice, as number %d and number %d"
                            .formatted(kinds.get(i).inWords(), j + 1, i + 1));
                }
            }
        }
    }

    /** The kind of a piece, if it is one of these. */
    public Optional<PieceKind> kindOf(Piece piece) {
        return kinds.stream().filter(kind -> kind.holds(piece)).findFirst();
    }

    /**
     * What a layout takes more of than the owner has.
     *
     * @param kind of piece, counted by the owner
     * @param needed how many the layout takes
     */
    public record Shortage(PieceKind kind, int needed) {}

    /** Kinds that were counted and of which a layout takes more, in the order of the box. */
    public List<Shortage> shortages(List<Piece> layout) {
        List<Shortage> shortages = new ArrayList<>();
        for (PieceKind kind : kinds) {
            int needed = (int) layout.stream().filter(kind::holds).count();
            if (kind.owned().isPresent() && needed > kind.owned().getAsInt()) {
                shortages.add(new Shortage(kind, needed));
            }
        }
        return shortages;
    }
}
