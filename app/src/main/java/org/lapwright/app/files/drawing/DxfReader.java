package org.lapwright.app.files.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads the entities of a DXF drawing in text form; blocks, layers and styles are not looked at.
 *
 * <p>The format: group codes of the DXF reference, chapters HEADER and ENTITIES.
 */
final class DxfReader {
    private final DxfPairs pairs;
    private final Budget budget = new Budget();
    private final LeftOut leftOut = new LeftOut();
    private final DxfShapes shapes = new DxfShapes(budget, leftOut);
    private DrawnScale scale = scale(0);

    private DxfReader(String text) {
        pairs = new DxfPairs(text);
    }

    static Drawing read(String text) {
        DxfReader reader = new DxfReader(text);
        reader.all();
        return new Drawing("DXF", reader.shapes.outlines(), reader.scale, reader.leftOut.sentences());
    }

    private void all() {
        boolean sections = false;
        while (pairs.next()) {
            if (pairs.is(0, "EOF")) {
                return;
            }
            if (pairs.is(0, "SECTION") && pairs.next() && pairs.code() == 2) {
                sections = true;
                section(pairs.value());
            }
        }
        if (!sections) {
            throw Trouble.ofWhole("This looks like a DXF drawing, but has no section", "Save it again as DXF (text)");
        }
    }

    private void section(String name) {
        if (name.equals("ENTITIES")) {
            entities();
        } else if (name.equals("HEADER")) {
            header();
        }
    }

    private void header() {
        while (pairs.next() && !pairs.is(0, "ENDSEC")) {
            if (pairs.is(9, "$INSUNITS") && pairs.next() && pairs.code() == 70) {
                scale = scale((int) new DxfGroup(pairs.line(), 70, pairs.value()).number());
            }
        }
    }

    /** The number of {@code $INSUNITS} as the DXF reference lists them, as far as anybody draws a track in them. */
    private static DrawnScale scale(int unit) {
        return switch (unit) {
            case 1 -> stated(25.4, "inches");
            case 2 -> stated(304.8, "feet");
            case 4 -> stated(1, "millimetres");
            case 5 -> stated(10, "centimetres");
            case 6 -> stated(1000, "metres");
            case 14 -> stated(100, "decimetres");
            default ->
                new DrawnScale(
                        1,
                        false,
                        "The drawing does not say its unit; it is taken for millimetres. Say what it is, or give a length"
                                + " you know.");
        };
    }

    private static DrawnScale stated(double mm, String name) {
        return new DrawnScale(mm, true, "The drawing says that it is measured in %s.".formatted(name));
    }

    private void entities() {
        if (!pairs.next()) {
            return;
        }
        while (!pairs.is(0, "ENDSEC") && !pairs.is(0, "EOF")) {
            int line = pairs.line();
            String type = pairs.code() == 0 ? pairs.value() : "";
            DxfEntity entity = new DxfEntity(type, line, pairs.untilNext());
            if (type.equals("POLYLINE")) {
                shapes.polyline(entity, vertices());
            } else if (!type.isEmpty()) {
                shapes.draw(entity);
            }
        }
    }

    private List<DxfEntity> vertices() {
        List<DxfEntity> vertices = new ArrayList<>();
        while (pairs.is(0, "VERTEX")) {
            budget.take();
            int line = pairs.line();
            vertices.add(new DxfEntity("VERTEX", line, pairs.untilNext()));
        }
        if (pairs.is(0, "SEQEND")) {
            pairs.untilNext();
        }
        return vertices;
    }
}
