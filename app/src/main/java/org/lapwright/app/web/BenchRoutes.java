package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.FileReading;
import org.lapwright.app.files.garage.LabelListFile;
import org.lapwright.app.files.garage.LabelListFile.Label;
import org.lapwright.app.files.garage.SharedSetUp;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.HistoryStore.StoredStep;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.ShowKept;
import org.lapwright.app.usecase.ShowLadder;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.bench.KeepPhoto;
import org.lapwright.app.usecase.bench.LogChange;
import org.lapwright.app.usecase.physics.NumbersInWords;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.bench.BenchOrder;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.bench.CarFilePage;
import org.lapwright.app.web.bench.CarForm;
import org.lapwright.app.web.bench.CarFormPage;
import org.lapwright.app.web.bench.CarFormReader;
import org.lapwright.app.web.bench.CarPage;
import org.lapwright.app.web.bench.CarPage.ClassChoice;
import org.lapwright.app.web.bench.CarPage.LaneView;
import org.lapwright.app.web.bench.CarPage.Lately;
import org.lapwright.app.web.bench.CarPage.Tidings;
import org.lapwright.app.web.bench.CarPage.TrackChoice;
import org.lapwright.app.web.bench.CarReading;
import org.lapwright.app.web.bench.Forecasts;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.view.Shell;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.rules.RaceClass;
import org.lapwright.core.car.rules.RaceClasses;
import org.lapwright.core.track.Track;

/** The bench: cars with their numbers, measuring one, and car files in and out. */
final class BenchRoutes {
    private final PhysicsCases physics;
    private final OwnGarage garage;
    private final ShowKept showKept;
    private final ShowLadder showLadder;
    private final LogChange logChange;
    private final KeepPhoto keepPhoto;
    private final OwnList classes;
    private final OwnList labels;
    private final Pages pages;

    BenchRoutes(UseCases useCases, Pages pages) {
        this.physics = useCases.physics();
        this.showKept = useCases.showKept();
        this.logChange = useCases.bench().logChange();
        this.keepPhoto = useCases.bench().keepPhoto();
        this.classes = useCases.bench().ownClasses();
        this.labels = useCases.bench().labels();
        this.showLadder = useCases.showLadder();
        this.garage = physics.garage();
        this.pages = pages;
    }

    void list(Context context) {
        String sought = Optional.ofNullable(context.queryParam("find")).orElse("");
        List<String> tracks = showLadder.tracks();
        BenchOrder order = BenchOrder.of(Forms.asked(context, "order"), tracks, showKept, showLadder);
        boolean away = Forms.asked(context, "away").equals("yes");
        pages.show(
                context,
                "bench/list.jte",
                BenchPage.of(
                        shell("Bench"),
                        garage.cars(),
                        said(),
                        new BenchPage.Asked(sought, order, BenchOrder.choices(tracks), away),
                        showKept.exampleState()));
    }

    void car(Context context) {
        if (Optional.ofNullable(context.queryParam("name")).orElse("").isBlank()) {
            list(context);
            return;
        }
        KeptFile kept = Forms.car(garage, context.queryParam("name"));
        CarFile file = Forms.readable(kept);
        List<String> notices = new ArrayList<>();
        String asked = Optional.ofNullable(context.queryParam("track")).orElse("");
        Optional<Track> track = track(asked, notices);
        TrackChoice choice = new TrackChoice(
                garage.tracks().stream().map(drawn -> drawn.name()).toList(),
                track.flatMap(chosen -> garage.track(asked)).map(KeptFile::name).orElse(""));
        NumbersInWords numbers = track.map(chosen -> physics.workOutNumbers().on(file.setUp(), chosen))
                .orElseGet(() -> physics.workOutNumbers().onBench(file.setUp()));
        List<LaneView> lanes =
                track.map(chosen -> lanes(file.setUp(), chosen, notices)).orElse(List.of());
        boolean saved = context.queryParamMap().containsKey("saved");
        if (saved) {
            // A slip in the name of a key is seen when the file comes in, and is no news later.
            CarFile.read(kept.text()).notes().forEach(note -> notices.add("In the file: " + note + "."));
        }
        pages.show(
                context,
                "bench/car.jte",
                CarPage.of(
                        shell(kept.name()),
                        kept,
                        file,
                        numbers,
                        choice,
                        new Tidings(
                                saved,
                                lanes,
                                notices,
                                lately(context, kept),
                                hasPhoto(kept),
                                raceClass(kept.name(), file),
                                said().of(kept.name()))));
    }

    /** Tags, or that the car is put away, or back on the bench. */
    void label(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        String car = Forms.car(garage, fields.text("name")).name();
        try {
            Label label = new Label(
                    Arrays.stream(fields.text("tags").split("[,;\r\n]+"))
                            .map(String::strip)
                            .filter(tag -> !tag.isEmpty())
                            .toList(),
                    fields.text("away").equals("yes"));
            labels.keep(said().with(car, label).text());
        } catch (StoreException failed) {
            throw new Problem(503, "Not saved.", String.valueOf(failed.getMessage()));
        } catch (IllegalArgumentException wrong) {
            throw new Problem(422, "Nothing was changed.", Forms.sentence(wrong));
        }
        context.redirect(BenchPage.address(car) + "#labels", HttpStatus.SEE_OTHER);
    }

    /** The labels; a list that cannot be read counts as none. */
    private LabelListFile said() {
        return labels.text()
                .flatMap(text -> LabelListFile.read(text).accepted())
                .orElse(LabelListFile.NONE);
    }

    private ClassChoice raceClass(String car, CarFile file) {
        RaceClasses kept = ClassRoutes.kept(classes);
        return new ClassChoice(
                kept.classes().stream().map(RaceClass::name).toList(),
                kept.of(car).map(RaceClass::name).orElse(""),
                kept.of(car).map(one -> one.remarks(file.build())).orElse(List.of()));
    }

    private boolean hasPhoto(KeptFile kept) {
        return !kept.example() && keepPhoto.isThere(kept.name());
    }

    private Optional<Lately> lately(Context context, KeptFile kept) {
        return logChange
                .history(kept.name())
                .filter(history -> history.example() == kept.example())
                .map(history -> {
                    StoredStep step = history.presentStep();
                    String prove =
                            "/?car=" + BenchPage.encoded(kept.name()) + "&change=" + BenchPage.encoded(step.words());
                    return new Lately(
                            news(context),
                            step.parent().isEmpty() ? "none is on the car; it is as it was first" : step.words(),
                            step.id(),
                            step.parent().isPresent() && !history.example(),
                            history.steps().size(),
                            prove,
                            Forms.freshKey());
                });
    }

    private static String news(Context context) {
        if (context.queryParamMap().containsKey("logged")) {
            return "Logged.";
        }
        if (context.queryParamMap().containsKey("undone")) {
            return "Undone.";
        }
        return context.queryParamMap().containsKey("back") ? "That set-up is on the car again." : "";
    }

    void download(Context context) {
        KeptFile kept = Forms.car(garage, context.queryParam("name"));
        String plain = kept.name().replaceAll("[^A-Za-z0-9._-]+", "-");
        // RFC 6266: the plain name for those that know no other, the full one encoded (RFC 8187).
        String full = URLEncoder.encode(kept.name(), StandardCharsets.UTF_8)
                .replace("+", "%20")
                .replace("*", "%2A");
        context.header(
                "Content-Disposition",
                "attachment; filename=\"%s.car.json\"; filename*=UTF-8''%s.car.json".formatted(plain, full));
        context.contentType("application/json").result(kept.text().getBytes(StandardCharsets.UTF_8));
    }

    /** The set-up without a word of its owner's. */
    void share(Context context) {
        CarFile file = Forms.readable(Forms.car(garage, context.queryParam("name")));
        context.header("Content-Disposition", "attachment; filename=\"set-up.car.json\"");
        context.contentType("application/json").result(SharedSetUp.text(file).getBytes(StandardCharsets.UTF_8));
    }

    void measure(Context context) {
        String was = Optional.ofNullable(context.queryParam("name")).orElse("");
        CarForm form = was.isEmpty() ? CarForm.empty() : CarForm.of(Forms.readable(Forms.car(garage, was)));
        String name = was.isEmpty() ? "" : Forms.car(garage, was).name();
        showForm(context, form, name, CarReading.unread());
    }

    void keepMeasured(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        CarForm form = CarForm.from(fields);
        String was = fields.text("was");
        Optional<CarFile> before =
                was.isEmpty() ? Optional.empty() : Optional.of(Forms.readable(Forms.car(garage, was)));
        CarReading reading = CarFormReader.read(form, before);
        if (was.isEmpty() && reading.file().isPresent() && isOwn(form.name())) {
            reading = reading.refused("name", "You have a car of that name; choose another, or change that one.");
        }
        if (reading.file().isEmpty()) {
            context.status(422);
            showForm(context, form, was, reading);
            return;
        }
        CarFile file = reading.file().get();
        try {
            keep(context, file.setUp().name(), file.text());
        } catch (StoreException failed) {
            context.status(503);
            String sentence = "Not saved. " + failed.getMessage();
            showForm(context, form, was, new CarReading(Optional.empty(), reading.problems(), List.of(sentence)));
        }
    }

    void askForFile(Context context) {
        pages.show(context, "bench/file.jte", CarFilePage.empty(shell("Open a car file")));
    }

    void keepFile(Context context) {
        String text = textOf(context);
        Shell shell = shell("Open a car file");
        FileReading<CarFile> reading = CarFile.read(text);
        if (reading.accepted().isEmpty()) {
            context.status(422);
            pages.show(context, "bench/file.jte", CarFilePage.refused(shell, text, reading.problems()));
            return;
        }
        String name = reading.accepted().get().setUp().name();
        if (isOwn(name) && context.formParam("replace") == null) {
            context.status(422);
            pages.show(context, "bench/file.jte", new CarFilePage(shell, text, List.of(), name));
            return;
        }
        keep(context, name, text);
    }

    private void keep(Context context, String name, String text) {
        KeptFile kept = garage.keepCar(name, text);
        context.redirect(BenchPage.address(kept.name()) + "&saved", HttpStatus.SEE_OTHER);
    }

    private void showForm(Context context, CarForm form, String was, CarReading reading) {
        String title = was.isEmpty() ? "Measure a car" : "Measure " + was;
        pages.show(context, "bench/measure.jte", CarFormPage.of(shell(title), form, was, reading));
    }

    private Optional<Track> track(String asked, List<String> notices) {
        if (asked.isEmpty()) {
            return Optional.empty();
        }
        Optional<KeptFile> kept = garage.track(asked);
        if (kept.isEmpty()) {
            notices.add("There is no track called “%s”; the numbers are those on the bench.".formatted(asked));
            return Optional.empty();
        }
        FileReading<TrackFile> reading = TrackFile.read(kept.get().text());
        reading.problems().forEach(problem -> notices.add("Track “%s”: %s".formatted(asked, problem.sentence())));
        return reading.accepted().map(TrackFile::track);
    }

    private List<LaneView> lanes(SetUp car, Track track, List<String> notices) {
        try {
            return Forecasts.of(physics.forecastLap().forecast(car, track));
        } catch (IllegalArgumentException undrivable) {
            notices.add("No lap can be predicted: " + undrivable.getMessage() + ".");
            return List.of();
        }
    }

    private boolean isOwn(String name) {
        String stripped = name.strip();
        return !stripped.isEmpty()
                && garage.car(stripped).filter(kept -> !kept.example()).isPresent();
    }

    /** The uploaded file, or what was pasted. */
    private static String textOf(Context context) {
        if (!context.isMultipartFormData()) {
            Forms.require(context);
        }
        UploadedFile uploaded = context.isMultipartFormData() ? context.uploadedFile("file") : null;
        if (uploaded == null || uploaded.size() == 0) {
            return Optional.ofNullable(context.formParam("text")).orElse("");
        }
        try (InputStream in = uploaded.content()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the uploaded file cannot be read", unreadable);
        }
    }

    private Shell shell(String title) {
        return pages.shell(title, Tab.BENCH);
    }
}
