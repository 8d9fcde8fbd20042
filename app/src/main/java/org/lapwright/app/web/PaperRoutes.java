package org.lapwright.app.web;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.track.TrackChoice;
import org.lapwright.app.web.track.paper.LanesSvg;
import org.lapwright.app.web.track.paper.PrintPage;
import org.lapwright.app.web.track.paper.TilesPage;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.track.Track;

/** A track on paper: a page to print, and the lanes as a drawing in true size. */
final class PaperRoutes {
    private final OwnGarage garage;
    private final Pages pages;

    PaperRoutes(OwnGarage garage, Pages pages) {
        this.garage = garage;
        this.pages = pages;
    }

    void print(Context context) {
        Track track = asked(context);
        pages.show(context, "trackprint.jte", PrintPage.of(pages.shell(track.name() + " to scale", Tab.TRACK), track));
    }

    void tiles(Context context) {
        Track track = asked(context);
        String scale = context.queryParam("scale");
        pages.show(
                context,
                "tracktiles.jte",
                TilesPage.SCALES.stream()
                        .filter(each -> String.valueOf(each).equals(scale))
                        .findFirst()
                        .flatMap(each -> TilesPage.of(
                                pages.shell(track.name() + " on sheets", Tab.TRACK),
                                track,
                                each,
                                TrackChoice.print(track.name())))
                        .orElseThrow(() -> new Problem(
                                404,
                                "%s is not laid out on sheets to that scale.".formatted(track.name()),
                                "The page to print says which scales there are. Nothing is lost.")));
    }

    void lanes(Context context) {
        context.contentType("image/svg+xml; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"lanes.svg\"")
                .result(pages.text("lanessvg.jte", LanesSvg.of(asked(context))).getBytes(StandardCharsets.UTF_8));
    }

    private Track asked(Context context) {
        String name = context.queryParam("track");
        return garage.track(name == null ? "" : name)
                .flatMap(file -> TrackFile.read(file.text()).accepted())
                .map(file -> file.track())
                .orElseThrow(() -> new Problem(
                        404,
                        "There is no track of that name that could be drawn.",
                        "All of them are under Track. Nothing is lost."));
    }
}
