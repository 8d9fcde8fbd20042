package org.lapwright.app.web;

import com.fasterxml.jackson.annotation.JsonProperty;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Press;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.SectionsInWords;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.usecase.run.DriveLive;
import org.lapwright.app.usecase.run.ListenHere;
import org.lapwright.app.usecase.run.Standing;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.run.RunPage;
import org.lapwright.app.web.run.RunStream;
import org.lapwright.app.web.run.RunStream.Shown;
import org.lapwright.app.web.run.StartPage;
import org.lapwright.app.web.screening.ScreeningDrive;
import org.lapwright.app.web.view.Shell;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.car.rules.RaceClass;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.TrialSettings;

/** Laps while they come in: begin, time, press, keep; and the door through which gates send their passes. */
final class RunRoutes implements AutoCloseable {
    private static final int MOST_PASSES = 5000;

    private final DriveLive driveLive;
    private final ListenHere listenHere;
    private final OwnGarage garage;
    private final OwnList classes;
    private final OwnList screening;
    private final Pages pages;
    private final RunStream stream;

    RunRoutes(UseCases useCases, Pages pages) {
        this.driveLive = useCases.run().driveLive();
        this.listenHere = useCases.run().listenHere();
        this.garage = useCases.physics().garage();
        this.classes = useCases.bench().ownClasses();
        this.screening = useCases.run().ownScreening();
        this.pages = pages;
        this.stream = new RunStream(this::shown);
        driveLive.watch(stream::changed);
        listenHere.watchTrouble(stream::changed);
    }

    /** Tells pages how the drive stands. */
    RunStream stream() {
        return stream;
    }

    @Override
    public void close() {
        stream.close();
    }

    void show(Context context) {
        Optional<Standing> open = driveLive.open();
        if (open.isPresent()) {
            showDrive(context, open.get());
            return;
        }
        String car = Optional.ofNullable(context.queryParam("car")).orElse("");
        String change = Optional.ofNullable(context.queryParam("change")).orElse("");
        Optional<KeptFile> track = garage.tracks().stream().findFirst();
        String name = track.map(KeptFile::name).orElse("");
        String conditions = track.flatMap(file -> TrackFile.read(file.text()).accepted())
                .map(file -> file.track().surface().conditions())
                .orElse("");
        showStart(context, new StartPage.Typed(car, change, name, "", "1", "", conditions, "ABBA x 10", "2"), "");
    }

    void begin(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        StartPage.Typed typed = new StartPage.Typed(
                fields.text("car"),
                fields.text("change"),
                fields.text("track"),
                fields.text("lane"),
                fields.text("lane_number"),
                fields.text("driver"),
                fields.text("conditions"),
                fields.text("plan"),
                fields.text("warm_up"));
        try {
            NewDrive drive = new NewDrive(
                    typed.car(),
                    typed.change(),
                    typed.track(),
                    typed.lane(),
                    Forms.whole(typed.laneNumber(), "lane number"),
                    typed.driver(),
                    typed.conditions(),
                    RunPlan.parse(typed.plan()),
                    Forms.whole(typed.warmUp(), "laps to warm up"));
            List<String> broken = broken(typed.car());
            if (!broken.isEmpty() && !fields.text("told").equals(typed.car())) {
                context.status(422);
                showStart(context, typed, "", broken);
                return;
            }
            driveLive.begin(drive, Forms.key(fields.text("key")));
            context.redirect("/run", HttpStatus.SEE_OTHER);
        } catch (StoreException failed) {
            context.status(503);
            showStart(context, typed, "Not begun. " + failed.getMessage());
        } catch (IllegalArgumentException wrong) {
            context.status(422);
            showStart(context, typed, Forms.sentence(wrong));
        }
    }

    /** What of the car as it stands its class does not allow; a car without numbers breaks nothing that is known. */
    private List<String> broken(String car) {
        Optional<RaceClass> raceClass = ClassRoutes.kept(classes).of(car.strip());
        return raceClass
                .flatMap(one -> garage.car(car.strip())
                        .flatMap(kept -> CarFile.read(kept.text()).accepted())
                        .map(file -> one.broken(file.build())))
                .orElse(List.of());
    }

    void press(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        long id = Forms.number(fields.text("drive"))
                .orElseThrow(() -> new Problem(422, "The form does not say which drive is meant.", "Open Run again."));
        Press press = Press.find(fields.text("do"))
                .orElseThrow(
                        () -> new Problem(422, "There is no such button.", "Open Run again. Nothing was changed."));
        String key = Forms.key(fields.text("key")) + "-" + press.code();
        Standing drive = driveLive
                .drive(id)
                .orElseThrow(() -> new Problem(404, "There is no such drive.", "Open Run again. Nothing was changed."));
        try {
            if (press == Press.KEPT) {
                SavedComparison saved = driveLive.keep(drive, key);
                context.redirect("/kept/" + saved.id(), HttpStatus.SEE_OTHER);
                return;
            }
            driveLive.happened(id, List.of(new DriveEvent.Pressed(press, key)));
        } catch (IllegalArgumentException impossible) {
            throw new Problem(422, "Nothing was done.", Forms.sentence(impossible));
        }
        context.redirect("/run", HttpStatus.SEE_OTHER);
    }

    /** A batch of passes, as a gate or a page sends it. */
    record Batch(@Nullable Long drive, @Nullable List<Sent> passes) {}

    /** One pass as sent; what is left out has its usual value. */
    record Sent(
            @Nullable String source,
            @Nullable String boot,
            @Nullable Long sequence,
            @Nullable Integer lane,
            @Nullable Integer gate,
            @Nullable String clock,
            @JsonProperty("time_ns") @Nullable Long timeNs,
            @JsonProperty("sigma_s") @Nullable Double sigmaS) {
        Pass pass(long arrivalNs) {
            return new Pass(
                    given(source, "source"),
                    given(boot, "boot"),
                    given(sequence, "sequence"),
                    lane == null ? 1 : lane,
                    gate == null ? 0 : gate,
                    new PassStamp(knownClock(), given(timeNs, "time_ns"), arrivalNs, sigmaS == null ? 0 : sigmaS));
        }

        private PassClock knownClock() {
            if (clock == null) {
                return PassClock.DEVICE;
            }
            for (PassClock known : PassClock.values()) {
                if (known.name().equalsIgnoreCase(clock)) {
                    return known;
                }
            }
            throw new IllegalArgumentException(
                    "clock is '%s'; it must be one of device, kernel, audio, browser, hand".formatted(clock));
        }

        private static <T> T given(@Nullable T value, String name) {
            if (value == null) {
                throw new IllegalArgumentException(name + " is missing");
            }
            return value;
        }
    }

    /**
     * What became of a batch.
     *
     * @param drive number of the drive
     * @param taken how many passes are on disk now; one that came before counts
     */
    record Taken(long drive, int taken) {}

    void passes(Context context) {
        if (!Door.isJson(context.contentType())) {
            throw Problem.wrongType("application/json");
        }
        try {
            Batch batch = Json.read(context.bodyAsBytes(), Batch.class);
            List<DriveEvent> events = events(batch);
            long drive = Optional.ofNullable(batch.drive())
                    .or(() -> driveLive.open().map(Standing::id))
                    .orElseThrow(() -> new IllegalArgumentException("no drive is on; begin one under Run"));
            driveLive.happened(drive, events);
            context.contentType("application/json").result(Json.write(new Taken(drive, events.size())));
        } catch (IllegalArgumentException wrong) {
            throw new Problem(422, "The passes were not taken.", wrong.getMessage() + ".");
        }
    }

    private static List<DriveEvent> events(Batch batch) {
        List<Sent> sent = Optional.ofNullable(batch.passes()).orElse(List.of());
        if (sent.isEmpty() || sent.size() > MOST_PASSES) {
            throw new IllegalArgumentException(
                    "passes has %d entries; send 1 to %d".formatted(sent.size(), MOST_PASSES));
        }
        long arrival = System.nanoTime();
        List<DriveEvent> events = new ArrayList<>();
        for (int i = 0; i < sent.size(); i++) {
            try {
                events.add(new DriveEvent.Passed(sent.get(i).pass(arrival)));
            } catch (IllegalArgumentException wrong) {
                throw new IllegalArgumentException("passes[%d]: %s".formatted(i, wrong.getMessage()), wrong);
            }
        }
        return events;
    }

    private void showDrive(Context context, Standing drive) {
        pages.show(context, "run/run.jte", page(drive));
    }

    private RunPage page(Standing drive) {
        if (ScreeningDrive.isOne(drive)) {
            return screeningPage(drive);
        }
        TrialSettings settings = TrialSettings.DEFAULT.withPlan(drive.fixed().plan());
        return RunPage.of(
                shell("Run"),
                listenHere.state(),
                drive,
                driveLive.verdict(drive),
                Forms.sections(driveLive, garage, drive),
                settings);
    }

    private RunPage screeningPage(Standing drive) {
        RunPage page = RunPage.of(
                shell("Run"), listenHere.state(), drive, Optional.empty(), SectionsInWords.NONE, TrialSettings.DEFAULT);
        return ScreeningDrive.find(drive, ScreeningRoutes.kept(screening))
                .map(timed -> page.ofScreening(timed.todo(drive.progress()), timed.isDone(drive.progress())))
                .orElseGet(() -> page.ofScreening(
                        "The plan of these runs has changed meanwhile. End this drive, and time the runs that are left.",
                        false));
    }

    /** How the drive stands, as the stream brings it to the pages. */
    private Shown shown() {
        return driveLive
                .open()
                .map(this::page)
                .map(page -> new Shown(page.seen(), pages.text("run/now.jte", page)))
                .orElse(Shown.NOTHING);
    }

    private void showStart(Context context, StartPage.Typed typed, String problem) {
        showStart(context, typed, problem, List.of());
    }

    private void showStart(Context context, StartPage.Typed typed, String problem, List<String> broken) {
        pages.show(
                context,
                "run/start.jte",
                new StartPage(
                        shell("Run"),
                        garage.cars().stream().map(KeptFile::name).toList(),
                        garage.tracks().stream().map(KeptFile::name).toList(),
                        typed,
                        problem,
                        Forms.freshKey(),
                        broken));
    }

    private Shell shell(String title) {
        return pages.shell(title, Tab.RUN);
    }
}
