package org.lapwright.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lapwright.app.web.Chromium.Size;
import org.lapwright.app.web.Chromium.Window;

/** The bench in a real browser: a car is measured, looked at and changed. */
@ExtendWith(Chromium.class)
class BenchBrowserTest {
    private Stage stage;

    @BeforeEach
    void open() {
        stage = new Stage().withBench();
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private static void typeKnot(Page page) {
        page.locator("#name").fill("Knot");
        page.locator("#mass-total_g").fill("73,1");
        page.locator("#chassis-guide_to_rear_axle_mm").fill("98");
        page.locator("#chassis-rear_track_mm").fill("50");
        page.locator("#rear_tyre-diameter_mm").fill("20");
        page.locator("#gears-pinion_teeth").fill("11");
        page.locator("#gears-axle_teeth").fill("28");
        page.locator("#motor-no_load_rpm").fill("20500");
        page.locator("#motor-test_voltage_v").fill("12");
    }

    /** Without a script on the narrow screens, so that the page is known to need none. */
    @ParameterizedTest
    @EnumSource(Size.class)
    void measureLookChange(Size size) {
        try (Window window = Chromium.open(stage, size, ColorScheme.LIGHT, size == Size.DESK)) {
            Page page = window.go("/bench").page();
            page.locator("main >> text=Measure a car").click();
            typeKnot(page);
            page.locator("#mass-total_g").fill("7,3o1");
            page.locator("text=Keep and show").click();
            assertThat(page.locator("#mass-total_g-problem")).containsText("'7,3o1' is not a number");
            assertThat(page.locator("#chassis-rear_track_mm")).hasValue("50");
            page.locator("#mass-total_g").fill("73,1");
            page.locator("text=Keep and show").click();
            assertThat(page.locator("[role=status]")).containsText("Saved.");
            assertThat(page.locator("h1")).hasText("Knot");
            page.locator("#track").selectOption("Shed loop");
            page.locator("text=Show").last().click();
            assertThat(page.locator(".lane").first()).containsText("9 in 10 between");
            page.locator("text=What makes it uncertain").first().click();
            assertThat(page.locator(".causes").first()).containsText("To know it better:");
            page.locator(".worked-out summary").nth(9).click();
            assertThat(page.locator(".worked-out").nth(9)).containsText("grip");
            assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isEqualTo(0);
            page.locator("text=Measure again").click();
            page.locator("summary:has-text('Grip and drag')").click();
            page.locator("#rear_tyre-grip").fill("1,1");
            page.locator("text=Keep and show").click();
            page.locator("summary:has-text('What is written down')").isVisible();
            assertThat(page.locator(".written")).containsText("1.1 ± 0.055");
            // The browser notes the refusal of the form with the slip in it.
            assertThat(window.complaints()).hasSize(1).allMatch(complaint -> complaint.contains("422"));
        }
    }

    /** Texts of the drawing lie within it, as the fonts of this machine have them; that labels stay apart is a law of its own. */
    @Test
    void theDrawingsWordsCanBeRead() {
        for (Size size : new Size[] {Size.NARROW, Size.DESK}) {
            try (Window window = Chromium.open(stage, size, ColorScheme.DARK, true)) {
                Page page = window.go("/bench/car?name=magnet").page();
                assertThat(page.evaluate(
                                "(() => { const plan = document.querySelector('.plan').getBoundingClientRect();"
                                        + " return [...document.querySelectorAll('.plan text')].map(t => t.getBoundingClientRect())"
                                        + ".filter(b => b.left < plan.left || b.right > plan.right + 1).length; })()"))
                        .isEqualTo(0);
            }
        }
    }
}
