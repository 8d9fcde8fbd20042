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
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.FilePage;
import org.lapwright.app.web.track.TrackChoice;
import org.lapwright.app.web.track.Typed.Fault;
import org.lapwright.app.web.track.editor.DrawPage;
import org.lapwright.app.web.track.editor.Editor;
import org.lapwright.app.web.track.editor.Press;
import org.lapwright.app.web.track.editor.TrackForm;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Track;

/** A track written down: piece by piece, or from a file. */
final class DrawRoutes {
    private static final String FORM = "application/x-www-form-urlencoded";

    private final OwnGarage garage;
    private final OwnList pieces;
    private final BestLaps laps;
    private final Pages pages;

    DrawRoutes(PhysicsCases cases, Pages pages) {
        this.garage = cases.garage();
        this.pieces = cases.pieces();
        this.laps = new BestLaps(cases);
        this.pages = pages;
    }

    void open(Context context) {
        String name = context.queryParam("track");
        show(context, Editor.opened(name == null ? TrackForm.oval() : kept(name)), List.of());
    }

    /** A kept track in the form; the example, which is nobody's to change, as a copy. */
    private TrackForm kept(String name) {
        KeptFile file = garage.track(name)
                .orElseThrow(() -> new Problem(
                        404, "There is no track of that name.", "All of them are under Track. Nothing is lost."));
        TrackFile read = TrackFile.read(file.text())
                .accepted()
                .orElseThrow(() -> new Problem(
                        422,
                        "The file of %s cannot be used as it is.".formatted(file.name()),
                        "The Track page says what is wrong in it. Nothing was changed."));
        if (read.track().layout() instanceof PieceLayout layout
                && layout.pieces().size() > TrackForm.MOST_PIECES) {
            throw new Problem(
                    422,
                    "%s has %d pieces; the form takes up to %d."
                            .formatted(file.name(), layout.pieces().size(), TrackForm.MOST_PIECES),
                    "Change its file instead. Nothing was changed.");
        }
        return TrackForm.of(read.track(), file.example() ? file.name() + ", my copy" : file.name());
    }

    void press(Context context) {
        if (!context.isFormUrlencoded()) {
            throw Problem.wrongType(FORM);
        }
        Fields fields = new Fields(context.formParamMap());
        Editor editor = Editor.from(fields);
        String wish = fields.text("do", "look");
        if (wish.equals("keep")) {
            keep(context, editor);
        } else {
            show(context, Press.of(editor, wish), List.of());
        }
    }

    private void show(Context context, Editor editor, List<Fault> more) {
        TrackForm.Reading reading = editor.form().read();
        List<Fault> faults = new ArrayList<>(reading.faults());
        faults.addAll(more);
        // While somebody types only the drawing is asked for: to read a whole page anew takes a phone a second.
        boolean drawingOnly = "sum".equals(context.header("HX-Target"));
        pages.show(
                context,
                drawingOnly ? "drawsum.jte" : "draw.jte",
                DrawPage.of(
                        pages.shell("Draw a track", Tab.TRACK),
                        editor,
                        faults,
                        reading.track(),
                        laps.on(reading.track(), context),
                        KitRoutes.box(pieces),
                        isTaken(editor.form().name()) && !isItself(editor.form())));
    }

    private void keep(Context context, Editor editor) {
        TrackForm form = editor.form();
        TrackForm.Reading reading = form.read();
        List<Fault> more = new ArrayList<>();
        if (form.name().isBlank()) {
            more.add(new Fault("name", "Name is empty; the track needs one to be kept."));
        } else if (isTaken(form.name()) && !isItself(form) && !form.replace()) {
            more.add(new Fault("name", taken(form.name())));
        }
        if (!more.isEmpty() || reading.track().isEmpty()) {
            context.status(422);
            show(context, editor.saying("Not saved yet."), more);
            return;
        }
        Track track = reading.track().orElseThrow();
        try {
            saved(context, garage.keepTrack(track.name(), text(form, track)));
        } catch (StoreException failed) {
            context.status(503);
            show(context, editor.saying("Not saved."), List.of(new Fault("", "Not saved. " + failed.getMessage())));
        }
    }

    /** The file it was opened from, brought up to the form; word for word the same where nothing changed. */
    private String text(TrackForm form, Track track) {
        return garage.track(form.origin())
                .flatMap(kept -> TrackFile.read(kept.text())
                        .accepted()
                        .map(file -> file.track().equals(track)
                                ? kept.text()
                                : file.with(track).text()))
                .orElseGet(() -> TrackFile.of(track).text());
    }

    /** Whether it would take the place of the very track that it was opened from. */
    private boolean isItself(TrackForm form) {
        return isTaken(form.origin())
                && garage.track(form.name().strip())
                        .map(KeptFile::name)
                        .equals(garage.track(form.origin()).map(kept -> kept.name()));
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
}
