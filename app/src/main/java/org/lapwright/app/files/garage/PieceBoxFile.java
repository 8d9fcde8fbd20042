package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.kit.PieceBox;
import org.lapwright.core.track.kit.PieceKind;

/**
 * The owner's kinds of pieces, {@code lapwright-pieces/1}: a list {@code pieces}, each with {@code straight_mm} or with
 * {@code radius_mm}, {@code angle_deg} and perhaps {@code bank_deg} as in a track file, and perhaps a {@code name} and how many
 * are {@code owned}.
 *
 * @param box what it says
 */
public record PieceBoxFile(PieceBox box) {
    /** The format that this version reads and writes. */
    public static final String FORMAT = "lapwright-pieces/1";

    /** Reads a file. */
    public static FileReading<PieceBoxFile> read(String text) {
        return FileReading.of(text, FORMAT, PieceBoxFile::content);
    }

    private static Optional<PieceBoxFile> content(JsonSection file) {
        List<PieceKind> kinds = new ArrayList<>();
        for (JsonSection section : file.children("pieces")) {
            kind(section).ifPresent(kinds::add);
        }
        return file.build(() -> new PieceBoxFile(new PieceBox(kinds)));
    }

    private static Optional<PieceKind> kind(JsonSection section) {
        String name = section.text("name").orElse("");
        OptionalDouble owned = section.number(PieceKind.OWNED);
        OptionalInt count = owned.isPresent() ? OptionalInt.of((int) owned.getAsDouble()) : OptionalInt.empty();
        if (section.has(Piece.STRAIGHT.name())) {
            double length = section.required(Piece.STRAIGHT);
            return section.build(() -> new PieceKind(name, new Piece.Straight(length, 0), count));
        }
        double radius = section.required(Piece.RADIUS);
        double angle = section.required(Piece.ANGLE);
        double bank = section.number(Piece.BANK).orElse(0);
        return section.build(() -> new PieceKind(name, new Piece.Turn(radius, angle, true, bank, 0), count));
    }

    /** The file's text. */
    public String text() {
        ObjectNode json = Document.empty();
        json.put("format", FORMAT);
        ArrayNode pieces = json.putArray("pieces");
        for (PieceKind kind : box.kinds()) {
            ObjectNode entry = pieces.addObject();
            if (!kind.name().isEmpty()) {
                entry.put("name", kind.name());
            }
            if (kind.piece() instanceof Piece.Turn turn) {
                entry.set(Piece.RADIUS.name(), number(turn.radiusMm()));
                entry.set(Piece.ANGLE.name(), number(turn.angleDeg()));
                if (turn.bankDeg() != 0) {
                    entry.set(Piece.BANK.name(), number(turn.bankDeg()));
                }
            } else {
                entry.set(Piece.STRAIGHT.name(), number(((Piece.Straight) kind.piece()).lengthMm()));
            }
            kind.owned().ifPresent(owned -> entry.put(PieceKind.OWNED.name(), owned));
        }
        return Document.text(json);
    }

    private static JsonNode number(double value) {
        return DecimalNode.valueOf(JsonPart.decimal(value));
    }
}
