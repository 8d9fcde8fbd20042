package org.lapwright.app.web;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.nio.charset.StandardCharsets;
import org.lapwright.app.web.view.ProblemPage;
import org.lapwright.app.web.view.Shell;
import org.lapwright.app.web.view.Shell.Tab;

/** Turns a problem into a page, or into problem+json (RFC 9457) where JSON was asked. */
final class Answers {
    private final Pages pages;

    Answers(Pages pages) {
        this.pages = pages;
    }

    /** The answer for an address. */
    Body of(Problem problem, String address) {
        if (address.startsWith("/api/")) {
            return new Body(
                    "application/problem+json",
                    Json.write(new Details("about:blank", problem.what(), problem.status(), problem.remedy())));
        }
        Shell shell = pages.shell("Not done", Tab.NONE);
        ProblemPage page = new ProblemPage(shell, problem.what(), problem.remedy(), "/", "To Before / After");
        return new Body(
                "text/html; charset=utf-8", pages.text("problem.jte", page).getBytes(StandardCharsets.UTF_8));
    }

    /** A body with its type; the array is never changed. */
    @SuppressWarnings("ArrayRecordComponent")
    record Body(String type, byte[] bytes) {}

    /** The members of problem+json. */
    record Details(
            @JsonProperty("type") String type,
            @JsonProperty("title") String title,
            @JsonProperty("status") int status,
            @JsonProperty("detail") String detail) {}
}
