package org.lapwright.app.files.drawing;

import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.Problem;

/** Reads a drawing, whichever of the formats it is in. */
public final class DrawingFile {
    /** Characters of the longest drawing that is read. */
    public static final int LONGEST_TEXT = 5_000_000;

    private DrawingFile() {}

    /**
     * What came out of reading a drawing.
     *
     * @param drawing its shapes; empty exactly when there is a problem
     * @param problem why it cannot be used
     */
    public record Reading(Optional<Drawing> drawing, Optional<Problem> problem) {}

    /**
     * Reads a drawing; its content says whether it is SVG or DXF.
     *
     * @param text all of it
     */
    public static Reading read(String text) {
        try {
            Drawing drawing = drawing(text);
            if (drawing.outlines().isEmpty()) {
                throw Trouble.ofWhole(
                        "There is no line in the drawing that can be followed. " + String.join(" ", drawing.leftOut()),
                        "Draw the centre line as a path, and save it as SVG or DXF");
            }
            return new Reading(Optional.of(drawing), Optional.empty());
        } catch (Trouble trouble) {
            return new Reading(Optional.empty(), Optional.of(trouble.problem()));
        }
    }

    private static Drawing drawing(String text) {
        String content = text.startsWith("\uFEFF") ? text.substring(1) : text;
        if (content.length() > LONGEST_TEXT) {
            throw Trouble.ofWhole(
                    "The drawing has more than 5 million characters", "Save the centre line alone, without pictures");
        }
        if (content.isBlank()) {
            throw Trouble.ofWhole("There is no drawing yet", "Choose a file, or paste what is in it");
        }
        String start = content.substring(0, Math.min(200, content.length())).strip();
        if (start.startsWith("<")) {
            // XML allows nothing before its declaration.
            return SvgReader.read(content.strip());
        }
        if (start.contains("Binary DXF")) {
            throw Trouble.ofWhole("This is a binary DXF drawing", "Save it as DXF in text form (ASCII)");
        }
        if (start.lines().findFirst().orElse("").strip().matches("\\d{1,4}")) {
            return DxfReader.read(content);
        }
        throw Trouble.ofWhole(
                "This is neither an SVG nor a DXF drawing: '%s'".formatted(LeftOut.shortened(start)),
                "Save the drawing as SVG or as DXF (text)");
    }

    /** The unit names that a racer may state, with their millimetres. */
    public static List<DrawnScale> units() {
        return List.of(
                DrawnScale.told(1, "millimetre"),
                DrawnScale.told(10, "centimetre"),
                DrawnScale.told(1000, "metre"),
                DrawnScale.told(25.4, "inch"),
                DrawnScale.told(SvgNumbers.MM_PER_PX, "pixel (1/96 inch)"),
                DrawnScale.told(25.4 / 72, "point (1/72 inch)"));
    }
}
