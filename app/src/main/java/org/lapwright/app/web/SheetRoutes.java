package org.lapwright.app.web;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.sheet.Paper;
import org.lapwright.app.sheet.PdfPrinter;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.ShowLadder;
import org.lapwright.app.usecase.bench.LogChange;
import org.lapwright.app.web.bench.sheet.SheetPage;
import org.lapwright.app.web.bench.sheet.SheetPage.Place;
import org.lapwright.app.web.bench.sheet.SheetPaper;
import org.lapwright.app.web.view.Shell.Tab;

/** The set-up sheet, for paper and as a table. */
final class SheetRoutes {
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH).withZone(ZoneId.systemDefault());

    private final PhysicsCases physics;
    private final LogChange logChange;
    private final ShowLadder showLadder;
    private final Pages pages;
    private final PdfPrinter printer = new PdfPrinter();
    private final Clock clock = Clock.systemUTC();

    SheetRoutes(UseCases useCases, Pages pages) {
        this.physics = useCases.physics();
        this.logChange = useCases.bench().logChange();
        this.showLadder = useCases.showLadder();
        this.pages = pages;
    }

    void show(Context context) {
        pages.show(context, "bench/sheet/sheet.jte", sheet(context));
    }

    void csv(Context context) {
        SheetPage sheet = sheet(context);
        String plain = sheet.car().replaceAll("[^A-Za-z0-9._-]+", "-");
        context.header("Content-Disposition", "attachment; filename=\"%s.sheet.csv\"".formatted(plain));
        context.contentType("text/csv; charset=utf-8").result(sheet.csv().getBytes(StandardCharsets.UTF_8));
    }

    void pdf(Context context) {
        Paper paper = Paper.find(
                        Optional.ofNullable(context.queryParam("paper")).orElse("a4"))
                .orElseThrow(() -> new Problem(
                        404,
                        "There is no paper of that size here.",
                        "A sheet prints on A4 or Letter. Nothing is lost."));
        SheetPage sheet = sheet(context);
        SheetPaper laid = SheetPaper.of(sheet, pages.text("bench/plan.jte", sheet.plan()));
        byte[] pdf = printer.print("Sheet of " + sheet.car(), pages.text("bench/sheet/paper.jte", laid), paper);
        String plain = sheet.car().replaceAll("[^A-Za-z0-9._-]+", "-");
        context.header("Content-Disposition", "inline; filename=\"%s.sheet.pdf\"".formatted(plain));
        context.contentType("application/pdf").result(pdf);
    }

    private SheetPage sheet(Context context) {
        KeptFile kept = Forms.car(physics.garage(), context.queryParam("name"));
        CarFile file = Forms.readable(kept);
        return SheetPage.of(
                pages.shell("Sheet of " + kept.name(), Tab.BENCH),
                file,
                WHEN.format(clock.instant()),
                physics.workOutNumbers().onBench(file.setUp()),
                logChange.history(kept.name()),
                places(kept.name()));
    }

    private List<Place> places(String car) {
        List<Place> places = new ArrayList<>();
        for (String track : showLadder.tracks()) {
            showLadder.ladder(track).stream()
                    .filter(entry -> entry.car().equals(car))
                    .forEach(entry -> places.add(new Place(track, entry)));
        }
        return places;
    }
}
