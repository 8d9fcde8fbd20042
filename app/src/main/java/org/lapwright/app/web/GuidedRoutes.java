package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.bench.guided.GuidedListPage;
import org.lapwright.app.web.bench.guided.GuidedPage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.app.web.track.Typed.Fault;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.car.change.Trim;
import org.lapwright.core.car.measure.GuidedMeasurement;
import org.lapwright.core.car.measure.ShimStack;

/** Measuring one thing of a car at a time. */
final class GuidedRoutes {
    private static final String USUAL_SHIMS = "0.1 0.25 0.5";

    private final OwnGarage garage;
    private final Pages pages;

    GuidedRoutes(OwnGarage garage, Pages pages) {
        this.garage = garage;
        this.pages = pages;
    }

    void open(Context context) {
        KeptFile kept = Forms.car(garage, context.queryParam("name"));
        CarFile file = Forms.readable(kept);
        Optional<GuidedMeasurement> what =
                Optional.ofNullable(context.queryParam("what")).flatMap(GuidedMeasurement::find);
        if (what.isEmpty()) {
            list(context, kept, file);
        } else {
            show(
                    context,
                    kept,
                    file,
                    what.get(),
                    new GuidedPage.Understood(GuidedPage.empty(what.get()), Optional.empty(), List.of()));
        }
    }

    private void list(Context context, KeptFile kept, CarFile file) {
        String shelf = Optional.ofNullable(context.queryParam("shims")).orElse(USUAL_SHIMS);
        Typed typed = new Typed();
        List<Double> thicknesses = new ArrayList<>();
        for (String each : shelf.strip().split("[\\s;]+")) {
            thicknesses.add(typed.number(each, Trim.SHIM, "Shims at hand"));
        }
        Optional<ShimStack> stack = typed.problems().isEmpty()
                ? typed.build("", () -> ShimStack.of(file.build(), thicknesses)).flatMap(found -> found)
                : Optional.empty();
        pages.show(
                context,
                "bench/guided/list.jte",
                GuidedListPage.of(
                        pages.shell("Measure " + kept.name(), Tab.BENCH),
                        kept.name(),
                        file.build(),
                        shelf,
                        stack,
                        String.join(" ", typed.problems())));
    }

    void press(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        KeptFile kept = Forms.car(garage, fields.text("name"));
        CarFile file = Forms.readable(kept);
        GuidedMeasurement what = GuidedMeasurement.find(fields.text("what"))
                .orElseThrow(() -> new Problem(
                        404, "There is no such measurement.", "All of them are under Measure. Nothing is lost."));
        GuidedPage.Understood understood = GuidedPage.read(what, file.setUp(), fields);
        boolean keep = fields.text("do").equals("keep") && !kept.example();
        if (understood.measured().isEmpty() || !keep) {
            context.status(understood.measured().isEmpty() ? 422 : 200);
            show(context, kept, file, what, understood);
            return;
        }
        try {
            garage.keepCar(
                    kept.name(), file.with(understood.measured().orElseThrow()).text());
            context.redirect(BenchPage.address(kept.name()) + "&saved", HttpStatus.SEE_OTHER);
        } catch (StoreException failed) {
            context.status(503);
            List<Fault> told = List.of(new Fault("", "Not saved. " + failed.getMessage()));
            show(context, kept, file, what, new GuidedPage.Understood(understood.rows(), understood.measured(), told));
        }
    }

    private void show(
            Context context, KeptFile kept, CarFile file, GuidedMeasurement what, GuidedPage.Understood understood) {
        pages.show(
                context,
                "bench/guided/one.jte",
                GuidedPage.of(
                        pages.shell(what.title(), Tab.BENCH),
                        kept.name(),
                        !kept.example(),
                        what,
                        file.setUp(),
                        understood));
    }
}
