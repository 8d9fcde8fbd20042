package org.lapwright.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Passed;
import org.lapwright.app.web.Chromium.Size;
import org.lapwright.app.web.Chromium.Window;

/** A phone as a stopwatch: taps become laps, and none is lost when the program is away. */
@ExtendWith(Chromium.class)
class RunBrowserTest {
    private static final int LAP_MS = 700;

    private Stage stage;

    @BeforeEach
    void open() {
        stage = new Stage().withBench();
    }

    @AfterEach
    void close() {
        stage.close();
    }

    private static void begin(Page page) {
        begin(page, "AB x 3");
    }

    private static void begin(Page page, String plan) {
        page.locator("#car").fill("plain");
        page.locator("#plan").fill(plan);
        page.locator("#warm_up").fill("0");
        page.locator("text=Begin").click();
    }

    private long taps() {
        return stage.garage().open().orElseThrow().events().stream()
                .filter(Passed.class::isInstance)
                .count();
    }

    @Test
    void tapsBecomeLaps() {
        try (Window window = Chromium.open(stage, Size.PHONE, ColorScheme.LIGHT, true)) {
            Page page = window.go("/run").page();
            begin(page);
            assertThat(page.locator(".todo")).containsText("the first pass starts the clock");
            for (int tap = 0; tap < 4; tap++) {
                page.waitForTimeout(LAP_MS);
                page.locator("#tap").click();
            }
            assertThat(page.locator(".run-laps li")).hasCount(3);
            assertThat(page.locator(".todo")).containsText("Run done.");
            assertThat(page.locator("#running")).isHidden();
            // A slow machine taps late; that a lap is told to the millisecond is what counts.
            assertThat(page.locator(".last-lap strong")).hasText(Pattern.compile("[0-9]\\.[0-9]{3}"));
            assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isEqualTo(0);
            page.locator("text=Start next run").click();
            assertThat(page.locator(".todo")).containsText("Run 2 of 2, with the change: the first pass");
            page.keyboard().press(" ");
            assertThat(page.locator(".todo")).containsText("Run 2 of 2, with the change.");
            page.waitForTimeout(LAP_MS);
            page.keyboard().press(" ");
            assertThat(page.locator(".run-laps li")).hasCount(1);
            assertThat(window.complaints()).isEmpty();
        }
    }

    /** The lap under way is shown to eyes alone; a tone for each lap comes once it was asked for, a higher one for the best. */
    @Test
    void theLapUnderWayRunsAndLapsSound() {
        try (Window window = Chromium.open(stage, Size.PHONE, ColorScheme.LIGHT, true)) {
            Page page = window.page();
            page.addInitScript("window.tones = []; window.AudioContext = class { constructor() { this.currentTime = 0;"
                    + " this.destination = {}; } createOscillator() { const tone = { frequency: { value: 0 },"
                    + " connect: to => to, start: () => window.tones.push(tone.frequency.value), stop: () => {} };"
                    + " return tone; } createGain() { return { gain: { setValueAtTime: () => {},"
                    + " exponentialRampToValueAtTime: () => {} }, connect: to => to }; } };");
            window.go("/run");
            begin(page);
            assertThat(page.locator("#running")).isHidden();
            page.locator("#tone").check();
            page.locator("#tap").click();
            assertThat(page.locator("#running .time")).hasText(Pattern.compile("0\\.[1-9] s"));
            assertThat(page.locator("#running")).hasAttribute("aria-hidden", "true");
            page.waitForTimeout(LAP_MS + 900);
            page.locator("#tap").click();
            assertThat(page.locator(".run-laps li")).hasCount(1);
            page.waitForTimeout(LAP_MS);
            page.locator("#tap").click();
            assertThat(page.locator(".run-laps li")).hasCount(2);
            page.waitForFunction("window.tones.length === 2");
            assertThat(page.evaluate("window.tones.join()")).isEqualTo("880,1320");
            assertThat(window.complaints()).isEmpty();
        }
    }

    private static void tap(Page page, int times) {
        for (int tap = 0; tap < times; tap++) {
            page.waitForTimeout(LAP_MS);
            page.locator("#tap").click();
        }
    }

    /** With nothing but a phone: before, after, after, before, held up once, judged at the end and kept. */
    @Test
    void aWholeSessionByTapsToItsVerdict() {
        try (Window window = Chromium.open(stage, Size.PHONE, ColorScheme.LIGHT, true)) {
            Page page = window.go("/run").page();
            begin(page, "ABBA x 3");
            tap(page, 4);
            page.locator("text=Start next run").click();
            assertThat(page.locator(".todo")).containsText("Run 2 of 4");
            tap(page, 2);
            page.locator("button:has-text('Pause')").click();
            assertThat(page.locator(".todo")).containsText("Paused.");
            page.locator("button:has-text('Go on')").click();
            assertThat(page.locator(".todo")).containsText("the first pass starts the clock");
            tap(page, 3);
            for (int run = 3; run <= 4; run++) {
                page.locator("text=Start next run").click();
                assertThat(page.locator(".todo")).containsText("Run " + run + " of 4");
                tap(page, 4);
            }
            assertThat(page.locator(".todo")).containsText("All runs are driven.");
            assertThat(page.locator("#now .headline"))
                    .containsText(Pattern.compile("Not sure yet|Level|After is (faster|slower)|a lap (faster|slower)"));
            page.locator("text=Stop and keep it").click();
            assertThat(page.locator("h1")).containsText("plain");
            assertThat(page.locator("main")).containsText("12 in 4 runs");
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void tapsWaitWhileTheProgramIsAway() {
        try (Window window = Chromium.open(stage, Size.PHONE, ColorScheme.DARK, true)) {
            Page page = window.go("/run").page();
            begin(page);
            page.locator("#tap").click();
            assertThat(page.locator(".todo")).containsText("without the change.");
            page.route("**/api/passes", route -> route.abort());
            for (int tap = 0; tap < 2; tap++) {
                page.waitForTimeout(LAP_MS);
                page.locator("#tap").click();
            }
            assertThat(page.locator("#link")).containsText("taps wait here, safe");
            assertThat(taps()).isEqualTo(1);
            page.unroute("**/api/passes");
            assertThat(page.locator(".run-laps li")).hasCount(2);
            assertThat(page.locator("#link")).isHidden();
            assertThat(taps()).isEqualTo(3);
        }
    }
}
