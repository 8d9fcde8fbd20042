package org.lapwright.app.web.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.lapwright.app.files.garage.ScreeningFile;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.run.Progress;
import org.lapwright.app.usecase.run.Standing;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Side;

/**
 * The runs of a screening that are left, timed on the page Run. A drive has two sides by nature; those of this one mean nothing, and it
 * is never judged.
 *
 * @param screening as it stood when the drive began
 */
public record ScreeningDrive(ScreeningFile screening) {
    /** What such a drive is about, where another one says its change. */
    private static final String ABOUT = "Several tweaks at once, from run %d on";

    private static final Pattern ANY = Pattern.compile("Several tweaks at once, from run \\d+ on");

    /** The drive for a screening that is on. */
    public static NewDrive of(ScreeningFile screening, int laneNumber, int warmUp) {
        List<Side> order = new ArrayList<>();
        // One run that is left is driven in a plan of two, because fewer are none.
        for (int run = 0; run < Math.max(2, left(screening)); run++) {
            order.add(run % 2 == 0 ? Side.BEFORE : Side.AFTER);
        }
        RunPlan plan = new RunPlan(order, screening.plan().lapsPerRun());
        return new NewDrive(screening.car(), about(screening), screening.track(), "", laneNumber, "", "", plan, warmUp);
    }

    private static int left(ScreeningFile screening) {
        return screening.plan().runs() - screening.driven().size();
    }

    private static String about(ScreeningFile screening) {
        return ABOUT.formatted(screening.driven().size() + 1);
    }

    /** Whether a drive times the runs of a screening, be it on or not. */
    public static boolean isOne(Standing drive) {
        return ANY.matcher(drive.fixed().change()).matches();
    }

    /** The screening whose runs a drive times, as it stands; empty for any other drive. */
    public static Optional<ScreeningDrive> find(Standing drive, Optional<ScreeningFile> on) {
        NewDrive fixed = drive.fixed();
        return on.filter(screening -> !screening.isDone()
                        && screening.car().equals(fixed.car())
                        && screening.track().equals(fixed.track())
                        && about(screening).equals(fixed.change()))
                .map(ScreeningDrive::new);
    }

    /** Whether no run is left to be driven. */
    public boolean isDone(Progress progress) {
        return driven(progress).size() == left(screening);
    }

    /** The runs that are driven to their end. Laps that the racer's word or the gate's count leaves out are left out. */
    public List<TimedRun> driven(Progress progress) {
        List<TimedRun> runs = new ArrayList<>();
        for (DrivenRun each : progress.session().runs()) {
            boolean whole = each.run().laps().size() == screening.plan().lapsPerRun();
            if (whole && runs.size() < left(screening)) {
                runs.add(counted(each.run()));
            }
        }
        return runs;
    }

    private static TimedRun counted(TimedRun run) {
        List<TimedLap> laps = new ArrayList<>();
        for (TimedLap lap : run.laps()) {
            if (run.wordOn(lap.number()).isEmpty()) {
                laps.add(new TimedLap(laps.size() + 1, lap.seconds()));
            }
        }
        return new TimedRun(laps, List.of());
    }

    /** The screening with the runs of a drive. */
    public ScreeningFile with(Progress progress) {
        ScreeningFile now = screening;
        for (TimedRun run : driven(progress)) {
            now = now.with(Optional.of(run));
        }
        return now;
    }

    /** What to do now, one line. */
    public String todo(Progress progress) {
        int run = screening.driven().size() + progress.run();
        if (isDone(progress)) {
            return "All runs are driven.";
        }
        if (progress.paused()) {
            return "Paused. What passes now is no lap; go on when the car is ready.";
        }
        if (progress.isRunDone()) {
            return "Run done. Make the car ready for run %d, %s, then start it."
                    .formatted(run + 2, ScreeningPage.words(screening.plan(), run + 1));
        }
        return "Run %d of %d, %s%s"
                .formatted(
                        run + 1,
                        screening.plan().runs(),
                        ScreeningPage.words(screening.plan(), run),
                        progress.lapOpen() ? "." : ": the first pass starts the clock.");
    }
}
