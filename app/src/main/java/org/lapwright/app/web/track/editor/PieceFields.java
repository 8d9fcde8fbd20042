package org.lapwright.app.web.track.editor;

import java.util.Map;
import java.util.Optional;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceExtras;

/**
 * One piece as typed. What belongs to the other kinds is kept too, so that changing the kind and back loses nothing.
 *
 * @param kind {@code straight}, {@code left} or {@code right}
 * @param length of a straight, mm
 * @param radius of a turn, mm
 * @param angle of a turn, degrees
 * @param bank of a turn, degrees; may be empty
 * @param rise of the far end, mm; may be empty
 * @param extras what is different on it
 */
public record PieceFields(
        String kind, String length, String radius, String angle, String bank, String rise, ExtraFields extras) {
    static final String STRAIGHT = "straight";
    static final String LEFT = "left";
    static final String RIGHT = "right";

    private static final String USUAL_LENGTH = "350";
    private static final String USUAL_RADIUS = "350";
    private static final String USUAL_ANGLE = "45";

    /** A new piece of this kind; what is likely stands in it already. */
    static PieceFields fresh(String kind) {
        return new PieceFields(known(kind), USUAL_LENGTH, USUAL_RADIUS, USUAL_ANGLE, "", "", ExtraFields.NONE);
    }

    static PieceFields straight(String length) {
        return new PieceFields(STRAIGHT, length, USUAL_RADIUS, USUAL_ANGLE, "", "", ExtraFields.NONE);
    }

    static PieceFields turn(String kind, String radius, String angle, String bank) {
        return new PieceFields(known(kind), USUAL_LENGTH, radius, angle, bank, "", ExtraFields.NONE);
    }

    static PieceFields of(Piece piece) {
        String rise = piece.riseMm() == 0 ? "" : Written.exact(piece.riseMm());
        if (piece instanceof Piece.Turn turn) {
            return new PieceFields(
                    turn.left() ? LEFT : RIGHT,
                    USUAL_LENGTH,
                    Written.exact(turn.radiusMm()),
                    Written.exact(turn.angleDeg()),
                    turn.bankDeg() == 0 ? "" : Written.exact(turn.bankDeg()),
                    rise,
                    ExtraFields.of(piece.extras()));
        }
        String length = Written.exact(((Piece.Straight) piece).lengthMm());
        return new PieceFields(STRAIGHT, length, USUAL_RADIUS, USUAL_ANGLE, "", rise, ExtraFields.of(piece.extras()));
    }

    private static String known(String kind) {
        return kind.equals(LEFT) || kind.equals(RIGHT) ? kind : STRAIGHT;
    }

    static PieceFields from(Fields fields, int number) {
        return new PieceFields(
                known(fields.text("kind-" + number)),
                fields.text("length-" + number),
                fields.text("radius-" + number),
                fields.text("angle-" + number),
                fields.text("bank-" + number),
                fields.text("rise-" + number),
                ExtraFields.from(fields, number));
    }

    void into(Map<String, String> fields, int number) {
        fields.put("kind-" + number, kind);
        fields.put("length-" + number, length);
        fields.put("radius-" + number, radius);
        fields.put("angle-" + number, angle);
        fields.put("bank-" + number, bank);
        fields.put("rise-" + number, rise);
        extras.into(fields, number);
    }

    /** Whether it is a straight. */
    public boolean isStraight() {
        return kind.equals(STRAIGHT);
    }

    /** Whether bank, rise or anything different were given. */
    public boolean isSpecial() {
        return !(bank + rise).isBlank() || !extras.isEmpty();
    }

    /** What it is, for the racer: {@code straight} or {@code left turn}. */
    public String inWords() {
        return isStraight() ? STRAIGHT : kind + " turn";
    }

    /** Turning the other way; a straight stays. */
    PieceFields mirrored() {
        String other = isStraight() ? STRAIGHT : kind.equals(LEFT) ? RIGHT : LEFT;
        return new PieceFields(other, length, radius, angle, bank, rise, extras.mirrored());
    }

    PieceFields withLength(String other) {
        return new PieceFields(kind, other, radius, angle, bank, rise, extras);
    }

    PieceFields withRadius(String other) {
        return new PieceFields(kind, length, other, angle, bank, rise, extras);
    }

    PieceFields withAngle(String other) {
        return new PieceFields(kind, length, radius, other, bank, rise, extras);
    }

    PieceFields with(ExtraFields others) {
        return new PieceFields(kind, length, radius, angle, bank, rise, others);
    }

    Optional<Piece> read(int number, Typed typed) {
        int before = typed.problems().size();
        Optional<PieceExtras> different = extras.read(number, typed);
        Optional<? extends Piece> plain = isStraight() ? straight(number, typed) : turn(number, typed);
        return typed.problems().size() > before ? Optional.empty() : plain.flatMap(piece -> different.map(piece::with));
    }

    private Optional<Piece.Straight> straight(int number, Typed typed) {
        String about = "Piece " + number;
        int before = typed.problems().size();
        double riseMm = typed.at("rise-" + number).number(rise, Piece.RISE, about + ", rise", 0);
        double lengthMm = typed.at("length-" + number).number(length, Piece.STRAIGHT, about + ", length");
        return typed.problems().size() > before
                ? Optional.empty()
                : typed.at("rise-" + number).build(about + ": ", () -> new Piece.Straight(lengthMm, riseMm));
    }

    private Optional<Piece.Turn> turn(int number, Typed typed) {
        String about = "Piece " + number;
        int before = typed.problems().size();
        double riseMm = typed.at("rise-" + number).number(rise, Piece.RISE, about + ", rise", 0);
        double radiusMm = typed.at("radius-" + number).number(radius, Piece.RADIUS, about + ", radius");
        double angleDeg = typed.at("angle-" + number).number(angle, Piece.ANGLE, about + ", angle");
        double bankDeg = typed.at("bank-" + number).number(bank, Piece.BANK, about + ", bank", 0);
        return typed.problems().size() > before
                ? Optional.empty()
                : typed.at("rise-" + number)
                        .build(
                                about + ": ",
                                () -> new Piece.Turn(radiusMm, angleDeg, kind.equals(LEFT), bankDeg, riseMm));
    }
}
