package org.lapwright.app.files.drawing.course;

import java.util.List;
import org.lapwright.app.files.drawing.Drawing;
import org.lapwright.app.files.drawing.DrawingFile;

/** Drawings for checks, with a unit taken for a millimetre. */
final class Drawn {
    private Drawn() {}

    static Drawing read(String text) {
        DrawingFile.Reading reading = DrawingFile.read(text);
        return reading.drawing()
                .orElseThrow(
                        () -> new AssertionError(reading.problem().orElseThrow().sentence()));
    }

    static String svg(String content) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\">" + content + "</svg>";
    }

    static String path(String data) {
        return svg("<path d=\"" + data + "\"/>");
    }

    /** Pairs of a DXF text, one a word; entities only. */
    static String dxf(String pairs) {
        return "0\nSECTION\n2\nENTITIES\n" + String.join("\n", pairs.strip().split("\\s+")) + "\n0\nENDSEC\n0\nEOF\n";
    }

    static List<Polyline> lines(String text) {
        return Flattening.of(read(text), 1, 1e-4);
    }

    static double length(String text) {
        return lines(text).stream().mapToDouble(Polyline::length).sum();
    }

    static Polyline only(String text) {
        List<Polyline> lines = lines(text);
        if (lines.size() != 1) {
            throw new AssertionError("there are " + lines.size() + " lines");
        }
        return lines.get(0);
    }
}
