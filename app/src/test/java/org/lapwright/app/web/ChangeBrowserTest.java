package org.lapwright.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lapwright.app.web.Chromium.Size;
import org.lapwright.app.web.Chromium.Window;

/** Changes are logged in a real browser: few taps, ballast by touch, undo. */
@ExtendWith(Chromium.class)
class ChangeBrowserTest {
    private static final int FEW_TAPS = 4;

    private Stage stage;
    private int taps;

    @BeforeEach
    void open() {
        stage = new Stage().withBench();
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private void tap(Locator what) {
        what.click();
        taps++;
    }

    /** Without a script on the narrow screens, so that the page is known to need none. */
    @ParameterizedTest
    @EnumSource(Size.class)
    void aChangeIsLoggedInFourTaps(Size size) {
        try (Window window = Chromium.open(stage, size, ColorScheme.LIGHT, size == Size.DESK)) {
            Page page = window.go("/bench/car?name=plain").page();
            tap(page.locator("text=Log a change"));
            tap(page.locator(".tiles >> text=Shim in"));
            tap(page.locator("text=Log it"));
            assertThat(page.locator("[role=status]")).containsText("Logged. Last change: shim of 0.25 mm");
            assertThat(taps).isLessThanOrEqualTo(FEW_TAPS);
            assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isEqualTo(0);
            page.locator("text=Undo it").click();
            assertThat(page.locator("[role=status]")).containsText("Undone.");
            page.locator("text=All 2 set-ups").click();
            assertThat(page.locator(".step.present")).containsText("as it was first");
            assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isEqualTo(0);
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void ballastGoesWhereTheFingerPoints() {
        try (Window window = Chromium.open(stage, Size.DESK, ColorScheme.DARK, true)) {
            Page page = window.go("/bench/change?name=plain&kind=ballast-added").page();
            Locator drawing = page.locator("[data-place] svg");
            double scale = Double.parseDouble(page.locator("[data-place]").getAttribute("data-scale"));
            double axleX = Double.parseDouble(page.locator("[data-place]").getAttribute("data-axle-x"));
            double axleY = Double.parseDouble(page.locator("[data-place]").getAttribute("data-axle-y"));
            drawing.scrollIntoViewIfNeeded();
            BoundingBox box = drawing.boundingBox();
            double unit = box.width / 360;
            // 30 mm ahead of the axle, 10 mm left.
            page.mouse().click(box.x + (axleX - 10 * scale) * unit, box.y + (axleY - 30 * scale) * unit);
            assertThat(page.locator("#f-x_mm")).hasValue("30");
            assertThat(page.locator("#f-y_mm")).hasValue("10");
            assertThat(page.locator("#brings .headline")).containsText("30 mm ahead of the axle, 10 mm left");
            page.locator("#f-mass_g").fill("7");
            assertThat(page.locator("#brings .headline")).containsText("7 g added");
            page.locator("text=Log it").click();
            assertThat(page.locator("[role=status]")).containsText("7 g added 30 mm ahead of the axle, 10 mm left");
            page.locator("text=Did it help?").click();
            assertThat(page.locator(".note")).containsText("About plain: 7 g added");
            assertThat(window.complaints()).isEmpty();
        }
    }
}
