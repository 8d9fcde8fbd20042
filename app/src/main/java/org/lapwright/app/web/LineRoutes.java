package org.lapwright.app.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.drawing.LineForm;
import org.lapwright.app.web.drawing.LinePage;
import org.lapwright.app.web.drawing.LineReading;
import org.lapwright.app.web.track.editor.DrawnLaps;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.track.Track;

/** A track whose centre line is taken from a drawing. */
final class LineRoutes {
    private final OwnGarage garage;
    private final BestLaps laps;
    private final Pages pages;

    LineRoutes(PhysicsCases cases, Pages pages) {
        this.garage = cases.garage();
        this.laps = new BestLaps(cases);
        this.pages = pages;
    }

    void open(Context context) {
        LineForm form = LineForm.fresh();
        show(context, form, LineReading.of(form), List.of(), "");
    }

    void press(Context context) {
        if (!context.isMultipartFormData() && !context.isFormUrlencoded()) {
            throw Problem.wrongType("multipart/form-data");
        }
        // The file comes first: a form that did not arrive whole is told at the first look into it.
        LineForm form = DrawRoutes.uploaded(context)
                .map(text -> typed(context).withDrawing(text))
                .orElseGet(() -> typed(context));
        LineReading reading = LineReading.of(form);
        List<String> problems = new ArrayList<>(reading.problems());
        if (form.value("text").isBlank()) {
            problems.add("There is no drawing yet. Choose a file, or paste what is in it.");
        }
        if ("keep".equals(context.formParam("do"))) {
            keep(context, form, reading, problems);
        } else {
            show(context, form, reading, problems, "");
        }
    }

    private static LineForm typed(Context context) {
        return new LineForm(new Fields(context.formParamMap()));
    }

    private void keep(Context context, LineForm form, LineReading reading, List<String> problems) {
        String name = form.value("name");
        if (reading.isSizeGuessed()) {
            problems.add(
                    "How large the drawing is has only been guessed; say what one unit is, or give a length you know.");
        }
        if (name.isBlank()) {
            problems.add("Name is empty; the track needs one to be kept.");
        } else if (isTaken(name) && !form.is("replace", "yes")) {
            problems.add(DrawRoutes.taken(name));
        }
        if (!problems.isEmpty() || reading.track().isEmpty()) {
            context.status(422);
            show(context, form, reading, problems, "Not saved yet.");
            return;
        }
        Track track = reading.track().get();
        try {
            DrawRoutes.saved(
                    context, garage.keepTrack(track.name(), TrackFile.of(track).text()));
        } catch (StoreException failed) {
            context.status(503);
            show(context, form, reading, List.of("Not saved. " + failed.getMessage()), "Not saved.");
        }
    }

    private void show(Context context, LineForm form, LineReading reading, List<String> problems, String said) {
        DrawnLaps driven = laps.on(reading.track(), context);
        pages.show(
                context,
                "line.jte",
                new LinePage(
                        pages.shell("A track from a drawing", Tab.TRACK),
                        form,
                        reading,
                        problems,
                        driven,
                        reading.track().map(track -> LinePage.Sum.of(track, driven.first())),
                        isTaken(form.value("name")),
                        said));
    }

    private boolean isTaken(String name) {
        return !name.isBlank()
                && garage.track(name.strip()).filter(kept -> !kept.example()).isPresent();
    }
}
