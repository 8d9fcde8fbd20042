package org.lapwright.app.web.bench.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lapwright.app.web.bench.PlanView;
import org.lapwright.app.web.bench.sheet.SheetPage.Section;

/**
 * A sheet laid out in two columns of about the same height.
 *
 * @param sheet what is on it
 * @param plan the drawing from above, as SVG that stands by itself
 * @param left what stands under the drawing
 * @param right what stands beside it
 */
public record SheetPaper(SheetPage sheet, String plan, List<Section> left, List<Section> right) {
    /** Rows of text that the drawing and a title are as high as, about. */
    private static final int DRAWING_ROWS = 24;

    private static final int TITLE_ROWS = 2;
    private static final int NOTES_ROWS = 7;

    /** Width of the drawing in CSS pixels: 70 mm. */
    private static final double DRAWN_WIDE = 265;

    private static final String STYLE = """
            <style>
            text { font-family: sheet; font-size: 11px; fill: #000; stroke: none; }
            rect, circle, path, line, polygon { fill: none; stroke: #000; }
            .forward, .quarters { fill: #000; stroke: none; }
            .body { stroke: #777; stroke-width: 1.5; stroke-dasharray: 6 4; }
            .axle { stroke: #777; stroke-width: 3; }
            .touches { fill: #000; }
            .clear { fill: #fff; stroke-dasharray: 3 2; }
            .stands { stroke-width: 1.5; stroke-dasharray: 10 3 2 3; }
            .braid { stroke: #555; stroke-width: 4; }
            .pivot { fill: #fff; stroke-width: 2.5; }
            .leader { stroke: #777; stroke-dasharray: 1 3; }
            .tipping { stroke-width: 2; }
            .ground { fill: #fff; stroke: none; }
            .rim { stroke-width: 1.5; }
            rect.magnet { fill: #ddd; }
            rect.ballast { fill: #000; }
            rect.out { fill: #fff; stroke-dasharray: 3 2; }
            text.count { fill: #fff; }
            text.out { fill: #000; }
            rect.full { fill: #000; }
            </style>
            """;

    /** Copies the lists. */
    public SheetPaper {
        left = List.copyOf(left);
        right = List.copyOf(right);
    }

    /**
     * Lays a sheet out.
     *
     * @param drawing its plan, as the pages draw it
     */
    public static SheetPaper of(SheetPage sheet, String drawing) {
        int all = DRAWING_ROWS + NOTES_ROWS + TITLE_ROWS + sheet.changes().size();
        for (Section section : sheet.sections()) {
            all += rows(section);
        }
        List<Section> left = new ArrayList<>();
        List<Section> right = new ArrayList<>();
        int height = DRAWING_ROWS;
        for (Section section : sheet.sections()) {
            boolean fits = right.isEmpty() && height + rows(section) / 2 <= all / 2;
            (fits ? left : right).add(section);
            height += rows(section);
        }
        return new SheetPaper(sheet, alone(drawing, sheet.plan()), left, right);
    }

    private static int rows(Section section) {
        return TITLE_ROWS + section.rows().size();
    }

    /** On a page the drawing is part of HTML and styled by it; here it says all of that itself. */
    private static String alone(String drawing, PlanView plan) {
        String size = String.format(
                Locale.ROOT, "width=\"%.1f\" height=\"%.1f\"", DRAWN_WIDE, DRAWN_WIDE * plan.height() / PlanView.WIDTH);
        int end = drawing.indexOf('>') + 1;
        return drawing.substring(0, end)
                        .replace("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\" ")
                        .replace("width=\"100%\"", size)
                + STYLE
                + drawing.substring(end);
    }
}
