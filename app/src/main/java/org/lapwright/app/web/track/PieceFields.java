package org.lapwright.app.web.track;

import java.util.Optional;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.core.track.Piece;

/**
 * One piece as typed. What belongs to the other kinds is kept too, so that changing the kind and back loses nothing.
 *
 * @param kind {@code straight}, {@code left} or {@code right}
 * @param length of a straight, mm
 * @param radius of a turn, mm
 * @param angle of a turn, degrees
 * @param bank of a turn, degrees; may be empty
 * @param rise of the far end, mm; may be empty
 */
public record PieceFields(String kind, String length, String radius, String angle, String bank, String rise) {
    static final String STRAIGHT = "straight";
    static final String LEFT = "left";
    static final String RIGHT = "right";

    /** A new piece of this kind; what is likely stands in it already. */
    static PieceFields fresh(String kind) {
        return new PieceFields(kind.equals(LEFT) || kind.equals(RIGHT) ? kind : STRAIGHT, "500", "400", "90", "", "");
    }

    static PieceFields straight(String length) {
        return new PieceFields(STRAIGHT, length, "400", "180", "", "");
    }

    static PieceFields left(String radius, String angle) {
        return new PieceFields(LEFT, "500", radius, angle, "", "");
    }

    static PieceFields from(Fields fields, int number) {
        return new PieceFields(
                fresh(fields.text("kind-" + number)).kind(),
                fields.text("length-" + number),
                fields.text("radius-" + number),
                fields.text("angle-" + number),
                fields.text("bank-" + number),
                fields.text("rise-" + number));
    }

    /** Whether it is a straight. */
    public boolean isStraight() {
        return kind.equals(STRAIGHT);
    }

    /** Whether bank or rise were given. */
    public boolean isSloping() {
        return !(bank + rise).isBlank();
    }

    Optional<Piece> read(int number, Typed typed) {
        String about = "Piece " + number;
        int before = typed.problems().size();
        double riseMm = typed.number(rise, Piece.RISE, about + ", rise", 0);
        if (isStraight()) {
            double lengthMm = typed.number(length, Piece.STRAIGHT, about + ", length");
            return typed.problems().size() > before
                    ? Optional.empty()
                    : typed.build(about + ": ", () -> new Piece.Straight(lengthMm, riseMm));
        }
        double radiusMm = typed.number(radius, Piece.RADIUS, about + ", radius");
        double angleDeg = typed.number(angle, Piece.ANGLE, about + ", angle");
        double bankDeg = typed.number(bank, Piece.BANK, about + ", bank", 0);
        return typed.problems().size() > before
                ? Optional.empty()
                : typed.build(
                        about + ": ", () -> new Piece.Turn(radiusMm, angleDeg, kind.equals(LEFT), bankDeg, riseMm));
    }
}
