package org.lapwright.core.track.kit;

import java.util.OptionalInt;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceExtras;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/**
 * A kind of piece: all pieces of one size. A turn lies to the left or to the right, and any piece may rise.
 *
 * @param name the owner's word for it; may be empty, at most {@value #LONGEST_NAME} characters
 * @param piece its size; a turn is kept as the left one, and nothing rises
 * @param owned how many the owner has; empty when not counted
 */
public record PieceKind(String name, Piece piece, OptionalInt owned) {
    /** How many of a kind there are. */
    public static final NumberKey OWNED = new NumberKey("pieces", "owned", 0, 9999);

    /** Longest name. */
    public static final int LONGEST_NAME = 40;

    /** Checks the name and the count, and lays the piece flat. */
    public PieceKind {
        name = name.strip();
        if (name.length() > LONGEST_NAME) {
            throw new IllegalArgumentException("the name of a kind of piece is %d characters long; at most %d fit"
                    .formatted(name.length(), LONGEST_NAME));
        }
        piece = flat(piece);
        owned.ifPresent(count -> OWNED.check(count));
    }

    /** Straights of a length, mm, not counted. */
    public static PieceKind straight(double lengthMm) {
        return new PieceKind("", new Piece.Straight(lengthMm, 0), OptionalInt.empty());
    }

    /** Flat turns of a radius, mm, and an angle, degrees, not counted. */
    public static PieceKind turn(double radiusMm, double angleDeg) {
        return new PieceKind("", new Piece.Turn(radiusMm, angleDeg, true, 0, 0), OptionalInt.empty());
    }

    /** Whether a piece of a track is of this kind. */
    public boolean holds(Piece other) {
        return piece.equals(flat(other));
    }

    /** What it is, such as {@code turn, radius 350 mm, 45°}. */
    public String inWords() {
        if (piece instanceof Piece.Turn turn) {
            String bank = turn.bankDeg() == 0 ? "" : ", banked " + Check.number(turn.bankDeg()) + "°";
            return "turn, radius %s mm, %s°%s"
                    .formatted(Check.number(turn.radiusMm()), Check.number(turn.angleDeg()), bank);
        }
        return "straight, %s mm".formatted(Check.number(((Piece.Straight) piece).lengthMm()));
    }

    private static Piece flat(Piece piece) {
        if (piece instanceof Piece.Turn turn) {
            return new Piece.Turn(turn.radiusMm(), turn.angleDeg(), true, turn.bankDeg(), 0, PieceExtras.NONE);
        }
        return new Piece.Straight(((Piece.Straight) piece).lengthMm(), 0);
    }
}
