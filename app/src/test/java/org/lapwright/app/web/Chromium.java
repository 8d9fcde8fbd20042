package org.lapwright.app.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;

/** One Chromium for all browser tests; without one on the machine they are skipped. */
final class Chromium implements BeforeAllCallback {
    private static final Path BINARY = Path.of("/usr/bin/chromium");
    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    /** Set once by the first class that needs it. */
    private static volatile Running running = new Running(null, null);

    @Override
    public void beforeAll(ExtensionContext context) {
        Assumptions.assumeTrue(Files.isExecutable(BINARY), BINARY + " is not installed");
        context.getRoot()
                .getStore(Namespace.create(Chromium.class))
                .computeIfAbsent("running", key -> running = Running.launch(), Running.class);
    }

    /** A fresh window. */
    static Window open(Stage stage, Size size, ColorScheme colours, boolean scripts) {
        Browser browser = running.browser();
        if (browser == null) {
            throw new IllegalStateException("Chromium is not running; extend the test with it");
        }
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(size.width, size.height)
                .setColorScheme(colours)
                .setReducedMotion(ReducedMotion.REDUCE)
                .setJavaScriptEnabled(scripts)
                .setBaseURL(stage.url("")));
        context.setDefaultTimeout(10_000);
        return new Window(context, stage);
    }

    /** Windows that people have. */
    enum Size {
        PHONE(390, 844),
        NARROW(320, 700),
        DESK(1440, 900);

        private final int width;
        private final int height;

        Size(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }

    /** A window with one page, and everything that went wrong in it. */
    static final class Window implements AutoCloseable {
        private final BrowserContext context;
        private final Page page;
        private final List<String> complaints = new ArrayList<>();

        private Window(BrowserContext context, Stage stage) {
            this.context = context;
            context.addInitScript(
                    "addEventListener('securitypolicyviolation', e => console.error('violation ' + e.violatedDirective))");
            page = context.newPage();
            page.onConsoleMessage(message -> {
                if (List.of("error", "warning").contains(message.type())) {
                    complaints.add(message.text());
                }
            });
            page.onPageError(complaints::add);
            page.onDialog(dialog -> {
                complaints.add("dialog " + dialog.message());
                dialog.dismiss();
            });
            page.onRequest(request -> {
                if (!request.url().startsWith(stage.url("/"))) {
                    complaints.add("request to " + request.url());
                }
            });
        }

        Page page() {
            return page;
        }

        /** Errors, warnings, policy violations, dialogs and requests that went elsewhere. */
        List<String> complaints() {
            return complaints;
        }

        /** Opens a page of the stage. */
        Window go(String path) {
            page.navigate(path);
            return this;
        }

        @Override
        public void close() {
            context.close();
        }
    }

    private record Running(
            @org.jspecify.annotations.Nullable Playwright playwright,
            @org.jspecify.annotations.Nullable Browser browser)
            implements AutoCloseable {
        static Running launch() {
            Playwright playwright = Playwright.create(
                    new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
            return new Running(
                    playwright,
                    playwright
                            .chromium()
                            .launch(new BrowserType.LaunchOptions()
                                    .setExecutablePath(BINARY)
                                    .setArgs(ARGUMENTS)));
        }

        @Override
        public void close() {
            if (playwright != null) {
                playwright.close();
            }
        }
    }
}
