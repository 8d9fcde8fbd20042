package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.ChangeJson;
import org.lapwright.app.usecase.HistoryStore.StaleBenchException;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.bench.Caution;
import org.lapwright.app.usecase.bench.ForeseeChange;
import org.lapwright.app.usecase.bench.ForeseeChange.Foreseen;
import org.lapwright.app.usecase.bench.LogChange;
import org.lapwright.app.usecase.bench.LogChange.Doing;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.bench.CarPage.TrackChoice;
import org.lapwright.app.web.bench.PlanDrawing;
import org.lapwright.app.web.bench.PlanView;
import org.lapwright.app.web.bench.change.ChangeForm;
import org.lapwright.app.web.bench.change.ChangePage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.view.Shell;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChangeKind;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.track.Track;

/** Logging a change: choose its kind, see what it brings, log it. */
final class ChangeRoutes {
    private final OwnGarage garage;
    private final LogChange logChange;
    private final ForeseeChange foreseeChange;
    private final OwnList classes;
    private final Pages pages;

    ChangeRoutes(UseCases useCases, Pages pages) {
        this.garage = useCases.physics().garage();
        this.logChange = useCases.bench().logChange();
        this.foreseeChange = useCases.bench().foreseeChange();
        this.classes = useCases.bench().ownClasses();
        this.pages = pages;
    }

    /** The car that is changed, with what is on it. */
    private record Car(KeptFile kept, CarFile file, Optional<StoredHistory> history) {
        Build build() {
            return file.build();
        }

        /** What is on the owner's car; a change of an example car begins a car of the owner's. */
        OptionalLong present() {
            return history.filter(steps -> !steps.example())
                    .map(steps -> OptionalLong.of(steps.present()))
                    .orElse(OptionalLong.empty());
        }
    }

    void open(Context context) {
        Car car = car(context.queryParam("name"));
        Optional<ChangeKind> kind =
                Optional.ofNullable(context.queryParam("kind")).flatMap(ChangeKind::find);
        if (kind.isEmpty()) {
            Shell shell = shell("Log a change of " + car.kept().name());
            pages.show(
                    context,
                    "bench/change/kinds.jte",
                    new ChangePage.Choice(shell, car.kept().name(), List.of(ChangeKind.values())));
            return;
        }
        String track = Optional.ofNullable(context.queryParam("track")).orElseGet(this::usualTrack);
        show(
                context,
                car,
                ChangeForm.offered(kind.get(), car.build(), context.queryParamMap()),
                new Sent(present(car), track, ""),
                List.of());
    }

    /** What comes with the form beside the change. */
    private record Sent(String present, String track, String key) {
        static Sent of(Fields fields) {
            return new Sent(fields.text("present"), fields.text("track"), fields.text("key"));
        }
    }

    void press(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        Car car = car(fields.text("name"));
        ChangeKind kind = ChangeKind.find(fields.text("kind"))
                .orElseThrow(() -> new Problem(
                        404,
                        "There is no such kind of change.",
                        "Choose one under Log a change. Nothing was changed."));
        ChangeForm form = ChangeForm.from(kind, car.build(), fields);
        Sent sent = Sent.of(fields);
        if (fields.text("do").equals("log")) {
            log(context, car, form, sent);
        } else {
            show(context, car, form, sent, List.of());
        }
    }

    private void log(Context context, Car car, ChangeForm form, Sent sent) {
        ChangeForm.Read read = form.read();
        if (read.change().isEmpty()) {
            context.status(422);
            show(context, car, read.form(), sent, List.of());
            return;
        }
        Change change = read.change().get();
        try {
            Doing doing = new Doing(
                    car.kept().name(),
                    Forms.number(sent.present()),
                    car.kept().text(),
                    car.build(),
                    change,
                    form.note());
            String file = car.file().with(change.apply(car.build())).text();
            StoredHistory history =
                    logChange.log(doing, ChangeJson.write(change, form.note()), file, Forms.key(sent.key()));
            context.redirect(BenchPage.address(history.car()) + "&logged", HttpStatus.SEE_OTHER);
        } catch (StaleBenchException stale) {
            context.status(409);
            Car now = car(car.kept().name());
            show(
                    context,
                    now,
                    form,
                    new Sent(present(now), sent.track(), ""),
                    List.of(stale.getMessage()
                            + " Below is your change on what is there now; log it again if it still holds."));
        } catch (StoreException failed) {
            context.status(503);
            show(context, car, form, sent, List.of("Not logged. " + failed.getMessage()));
        } catch (IllegalArgumentException impossible) {
            context.status(422);
            show(context, car, form, sent, List.of(Forms.sentence(impossible)));
        }
    }

    private void show(Context context, Car car, ChangeForm form, Sent sent, List<String> told) {
        List<String> problems = new ArrayList<>(told);
        ChangeForm.Read read = form.read();
        read.problem().filter(problem -> told.isEmpty()).ifPresent(problem -> problems.add(Forms.sentence(problem)));
        Optional<Track> track = track(sent.track());
        Optional<Foreseen> foreseen = Optional.empty();
        try {
            foreseen = read.change()
                    .map(change -> foreseeChange.foresee(
                            car.build(),
                            change,
                            track,
                            ClassRoutes.kept(classes).of(car.kept().name())));
        } catch (IllegalArgumentException impossible) {
            if (told.isEmpty()) {
                problems.add(Forms.sentence(impossible));
            }
        }
        Optional<PlanView> plan = form.kind() == ChangeKind.BALLAST_ADDED || form.kind() == ChangeKind.BALLAST_MOVED
                ? Optional.of(drawn(foreseen.map(Foreseen::after).orElse(car.build())))
                : Optional.empty();
        pages.show(
                context,
                "bench/change/form.jte",
                new ChangePage(
                        shell(form.kind().label() + ": " + car.kept().name()),
                        car.kept().name(),
                        sent.present(),
                        read.form(),
                        foreseen,
                        problems,
                        Caution.before(form.kind(), logChange.kindsLogged()),
                        new TrackChoice(
                                garage.tracks().stream().map(KeptFile::name).toList(),
                                track.isPresent() ? sent.track() : ""),
                        Forms.key(sent.key()),
                        car.build().setUp().ballast(),
                        plan));
    }

    private static PlanView drawn(Build build) {
        return PlanDrawing.of(build.setUp(), SetUpNumbers.onBench(build.setUp()));
    }

    private static String present(Car car) {
        return car.present().isPresent() ? Long.toString(car.present().getAsLong()) : "";
    }

    private String usualTrack() {
        return garage.tracks().stream().map(KeptFile::name).findFirst().orElse("");
    }

    private Optional<Track> track(String name) {
        return name.isBlank() ? Optional.empty() : Forms.track(garage, name);
    }

    private Car car(@org.jspecify.annotations.Nullable String name) {
        KeptFile kept = Forms.car(garage, name);
        return new Car(kept, Forms.readable(kept), logChange.history(kept.name()));
    }

    private Shell shell(String title) {
        return pages.shell(title, Tab.BENCH);
    }
}
