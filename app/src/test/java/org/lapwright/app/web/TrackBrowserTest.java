package org.lapwright.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Margin;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.lapwright.app.web.Chromium.Size;
import org.lapwright.app.web.Chromium.Window;

/** The Track page in a real browser. */
@ExtendWith(Chromium.class)
class TrackBrowserTest {
    private static final String COMPARED = "/track?track=Hill&car=Dunlin&against=plain";

    private Stage stage;

    @BeforeEach
    void open() {
        stage = new Stage().withReferenceFiles();
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private Window window(Size size, boolean scripts) {
        return Chromium.open(stage, size, ColorScheme.LIGHT, scripts);
    }

    @Test
    void oneCursorGoesRoundOnEveryDrawing() {
        try (Window window = window(Size.PHONE, true)) {
            Page page = window.go(COMPARED).page();
            page.locator("#place").focus();
            for (int i = 0; i < 5; i++) {
                page.keyboard().press("ArrowRight");
            }
            assertThat(page.locator("#place")).hasValue("5");
            assertThat(page.locator("#reading"))
                    .hasText(Pattern.compile(
                            "\\d\\.\\d{2} m: \\d\\.\\d{2} m/s, limit \\w+, [+−]?\\d\\.\\d{3} s so far"));
            assertThat(page.locator("#place")).hasAttribute("aria-valuetext", Pattern.compile("m/s, limit"));
            String before = page.locator("#here").getAttribute("cx");
            page.locator("svg.trace").first().click();
            assertThat(page.locator("#here")).not().hasAttribute("cx", before);
            String middle = page.locator("#place").inputValue();
            assertThat(Integer.parseInt(middle)).isGreaterThan(50);
            page.locator(".lanemap").click();
            assertThat(page.locator("#place")).not().hasValue(middle);
            assertThat(page.locator(".lanes li.current .sure")).containsText("9 in 10 between");
            assertThat(page.locator(".lanes li:not(.current) .sure a")).isVisible();
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void thePicturesStandWithoutAScript() {
        try (Window window = window(Size.PHONE, false)) {
            Page page = window.go(COMPARED).page();
            assertThat(page.locator(".ground")).isVisible();
            assertThat(page.locator(".losses")).isVisible();
            assertThat(page.locator("#place")).isHidden();
            assertThat(page.locator("#here")).isHidden();
            page.locator("text=By what limits").click();
            assertThat(page.locator(".ground .limit-slide").first()).isVisible();
            page.locator(".lanes li.current .sure a").click();
            assertThat(page.locator("main")).containsText("9 in 10 between");
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void anOvalIsDrawnOnAPhone() {
        try (Window window = window(Size.PHONE, true)) {
            Page page = window.go("/track/draw").page();
            page.locator("#name").fill("Attic");
            page.locator("#length-1").fill("1800");
            assertThat(page.locator("#sum")).containsText("It does not close: the end misses the start by 300.0 mm");
            page.locator("#length-3").fill("1800,0");
            assertThat(page.locator("#sum")).containsText("It closes");
            page.locator("[aria-label='Add a right turn']").click();
            assertThat(page.locator("#radius-5")).isVisible();
            assertThat(page.locator("#length-5")).isHidden();
            assertThat(page.locator("#name")).hasValue("Attic");
            page.locator("[aria-label='Remove piece 5']").click();
            assertThat(page.locator("#radius-5")).hasCount(0);
            page.locator("[aria-label='Move piece 2 up']").click();
            assertThat(page.locator("#kind-1")).hasValue("left");
            page.locator("text=Keep the track").click();
            assertThat(page.locator("[role=status]")).containsText("Saved.");
            assertThat(page.locator("h1")).hasText("Attic");
            assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isEqualTo(0);
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void anOvalIsDrawnWithoutAScript() {
        try (Window window = window(Size.NARROW, false)) {
            Page page = window.go("/track/draw").page();
            page.locator("#name").fill("Attic");
            page.locator("#length-1").fill("1700");
            page.locator("text=Work it out").click();
            assertThat(page.locator("#sum")).containsText("It does not close");
            page.locator("[aria-label='Add a straight']").click();
            assertThat(page.locator("#length-1")).hasValue("1700");
            page.locator("[aria-label='Remove piece 5']").click();
            page.locator("text=Keep the track").click();
            assertThat(page.locator("[role=status]")).containsText("Saved.");
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void aTrackIsChangedByKeyboardAlone() {
        try (Window window = window(Size.DESK, true)) {
            Page page = window.go("/track/draw?track=Hill").page();
            int before = page.locator(".laid").count();
            page.locator("[aria-label='Add after piece 2']").focus();
            page.keyboard().press("Enter");
            assertThat(page.locator("#place")).hasValue("2");
            // A key pressed while the page is being put in place goes to what is about to be replaced.
            page.waitForFunction(
                    "!document.querySelector('.htmx-request, .htmx-swapping, .htmx-settling, .htmx-added')");
            page.locator("[aria-label='Add a straight of 175 mm']").focus();
            page.keyboard().press("Space");
            assertThat(page.locator("#length-3")).hasValue("175");
            assertThat(page.locator("[aria-label='Add a straight of 175 mm']")).isFocused();
            assertThat(page.locator("#said")).hasText("Piece 3 added, a straight.");
            assertThat(page.locator(".seen")).containsText("It does not close");
            page.locator("text=Undo: Piece 3 added, a straight").click();
            assertThat(page.locator(".laid")).hasCount(before);
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void anOpenOvalIsClosedWithOneTap() {
        try (Window window = window(Size.NARROW, false)) {
            Page page = window.go("/track/draw").page();
            page.locator("#length-1").fill("1512");
            page.locator("text=Work it out").click();
            page.locator("[aria-label='Close it: straight 3 longer by 12 mm']").click();
            assertThat(page.locator("#length-3")).hasValue("1512");
            assertThat(page.locator("#sum")).containsText("It closes (gap 0.0 mm and 0.0°).");
            assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isEqualTo(0);
            assertThat(window.complaints()).isEmpty();
        }
    }

    /** US Letter is the shorter paper, A4 the narrower one. */
    @Test
    void thePlanIsOnePageOfEitherPaper() {
        try (Window window = window(Size.DESK, true)) {
            for (String track : List.of("Hill", "Long+hall")) {
                Page page = window.go("/track/print?track=" + track).page();
                for (String paper : List.of("A4", "Letter")) {
                    assertThat(sheets(page, paper)).as(track + " on " + paper).isEqualTo(1);
                }
            }
        }
    }

    @Test
    void everySheetToGlueIsOnePageOfEitherPaper() {
        try (Window window = window(Size.DESK, true)) {
            Page page = window.go("/track/print?track=Hill").page();
            page.locator("text=1:5, ").click();
            int tiles = page.locator(".tile").count();
            assertThat(tiles).isGreaterThan(1);
            assertThat(page.locator("h1")).hasText("Hill, 1:5 on " + tiles + " sheets");
            for (String paper : List.of("A4", "Letter")) {
                assertThat(sheets(page, paper)).as(paper).isEqualTo(tiles + 1);
            }
            assertThat(window.complaints()).isEmpty();
        }
    }

    private static int sheets(Page page, String paper) {
        byte[] pdf = page.pdf(new Page.PdfOptions()
                .setFormat(paper)
                .setMargin(new Margin()
                        .setTop("12mm")
                        .setBottom("12mm")
                        .setLeft("12mm")
                        .setRight("12mm")));
        return new String(pdf, StandardCharsets.ISO_8859_1).split("/Type /Page\\b(?!s)", -1).length - 1;
    }
}
