package org.lapwright.app.files.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;

/** One shape of a drawing as lines and Bézier curves, in the drawing's unit, y upwards. Immutable. */
public final class Outline {
    private final Path2D.Double path;

    Outline(Path2D path, AffineTransform placed) {
        this.path = new Path2D.Double(path, placed);
    }

    /** The course at another size, to be followed once. */
    public PathIterator course(double factor) {
        return path.getPathIterator(AffineTransform.getScaleInstance(factor, factor));
    }
}
