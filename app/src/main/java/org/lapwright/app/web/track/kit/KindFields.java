package org.lapwright.app.web.track.kit;

import java.util.Optional;
import java.util.OptionalInt;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.kit.PieceKind;
import org.lapwright.core.units.Check;

/**
 * A kind of piece, as typed.
 *
 * @param straight whether it is a straight, else a turn
 * @param name the owner's word for it; may be empty
 * @param length of a straight, mm
 * @param radius of a turn, mm
 * @param angle of a turn, degrees
 * @param bank of a turn, degrees; may be empty
 * @param owned how many there are; may be empty
 */
public record KindFields(
        boolean straight, String name, String length, String radius, String angle, String bank, String owned) {
    static KindFields fresh(boolean straight) {
        return new KindFields(straight, "", "", "", "", "", "");
    }

    static KindFields of(PieceKind kind) {
        String owned = kind.owned().isPresent() ? String.valueOf(kind.owned().getAsInt()) : "";
        if (kind.piece() instanceof Piece.Turn turn) {
            return new KindFields(
                    false,
                    kind.name(),
                    "",
                    Check.number(turn.radiusMm()),
                    Check.number(turn.angleDeg()),
                    turn.bankDeg() == 0 ? "" : Check.number(turn.bankDeg()),
                    owned);
        }
        double length = ((Piece.Straight) kind.piece()).lengthMm();
        return new KindFields(true, kind.name(), Check.number(length), "", "", "", owned);
    }

    static KindFields from(Fields fields, int number) {
        return new KindFields(
                !fields.text("kind-" + number).equals("turn"),
                fields.text("name-" + number),
                fields.text("length-" + number),
                fields.text("radius-" + number),
                fields.text("angle-" + number),
                fields.text("bank-" + number),
                fields.text("owned-" + number));
    }

    Optional<PieceKind> read(int number, Typed typed) {
        String about = "Kind " + number + ", ";
        int before = typed.problems().size();
        Optional<Piece> piece = straight ? straight(number, about, typed) : turn(number, about, typed);
        OptionalInt count = owned(number, about, typed);
        if (typed.problems().size() > before || piece.isEmpty()) {
            return Optional.empty();
        }
        return typed.at("name-" + number).build("", () -> new PieceKind(name, piece.get(), count));
    }

    private Optional<Piece> straight(int number, String about, Typed typed) {
        double lengthMm = typed.at("length-" + number).number(length, Piece.STRAIGHT, about + "length");
        return Double.isNaN(lengthMm) ? Optional.empty() : Optional.of(new Piece.Straight(lengthMm, 0));
    }

    private Optional<Piece> turn(int number, String about, Typed typed) {
        double radiusMm = typed.at("radius-" + number).number(radius, Piece.RADIUS, about + "radius");
        double angleDeg = typed.at("angle-" + number).number(angle, Piece.ANGLE, about + "angle");
        double bankDeg = typed.at("bank-" + number).number(bank, Piece.BANK, about + "bank", 0);
        return Double.isNaN(radiusMm + angleDeg + bankDeg)
                ? Optional.empty()
                : Optional.of(new Piece.Turn(radiusMm, angleDeg, true, bankDeg, 0));
    }

    private OptionalInt owned(int number, String about, Typed typed) {
        if (owned.isBlank()) {
            return OptionalInt.empty();
        }
        double count = typed.at("owned-" + number).number(owned, PieceKind.OWNED, about + "how many");
        if (!Double.isNaN(count) && count != Math.rint(count)) {
            typed.problem("%show many is %s; it must be a whole number.".formatted(about, owned.strip()));
        }
        return Double.isNaN(count) ? OptionalInt.empty() : OptionalInt.of((int) count);
    }
}
