package org.lapwright.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.lapwright.app.web.Chromium.Size;
import org.lapwright.app.web.Chromium.Window;

/** Somebody new to the program enters their own track, in each of the ways there are, and sees the speeds on it. */
@ExtendWith(Chromium.class)
class OwnTrackBrowserTest {
    private static final double RADIUS_MM = 350;
    private static final double STRAIGHT_MM = 175;

    private Stage stage;

    @BeforeEach
    void open() {
        stage = new Stage().withReferenceFiles();
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private Window window(Size size) {
        return Chromium.open(stage, size, ColorScheme.LIGHT, true);
    }

    private static void showsSpeedByLane(Page page, String name, int lanes) {
        page.locator("text=Keep the track").click();
        assertThat(page.locator("h1")).hasText(name);
        assertThat(page.locator(".lanes li")).hasCount(lanes);
        for (Locator lane : page.locator(".lanes li").all()) {
            assertThat(lane).containsText(Pattern.compile("\\d\\.\\d{3} s"));
        }
        assertThat(page.locator(".ground .lane[class*=speed-]").first()).isVisible();
        assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                .isEqualTo(0);
    }

    private static double metres(Page page, String lane) {
        Matcher found = Pattern.compile("lane " + lane + ": (\\d+\\.\\d+) m")
                .matcher(page.locator("#sum").innerText());
        assertThat(found.find()).as("length of lane %s", lane).isTrue();
        return Double.parseDouble(found.group(1));
    }

    /** An oval of four pieces on a phone: a name, two lengths, the power, and it is there. */
    @Test
    void anOvalOnAPhone() {
        try (Window window = window(Size.PHONE)) {
            Page page = window.go("/track").page();
            page.locator("a[href='/track/draw']").first().click();
            page.locator("#name").fill("Loft");
            page.locator("#length-1").fill("2100");
            assertThat(page.locator("#sum")).containsText("It does not close");
            page.locator("[aria-label='Close it: straight 3 longer by 600 mm']").click();
            assertThat(page.locator("#sum")).containsText("It closes");
            // Two straights and a circle whose radius is less, and more, by the offset of the lane.
            double middle = (metres(page, "1") + metres(page, "2")) / 2;
            assertThat(1000 * middle).isCloseTo(2 * 2100 + 2 * Math.PI * 400, within(0.6));
            assertThat(page.locator("#sum")).containsText("on lane 2 could do");
            showsSpeedByLane(page, "Loft", 2);
            assertThat(window.complaints()).isEmpty();
        }
    }

    /** Twenty pieces by taps on the kit: a figure of eight that bridges itself, with lanes that cross over and back. */
    @Test
    void aLoopOfTwentyPiecesWithACrossingAndABridge() {
        try (Window window = window(Size.DESK)) {
            Page page = window.go("/track/draw").page();
            page.locator("#name").fill("Over and under");
            for (int left = 3; left >= 0; left--) {
                page.locator("[aria-label='Remove piece 1']").click();
                assertThat(page.locator(".laid")).hasCount(left);
            }
            add(page, 2, "Add a straight of 175 mm");
            add(page, 6, "Add a left turn, radius 350 mm, 45°");
            add(page, 4, "Add a straight of 175 mm");
            add(page, 6, "Add a right turn, radius 350 mm, 45°");
            add(page, 2, "Add a straight of 175 mm");
            assertThat(page.locator("#sum")).containsText("It closes (gap 0.0 mm and 0.0°).");
            // Each lobe is three quarters of a circle, one to the left and one to the right: lanes are alike.
            double whole = 8 * STRAIGHT_MM + 2 * 1.5 * Math.PI * RADIUS_MM;
            assertThat(1000 * metres(page, "1")).isCloseTo(whole, within(0.6));
            assertThat(1000 * metres(page, "2")).isCloseTo(whole, within(0.6));
            raise(page);
            press(page, 1, "Lanes swap on piece 1");
            press(page, 20, "Lanes swap on piece 20");
            assertThat(page.locator("#sum .lane.clear")).hasCount(1);
            assertThat(page.locator("#sum")).containsText("could do");
            showsSpeedByLane(page, "Over and under", 2);
            assertThat(window.complaints()).isEmpty();
        }
    }

    private static void add(Page page, int times, String piece) {
        for (int i = 0; i < times; i++) {
            int laid = page.locator(".laid").count();
            page.locator("[aria-label='" + piece + "']").click();
            assertThat(page.locator(".laid")).hasCount(laid + 1);
        }
    }

    /** Up over two pieces, down over the next two: the plan comes out shorter, and the offer makes up for it. */
    private static void raise(Page page) {
        for (int piece = 9; piece <= 12; piece++) {
            Locator rise = page.locator("#rise-" + piece);
            if (!rise.isVisible()) {
                page.locator("#piece-" + piece + " summary").click();
            }
            rise.fill(piece <= 10 ? "40" : "-40");
        }
        assertThat(page.locator("#sum")).containsText("It does not close");
        page.locator(".offers button[aria-label^='Close it: ']").first().click();
        assertThat(page.locator("#sum")).containsText("It closes");
        assertThat(page.locator(".laid")).hasCount(20);
    }

    private static void press(Page page, int piece, String label) {
        Locator button = page.locator("[aria-label='" + label + "']");
        if (!button.isVisible()) {
            page.locator("#piece-" + piece + " summary").click();
        }
        button.click();
        assertThat(page.locator(".back")).containsText("Undo");
    }

    /** A routed line: its drawing, one length that is known, and the speeds are there before it is kept. */
    @Test
    void aRoutedLineFromADrawing() {
        try (Window window = window(Size.DESK)) {
            Page page = window.go("/track/line").page();
            String drawing = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 300 120\">"
                    + "<path d=\"M60 10H240A50 50 0 0 1 240 110H60A50 50 0 0 1 60 10Z\" fill=\"none\" stroke=\"#000\"/></svg>";
            page.locator("#file")
                    .setInputFiles(
                            new FilePayload("routed.svg", "image/svg+xml", drawing.getBytes(StandardCharsets.UTF_8)));
            page.locator("text=Look at it").click();
            page.locator("#known").fill("6741,6");
            page.locator("#name").fill("Routed");
            page.locator("text=Look at it").click();
            // 2 × 180 + 2 π × 50 units are 6741.6 mm, so a unit is 10 mm.
            assertThat(page.locator("section.sheet")).containsText("6.742 m long, 2.800 m from side to side");
            assertThat(page.locator("section.sheet")).containsText("on lane 1 could do");
            assertThat(page.locator(".ground .lane[class*=speed-]").first()).isVisible();
            showsSpeedByLane(page, "Routed", 2);
            assertThat(window.complaints()).isEmpty();
        }
    }
}
