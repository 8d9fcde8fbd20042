package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.garage.FileReading;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.DrawPage;
import org.lapwright.app.web.track.FilePage;
import org.lapwright.app.web.track.TrackChoice;
import org.lapwright.app.web.track.TrackForm;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.track.Track;

/** A track written down: piece by piece, or from a file. */
final class DrawRoutes {
    private static final String FORM = "application/x-www-form-urlencoded";

    private final OwnGarage garage;
    private final Pages pages;

    DrawRoutes(OwnGarage garage, Pages pages) {
        this.garage = garage;
        this.pages = pages;
    }

    void open(Context context) {
        draw(context, TrackForm.oval(), "");
    }

    void press(Context context) {
        if (!context.isFormUrlencoded()) {
            throw Problem.wrongType(FORM);
        }
        Fields fields = new Fields(context.formParamMap());
        TrackForm form = TrackForm.from(fields);
        String[] wish = fields.text("do", "look").split("-", 2);
        String about = wish.length > 1 ? wish[1] : "";
        switch (wish[0]) {
            case "add" -> draw(context, form.withAnother(about), "Piece added at the end.");
            case "drop" -> draw(context, form.without(number(about)), "Piece %s removed.".formatted(number(about)));
            case "up" -> draw(context, form.withMovedUp(number(about)), "Piece moved up.");
            case "down" -> draw(context, form.withMovedUp(number(about) + 1), "Piece moved down.");
            case "keep" -> keep(context, form);
            default -> draw(context, form, "");
        }
    }

    private void draw(Context context, TrackForm form, String said) {
        TrackForm.Reading reading = form.read();
        show(context, form, reading, reading.problems(), said);
    }

    private void show(Context context, TrackForm form, TrackForm.Reading reading, List<String> problems, String said) {
        pages.show(
                context,
                "draw.jte",
                new DrawPage(
                        pages.shell("Draw a track", Tab.TRACK),
                        form,
                        problems,
                        reading.track().map(DrawPage.Sum::of),
                        isTaken(form.name()),
                        said));
    }

    private void keep(Context context, TrackForm form) {
        TrackForm.Reading reading = form.read();
        List<String> problems = new ArrayList<>(reading.problems());
        if (form.name().isBlank()) {
            problems.add("Name is empty; the track needs one to be kept.");
        } else if (isTaken(form.name()) && !form.replace()) {
            problems.add(taken(form.name()));
        }
        if (!problems.isEmpty()) {
            context.status(422);
            show(context, form, reading, problems, "Not saved yet.");
            return;
        }
        Track track = reading.track().orElseThrow();
        try {
            saved(context, garage.keepTrack(track.name(), TrackFile.of(track).text()));
        } catch (StoreException failed) {
            context.status(503);
            show(context, form, reading, List.of("Not saved. " + failed.getMessage()), "Not saved.");
        }
    }

    void openFile(Context context) {
        showFile(context, "", List.of(), "");
    }

    void pressFile(Context context) {
        if (!context.isMultipartFormData() && !context.isFormUrlencoded()) {
            throw Problem.wrongType("multipart/form-data");
        }
        String text = uploaded(context).orElseGet(() -> {
            String pasted = context.formParam("text");
            return pasted == null ? "" : pasted;
        });
        if (text.length() > KeptFile.LONGEST_TEXT) {
            throw new Problem(
                    413,
                    "That file is more than fits: at most 2 million characters.",
                    "Nothing was saved. A track file has a few thousand.");
        }
        FileReading<TrackFile> reading = TrackFile.read(text);
        if (reading.accepted().isEmpty()) {
            context.status(422);
            showFile(
                    context,
                    text,
                    reading.problems().stream()
                            .map(problem -> problem.sentence())
                            .toList(),
                    "");
            return;
        }
        keepFile(context, text, reading.accepted().get().track().name());
    }

    private void keepFile(Context context, String text, String name) {
        boolean same =
                garage.track(name).filter(kept -> kept.text().equals(text)).isPresent();
        if (isTaken(name) && !same && !"yes".equals(context.formParam("replace"))) {
            context.status(422);
            showFile(context, text, List.of(taken(name)), name);
            return;
        }
        try {
            saved(context, garage.keepTrack(name, text));
        } catch (StoreException failed) {
            context.status(503);
            showFile(context, text, List.of("Not saved. " + failed.getMessage()), "");
        }
    }

    private void showFile(Context context, String text, List<String> problems, String taken) {
        pages.show(
                context,
                "trackfile.jte",
                new FilePage(pages.shell("A track from a file", Tab.TRACK), text, problems, taken));
    }

    static void saved(Context context, KeptFile kept) {
        context.redirect(TrackChoice.page(kept.name()) + "&saved", HttpStatus.SEE_OTHER);
    }

    private boolean isTaken(String name) {
        return !name.isBlank()
                && garage.track(name.strip()).filter(kept -> !kept.example()).isPresent();
    }

    static String taken(String name) {
        return "There is a track '%s' already. Give this one another name, or tick “Put it in its place”."
                .formatted(name.strip());
    }

    static Optional<String> uploaded(Context context) {
        UploadedFile file = context.isMultipartFormData() ? part(context) : null;
        if (file == null || file.size() == 0) {
            return Optional.empty();
        }
        try (InputStream content = file.content()) {
            return Optional.of(new String(content.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException("the file did not arrive whole", broken);
        }
    }

    /** A form that is too large or broken off fails at the first look into it, with a checked exception that is not declared. */
    private static @Nullable UploadedFile part(Context context) {
        try {
            return context.uploadedFile("file");
        } catch (Exception unreadable) {
            throw new Problem(
                    413,
                    "That file did not arrive whole: it is larger than 10 MB, or broken off.",
                    "Nothing was saved. A track file has a few thousand characters.");
        }
    }

    private static int number(String text) {
        return text.matches("\\d{1,4}") ? Integer.parseInt(text) : 0;
    }
}
