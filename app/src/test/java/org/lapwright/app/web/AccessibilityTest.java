package org.lapwright.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapwright.app.web.Chromium.Size;
import org.lapwright.app.web.Chromium.Window;

/** WCAG 2.2 at level AA as far as a program can check it, in light and dark. */
@ExtendWith(Chromium.class)
class AccessibilityTest {
    private static final List<String> PATHS = List.of(
            "/",
            "/ladder",
            "/kept",
            "/kept/1",
            "/words",
            "/words/braid",
            "/nowhere",
            // Track
            "/track",
            "/track?track=Hill&car=Dunlin&against=plain",
            "/track?track=Hill&car=Dunlin&show=limits",
            "/track/draw",
            "/track/draw?track=Hill",
            "/track/rails?track=Hill",
            "/track/box",
            "/track/print?track=Hill",
            "/track/tiles?track=Hill&scale=5",
            "/track/file",
            "/track/line",
            "/track/pieces",
            "/track/how-sure?track=Hill&lane=inner&car=Dunlin",
            "/bench",
            "/bench/car?name=magnet&track=Shed+loop",
            "/bench/guided?name=plain",
            "/bench/guided?name=plain&what=motor",
            "/bench/measure",
            "/bench/measure?name=plain",
            "/bench/file",
            "/bench/photo?name=plain",
            "/bench/classes",
            "/run/screening",
            "/run/gate",
            "/shelf",
            "/shelf/part?id=1",
            "/bench/change?name=magnet",
            "/run",
            "/bench/sheet?name=magnet",
            "/next?car=magnet&track=Shed+loop",
            "/next/learned?car=Greenshank&track=Shed+loop",
            "/next/score",
            "/next/even?track=Shed+loop&first=magnet&second=plain",
            "/next/best",
            "/bench/change?name=magnet&kind=ballast-added",
            "/bench/compare?name=magnet&with=plain");

    private static Stage stage;

    @BeforeAll
    static void open() {
        stage = new Stage().withExampleGarage().withReferenceFiles().withBench().withAPart();
        stage.garage().archive(stage.keep("Redshank", 6.5, 6.4, 1).id(), Stage.CLOCK.instant());
    }

    @AfterAll
    static void close() {
        stage.close();
    }

    static Stream<ColorScheme> colours() {
        return Stream.of(ColorScheme.LIGHT, ColorScheme.DARK);
    }

    @ParameterizedTest
    @MethodSource("colours")
    void everyPagePasses(ColorScheme colours) {
        try (Window window = Chromium.open(stage, Size.DESK, colours, true)) {
            for (String path : PATHS) {
                assertThat(violations(window.go(path).page(), colours)).as(path).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("colours")
    void theVerdictWithEverythingOpenPasses(ColorScheme colours) {
        try (Window window = Chromium.open(stage, Size.PHONE, colours, true)) {
            Page page = window.go("/?example").page();
            page.locator(".actions .primary").click();
            page.locator(".headline").waitFor();
            page.locator(".working > summary").click();
            page.locator("#word > summary").click();
            page.locator("#laps-1").fill("6214 x\n6198");
            page.locator(".question").waitFor();
            assertThat(violations(page, colours)).isEmpty();
        }
    }

    /** WCAG 2.2, 1.4.10: no scrolling sideways at 320 px. */
    @Test
    void nothingIsCutOffOnANarrowScreen() {
        try (Window window = Chromium.open(stage, Size.NARROW, ColorScheme.LIGHT, true)) {
            for (String path : PATHS) {
                Page page = window.go(path).page();
                assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                        .as(path)
                        .isEqualTo(0);
            }
            Page page = window.go("/?example").page();
            page.locator(".actions .primary").click();
            page.locator(".working > summary").click();
            assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isEqualTo(0);
        }
    }

    /** WCAG 2.2, 2.5.8 asks for 24 px; a wet thumb wants 48. */
    @ParameterizedTest
    @EnumSource(
            value = Size.class,
            names = {"PHONE", "NARROW"})
    void targetsAreLargeEnoughForAThumb(Size size) {
        try (Window window = Chromium.open(stage, size, ColorScheme.LIGHT, true)) {
            for (String path : List.of(
                    "/",
                    "/ladder",
                    "/kept",
                    "/kept/1",
                    "/track",
                    "/track?track=Hill&car=Dunlin&against=plain",
                    "/track/draw?track=Hill",
                    "/track/print?track=Hill",
                    "/track/file",
                    "/track/line",
                    "/bench",
                    "/bench/car?name=magnet&track=Shed+loop",
                    "/bench/measure?name=plain",
                    "/bench/file")) {
                Object small = window.go(path)
                        .page()
                        .evaluate(
                                "[...document.querySelectorAll('button, .button, summary, select, nav a, .pick, .kept a,"
                                        + " input:not([type=hidden], [type=radio], [type=checkbox])')]"
                                        + ".filter(e => e.checkVisibility() && !e.matches('.unseen'))"
                                        + ".filter(e => e.getBoundingClientRect().height < 47.9)"
                                        + ".map(e => e.outerHTML.slice(0, 80))");
                assertThat((List<?>) small).as(path).isEmpty();
            }
        }
    }

    /** WCAG 2.2, 1.4.12: text spacing may be widened without loss. */
    @Test
    void widerTextSpacingLosesNothing() {
        try (Window window = Chromium.open(stage, Size.PHONE, ColorScheme.LIGHT, true)) {
            Page page = window.go("/kept/1").page();
            page.evaluate("document.querySelectorAll('*').forEach(e => { e.style.lineHeight = '1.5';"
                    + " e.style.letterSpacing = '0.12em'; e.style.wordSpacing = '0.16em'; })");
            assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isEqualTo(0);
        }
    }

    /** All rules in light; in dark only what differs there. */
    private static List<String> violations(Page page, ColorScheme colours) {
        page.evaluate("document.querySelectorAll('details').forEach(fold => fold.open = true)");
        // Each drawing is checked as one picture with its text; its hundreds of parts need not be.
        AxeBuilder axe = new AxeBuilder(page).exclude("svg > *").exclude(".lapsheet tr:nth-child(n+4)");
        // Without frames in a page, the checks may run in the page itself.
        axe.setLegacyMode(true);
        if (colours == ColorScheme.DARK) {
            axe.withRules(List.of("color-contrast", "link-in-text-block"));
        } else {
            axe.withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"));
        }
        return axe.analyze().getViolations().stream()
                .map(AccessibilityTest::inWords)
                .toList();
    }

    private static String inWords(Rule rule) {
        return rule.getId() + " (" + rule.getImpact() + "): "
                + rule.getNodes().stream().limit(3).map(node -> node.getHtml()).toList();
    }
}
