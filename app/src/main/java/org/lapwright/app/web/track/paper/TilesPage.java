package org.lapwright.app.web.track.paper;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.track.LanePlan;
import org.lapwright.core.track.PlanPose;
import org.lapwright.core.track.Track;

/**
 * A track on many sheets that are glued together, to a scale that A4 and US Letter alike have room for. Sheets are lettered from
 * the top and numbered from the left; those that no lane passes are left out.
 *
 * @param shell around it
 * @param name of the track
 * @param scale millimetres of the track in one of paper
 * @param drawing the lanes
 * @param viewBox of the plan of all sheets, mm of the track
 * @param sheets in reading order
 * @param empty frames of what is left out, on the plan
 * @param back the page the plan comes from
 */
public record TilesPage(
        Shell shell,
        String name,
        int scale,
        LanesSvg drawing,
        String viewBox,
        List<Sheet> sheets,
        List<Frame> empty,
        String back) {
    /** Scales on offer. */
    public static final List<Integer> SCALES = List.of(1, 2, 5, 10);

    private static final int MOST = 150;

    /** What a sheet carries up to its lines to cut along, mm of paper. */
    private static final double WIDTH_MM = 165;

    private static final double HEIGHT_MM = 210;

    /** What goes on beyond them, to lie under the next sheet. */
    private static final double LAP_MM = 10;

    /** No lane gets from one sheet past the next within this, mm of paper. */
    private static final double STRIDE_MM = 2;

    private static final int MOST_ROWS = 26;
    private static final int MOST_PLACES = 3000;

    /** Copies the lists. */
    public TilesPage {
        sheets = List.copyOf(sheets);
        empty = List.copyOf(empty);
    }

    /**
     * A rectangle, mm of the track.
     *
     * @param x left edge
     * @param y upper edge
     * @param width from left to right
     * @param height from top to bottom
     */
    public record Frame(String x, String y, String width, String height) {}

    /**
     * One sheet.
     *
     * @param name row and column, such as {@code B3}
     * @param viewBox what it shows, mm of the track
     * @param frame what is left of it when it is cut
     * @param x of its middle
     * @param y of its middle
     * @param beside what lies to the right and below
     */
    public record Sheet(String name, String viewBox, Frame frame, String x, String y, String beside) {}

    /**
     * How many sheets a scale takes.
     *
     * @param scale millimetres of the track in one of paper
     * @param sheets how many
     */
    public record Choice(int scale, int sheets) {}

    private record Place(int row, int column) {
        String name() {
            return (char) ('A' + row) + String.valueOf(column + 1);
        }
    }

    private record Grid(double leftMm, double topMm, int scale, int rows, int columns) {
        static Grid of(LanesSvg drawing, int scale) {
            return new Grid(
                    drawing.leftMm(),
                    drawing.topMm(),
                    scale,
                    (int) Math.ceil(drawing.heightMm() / (HEIGHT_MM * scale)),
                    (int) Math.ceil(drawing.widthMm() / (WIDTH_MM * scale)));
        }

        Place at(double xMm, double yMm) {
            return new Place((int) ((yMm - topMm) / (HEIGHT_MM * scale)), (int) ((xMm - leftMm) / (WIDTH_MM * scale)));
        }

        double left(Place place) {
            return leftMm + place.column() * WIDTH_MM * scale;
        }

        double top(Place place) {
            return topMm + place.row() * HEIGHT_MM * scale;
        }

        Frame frame(Place place) {
            return new Frame(
                    LanesSvg.mm(left(place)),
                    LanesSvg.mm(top(place)),
                    LanesSvg.mm(WIDTH_MM * scale),
                    LanesSvg.mm(HEIGHT_MM * scale));
        }
    }

    /** What each scale would take, those left out that fit one sheet or take too many. */
    public static List<Choice> choices(Track track) {
        LanesSvg drawing = LanesSvg.of(track);
        List<LanePlan> plans = plans(track);
        List<Choice> choices = new ArrayList<>();
        for (int scale : SCALES) {
            int sheets = passed(plans, Grid.of(drawing, scale)).size();
            if (isOffered(sheets)) {
                choices.add(new Choice(scale, sheets));
            }
        }
        return choices;
    }

    /** More than one, and no more than anybody would glue. */
    private static boolean isOffered(int sheets) {
        return sheets > 1 && sheets <= MOST;
    }

    /** The sheets of one of {@link #choices}, or nothing for any other scale. */
    public static Optional<TilesPage> of(Shell shell, Track track, int scale, String back) {
        LanesSvg drawing = LanesSvg.of(track);
        Grid grid = Grid.of(drawing, scale);
        Set<Place> passed = passed(plans(track), grid);
        if (!SCALES.contains(scale) || !isOffered(passed.size())) {
            return Optional.empty();
        }
        List<Sheet> sheets = new ArrayList<>();
        List<Frame> empty = new ArrayList<>();
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                Place place = new Place(row, column);
                if (passed.contains(place)) {
                    sheets.add(sheet(grid, place, passed));
                } else {
                    empty.add(grid.frame(place));
                }
            }
        }
        String viewBox = "%s %s %s %s"
                .formatted(
                        LanesSvg.mm(grid.leftMm()),
                        LanesSvg.mm(grid.topMm()),
                        LanesSvg.mm(grid.columns() * WIDTH_MM * scale),
                        LanesSvg.mm(grid.rows() * HEIGHT_MM * scale));
        return Optional.of(new TilesPage(shell, track.name(), scale, drawing, viewBox, sheets, empty, back));
    }

    /** Width of a sheet's drawing, mm of paper. */
    public String sheetWidth() {
        return LanesSvg.mm(WIDTH_MM + LAP_MM);
    }

    /** Height of a sheet's drawing, mm of paper. */
    public String sheetHeight() {
        return LanesSvg.mm(HEIGHT_MM + LAP_MM);
    }

    /** Height of the letters on the plan of all sheets, mm of the track. */
    public String letters() {
        return LanesSvg.mm(WIDTH_MM * scale / 4);
    }

    private static Sheet sheet(Grid grid, Place place, Set<Place> passed) {
        double left = grid.left(place);
        double top = grid.top(place);
        List<String> beside = new ArrayList<>();
        Place right = new Place(place.row(), place.column() + 1);
        Place below = new Place(place.row() + 1, place.column());
        if (passed.contains(right)) {
            beside.add(right.name() + " to the right");
        }
        if (passed.contains(below)) {
            beside.add(below.name() + " below");
        }
        return new Sheet(
                place.name(),
                "%s %s %s %s"
                        .formatted(
                                LanesSvg.mm(left),
                                LanesSvg.mm(top),
                                LanesSvg.mm((WIDTH_MM + LAP_MM) * grid.scale()),
                                LanesSvg.mm((HEIGHT_MM + LAP_MM) * grid.scale())),
                grid.frame(place),
                LanesSvg.mm(left + WIDTH_MM * grid.scale() / 2),
                LanesSvg.mm(top + HEIGHT_MM * grid.scale() / 2),
                String.join(", ", beside));
    }

    private static List<LanePlan> plans(Track track) {
        return track.lanes().stream().map(lane -> LanePlan.of(track, lane)).toList();
    }

    /** The places that a lane passes; none where there are more of them than letters, or more than can be looked through. */
    private static Set<Place> passed(List<LanePlan> plans, Grid grid) {
        Set<Place> passed = new HashSet<>();
        if (grid.rows() > MOST_ROWS || (long) grid.rows() * grid.columns() > MOST_PLACES) {
            return passed;
        }
        for (LanePlan plan : plans) {
            for (int edge = 0; edge < plan.cells(); edge++) {
                pass(plan.at(edge), plan.at(edge + 1), grid, passed);
            }
        }
        return passed;
    }

    private static void pass(PlanPose from, PlanPose to, Grid grid, Set<Place> passed) {
        double lengthMm = 1000 * Math.hypot(to.xM() - from.xM(), to.yM() - from.yM());
        int steps = (int) Math.max(1, Math.ceil(lengthMm / (STRIDE_MM * grid.scale())));
        for (int i = 0; i <= steps; i++) {
            double share = (double) i / steps;
            passed.add(grid.at(
                    1000 * (from.xM() + share * (to.xM() - from.xM())),
                    -1000 * (from.yM() + share * (to.yM() - from.yM()))));
        }
    }
}
