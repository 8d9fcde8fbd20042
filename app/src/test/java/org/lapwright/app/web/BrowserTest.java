package org.lapwright.app.web;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.Media;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lapwright.app.web.Chromium.Size;
import org.lapwright.app.web.Chromium.Window;

/** The ways through the pages in a real browser: thumb, mouse, keyboard, without a script. */
@ExtendWith(Chromium.class)
class BrowserTest {
    private static final String BEFORE = Visitor.laps(6.5, 20, 1);
    private static final String AFTER = Visitor.laps(6.3, 19, 2) + "8.3";

    private Stage stage;

    @BeforeEach
    void open() {
        stage = new Stage();
    }

    @AfterEach
    void close() {
        stage.close();
    }

    @ParameterizedTest
    @EnumSource(Size.class)
    void pasteLookKeep(Size size) {
        try (Window window = window(size, true)) {
            Page page = window.go("/").page();
            page.locator("#laps-1").fill(BEFORE);
            assertThat(page.locator("#preview-1")).containsText("20 laps · pace 6.5");
            page.locator("#laps-2").fill(AFTER);
            assertThat(page.locator("#preview-2")).containsText("came off or stopped");
            page.locator(".actions .primary").click();
            assertThat(page.locator(".headline")).containsText("a lap faster, somewhere between");
            assertThat(page.locator("#options")).containsText("Plan fixed at your first look: A B × 20.");
            assertThat(page.locator("#said")).containsText("a lap faster");
            assertThat(page.locator(".stale")).isHidden();
            page.locator("#car").fill("Redshank");
            page.locator("#track").fill("Shed loop");
            page.locator("[data-press=keep]").click();
            assertThat(page.locator("[role=status]")).containsText("Saved.");
            page.locator("[role=status] a").click();
            assertThat(page.locator("h1")).hasText("Ladder: Shed loop");
            assertThat(page.locator(".ladder")).containsText("Redshank");
            assertThat(page.evaluate("document.documentElement.scrollWidth - innerWidth"))
                    .isEqualTo(0);
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void everythingWorksWithoutAScript() {
        try (Window window = window(Size.PHONE, false)) {
            Page page = window.go("/").page();
            page.locator("#laps-1").fill(BEFORE);
            page.locator(".actions >> text=Check what was read").click();
            assertThat(page.locator("#preview-1")).containsText("20 laps");
            page.locator("text=Add another run").click();
            assertThat(page.locator("#laps-1")).hasValue(BEFORE);
            page.locator("#laps-2").fill(AFTER);
            page.locator("#laps-3").fill(AFTER);
            page.locator("#options > summary").click();
            page.locator("#plan").fill("ABB x 20");
            page.locator(".actions .primary").click();
            assertThat(page.locator(".headline")).containsText("a lap faster");
            assertThat(page.locator("#options")).containsText("Your plan is fixed: A B B × 20.");
            page.locator(".working > summary").click();
            assertThat(page.locator(".lapsheet")).hasCount(3);
            page.locator("#word > summary").click();
            page.locator("#say-run").fill("2");
            page.locator("#say-lap").fill("20");
            page.locator("#say-reason").fill("braked for the cat");
            page.locator("[data-press=say]").click();
            assertThat(page.locator(".spoken")).containsText("Run 2, lap 20 is clean, you say");
            page.locator("#car").fill("Redshank");
            page.locator("#track").fill("Shed loop");
            page.locator("[data-press=keep]").click();
            assertThat(page.locator("[role=status]")).containsText("Saved.");
            page.locator("text=Remove from the lists").click();
            page.locator("text=Bring it back").click();
            page.locator("nav >> text=Kept").click();
            assertThat(page.locator(".kept")).containsText("Redshank");
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void theKeyboardIsEnough() {
        try (Window window = window(Size.DESK, true)) {
            Page page = window.go("/").page();
            page.keyboard().press("Tab");
            assertThat(page.locator(".skip")).isFocused();
            page.keyboard().press("Enter");
            tabTo(page, "#laps-1");
            page.keyboard().insertText(BEFORE);
            page.keyboard().press("Tab");
            assertThat(page.locator("#laps-2")).isFocused();
            page.keyboard().insertText(AFTER);
            page.keyboard().press("Tab");
            assertThat(page.locator(".actions .primary")).isFocused();
            assertThat(outline(page)).as("the focus is seen").isGreaterThanOrEqualTo(2);
            page.keyboard().press("Enter");
            assertThat(page.locator(".headline")).containsText("a lap faster");
            tabTo(page, ".working > summary");
            page.keyboard().press("Enter");
            assertThat(page.locator(".method")).isVisible();
            tabTo(page, "#car");
            page.keyboard().insertText("Redshank");
            page.keyboard().press("Tab");
            page.keyboard().insertText("Shed loop");
            page.keyboard().press("Enter");
            assertThat(page.locator("[role=status]")).containsText("Saved.");
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void runsAreAddedSwitchedAndRemoved() {
        try (Window window = window(Size.PHONE, true)) {
            Page page = window.go("/").page();
            page.locator("#laps-1").fill(BEFORE);
            page.locator("text=Add another run").click();
            assertThat(page.locator("#title-3")).containsText("Run 3");
            assertThat(page.locator("#title-3")).isFocused();
            assertThat(page.locator("#laps-1")).hasValue(BEFORE);
            page.locator("#laps-3").fill(AFTER);
            assertThat(page.locator("#preview-3")).containsText("20 laps");
            page.locator("[aria-label='Remove run 2']").click();
            assertThat(page.locator("#laps-2")).hasValue(AFTER);
            assertThat(page.locator("#laps-3")).hasCount(0);
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void aVerdictSaysWhenItsLapsHaveChanged() {
        try (Window window = window(Size.DESK, true)) {
            Page page = window.go("/?example").page();
            page.locator(".actions .primary").click();
            assertThat(page.locator(".headline")).isVisible();
            page.locator("#laps-2").fill(BEFORE);
            assertThat(page.locator(".stale")).isVisible();
            page.locator("#car").fill("Redshank");
            page.locator("#track").fill("Shed loop");
            page.locator("[data-press=keep]").click();
            assertThat(page.locator(".keep .notice")).containsText("Nothing is saved yet");
            assertThat(page.locator("#car")).hasValue("Redshank");
            assertThat(stage.garage().size()).isZero();
        }
    }

    @Test
    void aLapLeftOutIsOverruledFromTheWorking() {
        try (Window window = window(Size.PHONE, true)) {
            Page page = window.go("/?example").page();
            page.locator(".actions .primary").click();
            assertThat(page.locator(".verdict"))
                    .containsText("Left out of the pace: 2 of 22 laps before, 1 of 22 laps after");
            page.locator(".working > summary").click();
            page.locator("[aria-label='Say otherwise of run 1, lap 9']").click();
            assertThat(page.locator("#say-reason")).isFocused();
            assertThat(page.locator("#say-run")).hasValue("1");
            assertThat(page.locator("#say-lap")).hasValue("9");
            page.keyboard().insertText("braked for the cat");
            page.keyboard().press("Enter");
            assertThat(page.locator(".spoken")).containsText("Run 1, lap 9 is clean, you say");
            assertThat(page.locator("#preview-1")).containsText("You say clean");
            page.locator("text=Take back").click();
            assertThat(page.locator(".spoken")).hasCount(0);
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void aQuestionIsAnsweredWithOneTap() {
        try (Window window = window(Size.PHONE, true)) {
            Page page = window.go("/").page();
            page.locator("#laps-1").fill("6,214,6,198,6,301,6,245");
            page.locator("text=the first lap is 6.214 s").click();
            assertThat(page.locator(".question")).hasCount(0);
            assertThat(page.locator("#preview-1")).containsText("Ask again");
            page.locator("text=Ask again").click();
            assertThat(page.locator(".question")).hasCount(1);
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void aServerThatIsGoneLosesNothing() {
        try (Window window = window(Size.PHONE, true)) {
            Page page = window.go("/").page();
            page.locator("#laps-1").fill(BEFORE);
            assertThat(page.locator("#preview-1")).containsText("20 laps");
            stage.close();
            page.locator(".actions .primary").click();
            assertThat(page.locator("#notices"))
                    .containsText("The program does not answer. Your laps are still in the boxes.");
            assertThat(page.locator("#laps-1")).hasValue(BEFORE);
        }
    }

    @Test
    void hostileNamesStayText() {
        String hostile = "<img src=x onerror=alert(1)>";
        try (Window window = window(Size.DESK, true)) {
            Page page = window.go("/").page();
            page.locator("#laps-1").fill(BEFORE + hostile);
            assertThat(page.locator("#preview-1")).containsText("'<img' is not a time");
            page.locator("#laps-2").fill(AFTER);
            page.locator(".actions .primary").click();
            page.locator("#car").fill(hostile);
            page.locator("#track").fill(hostile);
            page.locator("#change").fill("\"><script>alert(1)</script>");
            page.locator("[data-press=keep]").click();
            assertThat(page.locator("h1")).containsText(hostile);
            page.locator("[role=status] a").click();
            assertThat(page.locator(".ladder .car")).hasText(hostile);
            page.navigate("/kept");
            assertThat(page.locator(".kept")).containsText("<script>");
            page.navigate("/?example");
            page.locator(".actions .primary").click();
            assertThat(page.locator("#cars option")).hasAttribute("value", hostile);
            assertThat(window.complaints()).isEmpty();
        }
    }

    @Test
    void aPageOfAnotherSiteCannotPost() {
        try (Window window = window(Size.DESK, true)) {
            Page page = window.go("/").page();
            String other = stage.url("/").replace("127.0.0.1", "localhost");
            page.navigate(other + "words");
            Object status = page.evaluate(
                    "url => fetch(url, {method: 'POST', mode: 'no-cors', body: new URLSearchParams({do: 'check'})})"
                            + ".then(() => 'sent', () => 'blocked')",
                    stage.url("/example/remove"));
            assertThat(List.of("sent", "blocked")).contains(String.valueOf(status));
            assertThat(stage.garage().exampleState().name()).isEqualTo("ABSENT");
        }
    }

    @Test
    void paperGetsTheVerdictAndNotTheButtons() {
        try (Window window = window(Size.DESK, true)) {
            Page page = window.go("/?example").page();
            page.locator(".actions .primary").click();
            assertThat(page.locator(".headline")).isVisible();
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertThat(page.locator(".headline")).isVisible();
            assertThat(page.locator("nav")).isHidden();
            assertThat(page.locator(".actions .primary")).isHidden();
            assertThat(page.locator("#car")).isHidden();
            assertThat(page.locator("body")).hasCSS("color", Pattern.compile("rgb\\(0, 0, 0\\)"));
        }
    }

    private Window window(Size size, boolean scripts) {
        return Chromium.open(stage, size, ColorScheme.LIGHT, scripts);
    }

    private static void tabTo(Page page, String selector) {
        for (int i = 0; i < 60; i++) {
            if (Boolean.TRUE.equals(
                    page.evaluate("s => document.activeElement && document.activeElement.matches(s)", selector))) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("the Tab key does not reach " + selector);
    }

    private static double outline(Page page) {
        return Double.parseDouble(
                String.valueOf(page.evaluate("parseFloat(getComputedStyle(document.activeElement).outlineWidth)")));
    }
}
