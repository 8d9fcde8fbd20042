package org.lapwright.app.web.track.paper;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.track.TrackChoice;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

/**
 * A track on one page, to a scale that stands on it; it fits A4 and US Letter alike.
 *
 * @param shell around it
 * @param name of the track
 * @param scale paper to track, as {@code 1:20}
 * @param plan the lanes and the bar below them
 * @param lanes their lengths, from the left one at the timing line
 * @param tiles scales for which it takes several sheets
 * @param back the track's page
 */
public record PrintPage(
        Shell shell, String name, String scale, Plan plan, List<String> lanes, List<Tiles> tiles, String back) {
    /** What both papers leave between usual margins, less the words around the drawing. */
    private static final double WIDTH_MM = 180;

    private static final double HEIGHT_MM = 185;
    private static final double BAR_MM = 14;
    private static final List<Integer> SCALES = List.of(
            1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 150, 200, 250, 300, 400, 500, 750, 1000, 1500, 2000, 2500,
            5000, 10_000);

    /** The greatest part of the width that the bar takes. */
    private static final double LONGEST_BAR_MM = 100;

    private static final List<Integer> BARS = List.of(
            10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000, 200_000, 500_000, 1_000_000);

    /** Copies the list. */
    public PrintPage {
        lanes = List.copyOf(lanes);
        tiles = List.copyOf(tiles);
    }

    /**
     * A way to the track on several sheets.
     *
     * @param link to them
     * @param label scale and number of sheets
     */
    public record Tiles(String link, String label) {}

    /**
     * The drawing: units are millimetres of the track, sizes those of the paper.
     *
     * @param drawing the lanes
     * @param width of the paper used, mm
     * @param height of the paper used, mm
     * @param viewBox in millimetres of the track
     * @param placed how the lanes are moved, and turned if they lie better so
     * @param bar length of the scale bar, mm of the track
     * @param barTop where it stands
     * @param tick height of its ends
     * @param letters height of its letters
     * @param label its length in words
     */
    public record Plan(
            LanesSvg drawing,
            String width,
            String height,
            String viewBox,
            String placed,
            String bar,
            String barTop,
            String tick,
            String letters,
            String label) {
        static Plan of(LanesSvg drawing, int scale) {
            boolean turned = !fits(drawing.widthMm(), drawing.heightMm(), scale);
            double width = turned ? drawing.heightMm() : drawing.widthMm();
            double height = turned ? drawing.widthMm() : drawing.heightMm();
            int bar = BARS.get(0);
            for (int next : BARS) {
                bar = next <= LONGEST_BAR_MM * scale ? next : bar;
            }
            double wide = Math.max(width, bar + 4.0 * scale);
            double high = height + BAR_MM * scale;
            String placed = turned
                    ? "translate(%s %s) rotate(90)"
                            .formatted(
                                    LanesSvg.mm(drawing.topMm() + drawing.heightMm()), LanesSvg.mm(-drawing.leftMm()))
                    : "translate(%s %s)".formatted(LanesSvg.mm(-drawing.leftMm()), LanesSvg.mm(-drawing.topMm()));
            return new Plan(
                    drawing,
                    LanesSvg.mm(wide / scale),
                    LanesSvg.mm(high / scale),
                    "0 0 %s %s".formatted(LanesSvg.mm(wide), LanesSvg.mm(high)),
                    placed,
                    String.valueOf(bar),
                    LanesSvg.mm(height + 3.0 * scale),
                    LanesSvg.mm(2.0 * scale),
                    LanesSvg.mm(4.0 * scale),
                    bar < 1000 ? bar + " mm" : Figures.significant(bar / 1000.0, 4) + " m");
        }
    }

    /** A track on the greatest scale at which it fits the page, upright or turned. */
    public static PrintPage of(Shell shell, Track track) {
        LanesSvg drawing = LanesSvg.of(track);
        int scale = SCALES.stream()
                .filter(each -> fits(drawing.widthMm(), drawing.heightMm(), each)
                        || fits(drawing.heightMm(), drawing.widthMm(), each))
                .findFirst()
                .orElse(SCALES.get(SCALES.size() - 1));
        List<Lane> across = new ArrayList<>(track.lanes());
        across.sort((one, other) -> Double.compare(other.offsetMm(), one.offsetMm()));
        return new PrintPage(
                shell,
                track.name(),
                "1:" + scale,
                Plan.of(drawing, scale),
                across.stream()
                        .map(lane -> "%s: %s m".formatted(lane.name(), Figures.fixed(track.lengthM(lane), 3)))
                        .toList(),
                TilesPage.choices(track).stream()
                        .map(choice -> new Tiles(
                                TrackChoice.tiles(track.name(), choice.scale()),
                                (choice.scale() == 1 ? "True size" : "1:" + choice.scale()) + ", " + choice.sheets()
                                        + " sheets"))
                        .toList(),
                TrackChoice.page(track.name()));
    }

    private static boolean fits(double wideMm, double highMm, int scale) {
        return wideMm <= WIDTH_MM * scale && highMm <= HEIGHT_MM * scale;
    }
}
