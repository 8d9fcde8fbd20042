package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.usecase.HistoryStore.StaleBenchException;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.StoredStep;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.bench.LogChange;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.bench.change.HistoryPage;
import org.lapwright.app.web.bench.change.SetUpsPage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.view.Shell;
import org.lapwright.app.web.view.Shell.Tab;

/** The set-ups of a car: back to any of them, undo, two side by side. */
final class HistoryRoutes {
    private final OwnGarage garage;
    private final LogChange logChange;
    private final Pages pages;

    HistoryRoutes(UseCases useCases, Pages pages) {
        this.garage = useCases.physics().garage();
        this.logChange = useCases.bench().logChange();
        this.pages = pages;
    }

    void show(Context context) {
        KeptFile kept = Forms.car(garage, context.queryParam("name"));
        StoredHistory history = logChange
                .history(kept.name())
                .orElseThrow(() -> new Problem(
                        404,
                        "Nothing was logged for “%s” yet.".formatted(kept.name()),
                        "Its set-ups will stand here once a change is logged. Nothing is lost."));
        pages.show(
                context,
                "bench/change/history.jte",
                HistoryPage.of(shell("Set-ups of " + history.car()), history, Forms.freshKey()));
    }

    void undo(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        String car = Forms.car(garage, fields.text("name")).name();
        long present = step(fields.text("present"));
        back(context, car, () -> logChange.undo(car, present, Forms.key(fields.text("key"))), "undone");
    }

    void goTo(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        String car = Forms.car(garage, fields.text("name")).name();
        long present = step(fields.text("present"));
        long to = step(fields.text("to"));
        // One key for the page and one place to go each: two buttons of one page are two wishes.
        String key = Forms.key(fields.text("key")) + "-" + to;
        back(context, car, () -> logChange.goTo(car, present, to, key), "back");
    }

    private static void back(Context context, String car, Runnable wish, String done) {
        try {
            wish.run();
        } catch (StaleBenchException stale) {
            throw new Problem(409, "Nothing was done.", stale.getMessage() + " Look at its set-ups again.");
        } catch (IllegalArgumentException impossible) {
            throw new Problem(422, "Nothing was done.", Forms.sentence(impossible));
        }
        context.redirect(BenchPage.address(car) + "&" + done, HttpStatus.SEE_OTHER);
    }

    void compare(Context context) {
        SetUpsPage.Named left = named(context.queryParam("name"), context.queryParam("a"));
        SetUpsPage.Named right = named(
                Optional.ofNullable(context.queryParam("with")).orElse(context.queryParam("name")),
                context.queryParam("b"));
        pages.show(
                context,
                "bench/change/compare.jte",
                SetUpsPage.of(
                        shell("Two set-ups"),
                        left,
                        right,
                        BenchPage.address(
                                Forms.car(garage, context.queryParam("name")).name())));
    }

    /** A car as it is, or one of its set-ups. */
    private SetUpsPage.Named named(@Nullable String name, @Nullable String number) {
        KeptFile kept = Forms.car(garage, name);
        OptionalLong asked = Forms.number(Optional.ofNullable(number).orElse(""));
        if (asked.isEmpty()) {
            return new SetUpsPage.Named(
                    kept.name() + ", as it is", Forms.readable(kept).build());
        }
        StoredStep step = logChange.history(kept.name()).stream()
                .flatMap(history -> history.steps().stream())
                .filter(found -> found.id() == asked.getAsLong())
                .findFirst()
                .orElseThrow(() -> new Problem(
                        404, "“%s” has no such set-up.".formatted(kept.name()), "Look at its set-ups again."));
        CarFile file = CarFile.read(step.file())
                .accepted()
                .orElseThrow(() -> new Problem(422, "That set-up cannot be read.", "The others can. Nothing is lost."));
        String words = step.parent().isEmpty() ? "as it was first" : step.words();
        return new SetUpsPage.Named(kept.name() + ": " + words, file.build());
    }

    private static long step(String sent) {
        return Forms.number(sent)
                .orElseThrow(() -> new Problem(
                        422,
                        "The form does not say which set-up is meant.",
                        "Go back to the set-ups and press again."));
    }

    private Shell shell(String title) {
        return pages.shell(title, Tab.BENCH);
    }
}
