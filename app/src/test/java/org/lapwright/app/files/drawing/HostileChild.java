package org.lapwright.app.files.drawing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/** A process of little memory that reads drawings made to hurt, and prints how long each took. */
final class HostileChild {
    private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\">";

    private HostileChild() {}

    private static Map<String, Supplier<String>> drawings() {
        Map<String, Supplier<String>> drawings = new LinkedHashMap<>();
        drawings.put("laughs", HostileChild::laughs);
        drawings.put("strokes", () -> SVG + "<path d=\"M0 0" + "l1 1".repeat(1_000_000) + "\"/></svg>");
        drawings.put("paths", () -> SVG + "<path d=\"M0 0L1 1\"/>".repeat(210_000) + "</svg>");
        drawings.put("elements", () -> SVG + "<g/>".repeat(1_000_000) + "</svg>");
        drawings.put("deep", () -> SVG + "<g>".repeat(1_000_000));
        drawings.put("points", () -> SVG + "<polyline points=\"" + "0,0 1,1 ".repeat(99_000) + "\"/></svg>");
        drawings.put("arcs", () -> SVG + "<path d=\"M0 0" + "a1e8 1e8 0 1 1 1 1".repeat(40_000) + "\"/></svg>");
        drawings.put("lines", () -> "0\nSECTION\n2\nENTITIES\n" + "0\nLINE\n11\n1\n".repeat(300_000));
        drawings.put("spline", () -> "0\nSECTION\n2\nENTITIES\n0\nSPLINE\n" + "10\n1\n".repeat(600_000));
        drawings.put("long", () -> "x".repeat(20_000_000));
        return drawings;
    }

    private static String laughs() {
        StringBuilder laughs = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 12; i++) {
            laughs.append("<!ENTITY a%d \"".formatted(i))
                    .append(("&a" + (i - 1) + ";").repeat(10))
                    .append("\">");
        }
        return laughs + "]>" + SVG + "<text>&a11;</text></svg>";
    }

    /** Reads each drawing; a line says its name, how it went, and the milliseconds. */
    public static void main(String[] args) {
        for (Map.Entry<String, Supplier<String>> each : drawings().entrySet()) {
            String text = each.getValue().get();
            long begun = System.nanoTime();
            DrawingFile.Reading reading = DrawingFile.read(text);
            String how = reading.drawing().isPresent() ? "read" : "refused";
            System.out.println(each.getKey() + " " + how + " " + (System.nanoTime() - begun) / 1_000_000);
        }
        System.out.println("done");
    }
}
