package org.lapwright.app.files.drawing;

import java.util.List;

/** The shapes of a drawing that has been read, in its own unit. Immutable. */
public final class Drawing {
    private final String format;
    private final List<Outline> outlines;
    private final DrawnScale scale;
    private final List<String> leftOut;

    Drawing(String format, List<Outline> outlines, DrawnScale scale, List<String> leftOut) {
        this.format = format;
        this.outlines = List.copyOf(outlines);
        this.scale = scale;
        this.leftOut = List.copyOf(leftOut);
    }

    /** {@code SVG} or {@code DXF}. */
    public String format() {
        return format;
    }

    /** What one unit is, as the drawing says or as is usual. */
    public DrawnScale scale() {
        return scale;
    }

    /** Sentences on what was not taken along. */
    public List<String> leftOut() {
        return leftOut;
    }

    /** Its shapes. */
    public List<Outline> outlines() {
        return outlines;
    }
}
