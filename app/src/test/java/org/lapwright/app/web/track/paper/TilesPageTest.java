package org.lapwright.app.web.track.paper;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.lapwright.app.web.view.AssetPaths;
import org.lapwright.app.web.view.Shell;

class TilesPageTest {
    private static final Shell SHELL = new Shell("Test", Shell.Tab.TRACK, new AssetPaths("", "", "", ""));

    /**
     * By hand: with its margin of 30 mm the drawing of this oval is 2,460 mm wide and 960 mm high, from 880 mm above the timing
     * line on. At 1:2 a sheet holds 330 by 420 mm, so there are 8 columns and 3 rows. The last row begins 40 mm above the timing line;
     * there the outer lane, a circle of 450 mm about a place 400 mm up, is within 450 sin(arccos(360/450)) = 270 mm of the
     * straight's ends. That reaches the first column, which ends 150 mm before the straight, but not the last, which begins
     * 330 mm behind it.
     */
    @Test
    void sheetsThatNoLanePassesAreLeftOut() {
        TilesPage page = TilesPage.of(SHELL, Ovals.oval(1500, 400), 2, "/").orElseThrow();
        assertThat(page.sheets()).hasSize(8 * 3 - 1);
        assertThat(page.empty()).containsExactly(new TilesPage.Frame("1830.00", "-40.00", "330.00", "420.00"));
        TilesPage.Sheet first = page.sheets().get(0);
        assertThat(first.viewBox()).isEqualTo("-480.00 -880.00 350.00 440.00");
        assertThat(first.name()).isEqualTo("A1");
        assertThat(first.beside()).isEqualTo("A2 to the right, B1 below");
        assertThat(page.sheetWidth()).isEqualTo("175.00");
        assertThat(page.sheetHeight()).isEqualTo("220.00");
    }

    @Test
    void whatFitsOnePageNeedsNoSheetsAndAHallTakesTooMany() {
        assertThat(TilesPage.choices(Ovals.oval(100, 100)))
                .extracting(TilesPage.Choice::scale)
                .doesNotContain(5, 10);
        assertThat(TilesPage.choices(Ovals.oval(40_000, 15_000)))
                .extracting(TilesPage.Choice::scale)
                .doesNotContain(1, 2);
        assertThat(TilesPage.of(SHELL, Ovals.oval(1500, 400), 3, "/")).isEmpty();
    }

    /** Every place of the oval, found here from straights and circles, is on a sheet. */
    @Property(tries = 60)
    void everyPlaceOfTheLanesIsOnASheet(
            @ForAll @DoubleRange(min = 300, max = 3000) double straightMm,
            @ForAll @DoubleRange(min = 200, max = 900) double radiusMm,
            @ForAll @IntRange(min = 0, max = 359) int degrees,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        TilesPage page =
                TilesPage.of(SHELL, Ovals.oval(straightMm, radiusMm), 5, "/").orElse(null);
        if (page == null) {
            return;
        }
        double angle = Math.toRadians(degrees);
        double outer = radiusMm + 50;
        double x = (Math.sin(angle) > 0 ? straightMm : 0) + outer * Math.sin(angle);
        double y = radiusMm - outer * Math.cos(angle);
        assertThat(isOnASheet(page, x, -y)).isTrue();
        assertThat(isOnASheet(page, share * straightMm, 50)).isTrue();
    }

    private static boolean isOnASheet(TilesPage page, double x, double y) {
        return page.sheets().stream().map(TilesPage.Sheet::frame).anyMatch(frame -> {
            double left = Double.parseDouble(frame.x());
            double top = Double.parseDouble(frame.y());
            // To the hundredths in which the frame is written, and the chord of a cell.
            return x > left - 0.5
                    && x < left + Double.parseDouble(frame.width()) + 0.5
                    && y > top - 0.5
                    && y < top + Double.parseDouble(frame.height()) + 0.5;
        });
    }
}
