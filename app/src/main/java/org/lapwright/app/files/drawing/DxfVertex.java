package org.lapwright.app.files.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A corner of a DXF polyline.
 *
 * @param x place
 * @param y place
 * @param bulge of the way on to the next
 */
record DxfVertex(double x, double y, double bulge) {
    /** Those of the lighter kind, which stand in the entity itself: x begins each. */
    static List<DxfVertex> ofLight(DxfEntity entity) {
        List<DxfVertex> vertices = new ArrayList<>();
        for (DxfGroup group : entity.groups()) {
            int last = vertices.size() - 1;
            if (group.code() == 10) {
                vertices.add(new DxfVertex(group.number(), 0, 0));
            } else if (last >= 0 && group.code() == 20) {
                vertices.set(last, new DxfVertex(vertices.get(last).x, group.number(), vertices.get(last).bulge));
            } else if (last >= 0 && group.code() == 42) {
                vertices.set(last, new DxfVertex(vertices.get(last).x, vertices.get(last).y, group.number()));
            }
        }
        return vertices;
    }

    /** Those of the older kind; corners of the frame of a smoothed curve are not on the line. */
    static List<DxfVertex> of(List<DxfEntity> entities) {
        return entities.stream()
                .filter(vertex -> !vertex.flag(16))
                .map(vertex -> new DxfVertex(vertex.number(10), vertex.number(20), vertex.number(42)))
                .toList();
    }
}
