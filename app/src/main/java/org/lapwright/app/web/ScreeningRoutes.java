package org.lapwright.app.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.Answers;
import org.lapwright.app.files.LapReading;
import org.lapwright.app.files.LapText;
import org.lapwright.app.files.garage.ScreeningFile;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Press;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.OwnList;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.usecase.run.DriveLive;
import org.lapwright.app.usecase.run.Standing;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.screening.ScreeningDrive;
import org.lapwright.app.web.screening.ScreeningPage;
import org.lapwright.app.web.screening.ScreeningPage.Typed;
import org.lapwright.app.web.view.Shell.Tab;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.screening.Screening;

/** Several tweaks at once: begin a plan, drive its runs, see what stands out. */
final class ScreeningRoutes {
    private static final int LOTS = Integer.MAX_VALUE;

    private final OwnList screening;
    private final OwnGarage garage;
    private final DriveLive driveLive;
    private final Pages pages;
    private final SecureRandom lots = new SecureRandom();

    ScreeningRoutes(UseCases useCases, Pages pages) {
        this.screening = useCases.run().ownScreening();
        this.garage = useCases.physics().garage();
        this.driveLive = useCases.run().driveLive();
        this.pages = pages;
    }

    void show(Context context) {
        boolean another = context.queryParamMap().containsKey("another");
        Typed blank = new Typed(Forms.asked(context, "car"), Forms.asked(context, "track"), "", "8", "10");
        show(context, blank, another ? Optional.empty() : on(), "", List.of());
    }

    void press(Context context) {
        Forms.require(context);
        Fields fields = new Fields(context.formParamMap());
        try {
            switch (fields.text("do")) {
                case "begin" -> begin(context, fields);
                case "run" -> run(context, fields);
                case "undo" -> undo(context, fields);
                case "time" -> time(context, fields);
                case "take" -> take(context, fields);
                default ->
                    throw new Problem(
                            422, "There is no such button.", "Open the screening again. Nothing was changed.");
            }
        } catch (StoreException failed) {
            throw new Problem(503, "Not saved.", String.valueOf(failed.getMessage()));
        }
    }

    private void begin(Context context, Fields fields) {
        Typed typed = new Typed(
                fields.text("car"),
                fields.text("track"),
                fields.text("tweaks"),
                fields.text("runs"),
                fields.text("laps_per_run"));
        try {
            List<String> tweaks = Arrays.stream(typed.tweaks().split("[\\r\\n]+"))
                    .map(String::strip)
                    .filter(name -> !name.isEmpty())
                    .toList();
            Screening plan = new Screening(
                    tweaks,
                    Forms.whole(typed.runs(), "number of runs"),
                    Forms.whole(typed.lapsPerRun(), "number of laps"),
                    lots.nextInt(LOTS));
            screening.keep(new ScreeningFile(typed.car(), typed.track(), plan, List.of()).text());
            context.redirect("/run/screening", HttpStatus.SEE_OTHER);
        } catch (IllegalArgumentException wrong) {
            context.status(422);
            show(context, typed, Optional.empty(), "", List.of(Forms.sentence(wrong)));
        }
    }

    private void run(Context context, Fields fields) {
        ScreeningFile now = present(fields);
        String text = fields.text("laps");
        LapReading reading = LapText.read(text, Answers.NONE);
        Optional<String> problem = problem(reading, now.plan());
        if (problem.isPresent()) {
            context.status(422);
            show(context, new Typed("", "", "", "", ""), Optional.of(now), text, List.of(problem.get()));
            return;
        }
        TimedRun run = new TimedRun(reading.runs().get(0).laps(), List.of());
        screening.keep(now.with(Optional.of(run)).text());
        context.redirect("/run/screening", HttpStatus.SEE_OTHER);
    }

    private static Optional<String> problem(LapReading reading, Screening plan) {
        if (!reading.problems().isEmpty()) {
            return Optional.of(reading.problems().get(0).sentence());
        }
        if (reading.runs().size() != 1) {
            return Optional.of("Give the laps of one run, one time a line.");
        }
        if (reading.laps() < Screening.LEAST_LAPS) {
            return Optional.of("A run of %d laps has no pace; drive the %d that were planned, at least %d."
                    .formatted(reading.laps(), plan.lapsPerRun(), Screening.LEAST_LAPS));
        }
        try {
            double pace = Screening.paceS(reading.runs().get(0).run());
            return pace > 0 ? Optional.empty() : Optional.of("These laps have no pace.");
        } catch (IllegalArgumentException none) {
            return Optional.of(Forms.sentence(none));
        }
    }

    /** Times the runs that are left on the page Run. */
    private void time(Context context, Fields fields) {
        ScreeningFile now = present(fields);
        try {
            if (now.isDone()) {
                throw new IllegalArgumentException("all runs are driven");
            }
            if (driveLive.open().isPresent()) {
                throw new IllegalArgumentException("a drive is on; end it under Run first");
            }
            NewDrive drive = ScreeningDrive.of(
                    now,
                    Forms.whole(fields.text("lane_number"), "lane number"),
                    Forms.whole(fields.text("warm_up"), "laps to warm up"));
            driveLive.begin(drive, Forms.key(fields.text("key")));
            context.redirect("/run", HttpStatus.SEE_OTHER);
        } catch (IllegalArgumentException wrong) {
            context.status(422);
            show(context, new Typed("", "", "", "", ""), Optional.of(now), "", List.of(Forms.sentence(wrong)));
        }
    }

    /**
     * Takes the runs that were timed and ends the drive. Taken once: with its runs the screening is further than where the drive began, so
     * that a drive which a kill left open belongs to it no longer.
     */
    private void take(Context context, Fields fields) {
        Standing drive = driveLive
                .open()
                .filter(open -> fields.text("drive").equals(String.valueOf(open.id())))
                .orElseThrow(() -> new Problem(
                        404,
                        "That drive is not on any more.",
                        "Open the screening: its runs are there if they were taken."));
        ScreeningFile before =
                on().orElseThrow(() -> new Problem(404, "No screening is on.", "Begin one. Nothing was changed."));
        ScreeningDrive timed = ScreeningDrive.find(drive, Optional.of(before))
                .orElseThrow(() -> new Problem(
                        409, "This drive is not of the screening that is on.", "Nothing was changed. Open Run again."));
        try {
            screening.keep(timed.with(drive.progress()).text());
            driveLive.happened(
                    drive.id(),
                    List.of(new DriveEvent.Pressed(Press.DROPPED, Forms.key(fields.text("key")) + "-taken")));
        } catch (IllegalArgumentException impossible) {
            throw new Problem(422, "Nothing was done.", Forms.sentence(impossible));
        }
        context.redirect("/run/screening", HttpStatus.SEE_OTHER);
    }

    private void undo(Context context, Fields fields) {
        screening.keep(present(fields).with(Optional.empty()).text());
        context.redirect("/run/screening", HttpStatus.SEE_OTHER);
    }

    /** The screening, as the sender saw it: with so many runs. */
    private ScreeningFile present(Fields fields) {
        ScreeningFile now =
                on().orElseThrow(() -> new Problem(404, "No screening is on.", "Begin one. Nothing was changed."));
        if (!fields.text("driven").equals(String.valueOf(now.driven().size()))) {
            throw new Problem(
                    409,
                    "Somebody has entered a run meanwhile.",
                    "Nothing was changed. Open the screening again, and enter the laps for the run that is next.");
        }
        return now;
    }

    /** The screening that is on; what cannot be read counts as none. */
    static Optional<ScreeningFile> kept(OwnList screening) {
        return screening.text().flatMap(text -> ScreeningFile.read(text).accepted());
    }

    private Optional<ScreeningFile> on() {
        return kept(screening);
    }

    private void show(Context context, Typed typed, Optional<ScreeningFile> on, String laps, List<String> problems) {
        pages.show(
                context,
                "run/screening.jte",
                new ScreeningPage(
                        pages.shell("Several tweaks at once", Tab.RUN),
                        garage.cars().stream().map(KeptFile::name).toList(),
                        garage.tracks().stream().map(KeptFile::name).toList(),
                        typed,
                        on,
                        laps,
                        problems,
                        on.filter(ScreeningFile::isDone).map(done -> done.plan().judge(done.driven()))));
    }
}
