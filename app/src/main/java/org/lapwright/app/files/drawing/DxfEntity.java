package org.lapwright.app.files.drawing;

import java.awt.geom.AffineTransform;
import java.util.List;

/**
 * One entity of a DXF drawing.
 *
 * @param type its name
 * @param line where it begins, from 1
 * @param groups its geometry
 */
record DxfEntity(String type, int line, List<DxfGroup> groups) {
    private static final double STRAIGHT_UP = 1e-6;

    /** Copies the list. */
    DxfEntity {
        groups = List.copyOf(groups);
    }

    double number(int code, double otherwise) {
        for (DxfGroup group : groups) {
            if (group.code() == code) {
                return group.number();
            }
        }
        return otherwise;
    }

    double number(int code) {
        return number(code, 0);
    }

    boolean has(int code) {
        return groups.stream().anyMatch(group -> group.code() == code);
    }

    double[] all(int code) {
        return groups.stream()
                .filter(group -> group.code() == code)
                .mapToDouble(group -> group.number())
                .toArray();
    }

    boolean flag(int bit) {
        return ((int) number(70) & bit) != 0;
    }

    /** Whether it lies in a plane that is not the drawing's: its normal leans. */
    boolean leans() {
        return Math.abs(number(210)) > STRAIGHT_UP || Math.abs(number(220)) > STRAIGHT_UP;
    }

    boolean isSeenFromBelow() {
        return number(230, 1) < 0;
    }

    /**
     * From the entity's own coordinates to the drawing's. By the arbitrary axis rule of the DXF reference a normal that points
     * down turns x about.
     */
    AffineTransform placed() {
        return AffineTransform.getScaleInstance(isSeenFromBelow() ? -1 : 1, 1);
    }
}
