package org.lapwright.app.web.track.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.web.view.AssetPaths;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.track.Track;

/** The path grammar is that of SVG 2, 9.3; lengths along it are measured here by themselves. */
class LanesSvgTest {
    private static final Pattern STEP = Pattern.compile("([MLA])([-\\d. ]+)");
    private static final Shell SHELL = new Shell("Test", Shell.Tab.TRACK, new AssetPaths("", "", "", ""));

    /** Chord c of an arc of radius r that is shorter than half a circle: 2 r asin(c / 2r). */
    private static double length(String d) {
        Matcher steps = STEP.matcher(d);
        double x = 0;
        double y = 0;
        double length = 0;
        while (steps.find()) {
            String[] numbers = steps.group(2).strip().split(" ");
            double toX = Double.parseDouble(numbers[numbers.length - 2]);
            double toY = Double.parseDouble(numbers[numbers.length - 1]);
            double chord = Math.hypot(toX - x, toY - y);
            if (steps.group(1).equals("A")) {
                double radius = Double.parseDouble(numbers[0]);
                assertThat(numbers[3]).as("the short way round").isEqualTo("0");
                length += 2 * radius * Math.asin(chord / (2 * radius));
            } else if (steps.group(1).equals("L")) {
                length += chord;
            }
            x = toX;
            y = toY;
        }
        return length;
    }

    @Test
    void theLanesOfAnOvalHaveTheirLength() {
        LanesSvg drawing = LanesSvg.of(Ovals.oval(1500, 400));
        assertThat(length(drawing.lanes().get(0).d())).isCloseTo(3000 + 2 * Math.PI * 350, within(0.1));
        assertThat(length(drawing.lanes().get(1).d())).isCloseTo(3000 + 2 * Math.PI * 450, within(0.1));
        // From −450 − 30 to 1950 + 30, and from −850 − 30 to 50 + 30, as lanes lie 50 mm beside the middle.
        assertThat(drawing.viewBox()).isEqualTo("-480.00 -880.00 2460.00 960.00");
        assertThat(drawing.startLine()).isEqualTo("M0.00 -65.00L0.00 65.00");
    }

    @Test
    void everyReferenceTrackIsDrawnInTrueSize() {
        for (String name : List.of("hill", "long", "loop")) {
            Track track = TrackFile.read(Reference.text(name + ".track.json"))
                    .accepted()
                    .orElseThrow()
                    .track();
            LanesSvg drawing = LanesSvg.of(track);
            for (int i = 0; i < track.lanes().size(); i++) {
                double lapMm = 1000 * track.lengthM(track.lanes().get(i));
                // Ramps are shorter on the plan; these rise by little.
                assertThat(length(drawing.lanes().get(i).d())).as(name).isCloseTo(lapMm, within(0.003 * lapMm));
            }
        }
    }

    /** Turned or upright, the drawing with its bar fits both papers between margins of 12 mm, and all of it is on it. */
    @Property(tries = 200)
    void theDrawingFitsThePage(
            @ForAll @DoubleRange(min = 10, max = 40_000) double straightMm,
            @ForAll @DoubleRange(min = 100, max = 15_000) double radiusMm) {
        PrintPage page = PrintPage.of(SHELL, Ovals.oval(straightMm, radiusMm));
        PrintPage.Plan plan = page.plan();
        int scale = Integer.parseInt(page.scale().substring(2));
        double width = Double.parseDouble(plan.width());
        double height = Double.parseDouble(plan.height());
        assertThat(width).isLessThanOrEqualTo(186);
        assertThat(height).isLessThanOrEqualTo(200);
        List<Double> box = new ArrayList<>();
        Matcher numbers = Pattern.compile("[-\\d.]+").matcher(plan.viewBox());
        numbers.results().map(MatchResult::group).forEach(text -> box.add(Double.parseDouble(text)));
        assertThat(box.get(2) / width)
                .as("millimetres of track in one of paper")
                .isCloseTo(scale, within(0.01 * scale));
        assertThat(box.get(3) / height).isCloseTo(scale, within(0.01 * scale));
        assertThat(Double.parseDouble(plan.bar()) / scale).isBetween(5.0, 100.0);
    }

    /** (x, y) goes to (−y, x) when turned by 90°, then is moved; all corners must land in the box. */
    @Test
    void whatIsTallStandsUprightAndWhatIsWideToo() {
        PrintPage wide = PrintPage.of(SHELL, Ovals.oval(8200, 400));
        assertThat(wide.plan().placed()).contains("rotate(90)");
        LanesSvg drawing = wide.plan().drawing();
        Matcher moved = Pattern.compile("translate\\(([-\\d.]+) ([-\\d.]+)\\)")
                .matcher(wide.plan().placed());
        assertThat(moved.find()).isTrue();
        double right = Double.parseDouble(moved.group(1));
        double down = Double.parseDouble(moved.group(2));
        double[] box = {drawing.leftMm(), drawing.topMm()};
        assertThat(-(box[1] + drawing.heightMm()) + right).isCloseTo(0, within(0.02));
        assertThat(box[0] + down).isCloseTo(0, within(0.02));
        assertThat(PrintPage.of(SHELL, Ovals.oval(200, 400)).plan().placed()).doesNotContain("rotate");
    }
}
