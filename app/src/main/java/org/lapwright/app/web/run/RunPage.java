package org.lapwright.app.web.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.LapInWords;
import org.lapwright.app.usecase.SectionsInWords;
import org.lapwright.app.usecase.VerdictInWords;
import org.lapwright.app.usecase.run.GateState;
import org.lapwright.app.usecase.run.Progress;
import org.lapwright.app.usecase.run.Standing;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.Sorting;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.laps.pass.LapSplits;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.section.SectionJudge;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * A drive while it is on.
 *
 * @param shell around it
 * @param gate what the gate on this computer is doing, one line; empty where none is listened to
 * @param id number of the drive
 * @param seen the state that is shown, by its name
 * @param fixed what was fixed before it
 * @param todo what to do now, one line
 * @param last last lap, big; a dash before the first
 * @param pace pace of this run so far; empty before there is one
 * @param left laps left
 * @param runs the runs of the plan, how far each is
 * @param verdict so far; empty until both sides have laps
 * @param advice whether to go on or stop; empty until there is a verdict
 * @param lapOpen whether a lap is under way
 * @param paused whether the run is held up
 * @param runDone whether the car can be made ready for the next run
 * @param done whether the plan is driven
 * @param screening whether it times the runs of several tweaks at once, which are judged there
 * @param laps of this run, the newest first
 * @param sections where on the lap the change brings or costs time
 * @param key for what is pressed on this state: two people who press one button on one state press it once
 */
public record RunPage(
        Shell shell,
        String gate,
        long id,
        String seen,
        NewDrive fixed,
        String todo,
        String last,
        String pace,
        String left,
        List<RunMark> runs,
        String verdict,
        String advice,
        boolean lapOpen,
        boolean paused,
        boolean runDone,
        boolean done,
        boolean screening,
        List<LapRow> laps,
        SectionsInWords sections,
        String key) {
    /** Copies the lists. */
    public RunPage {
        runs = List.copyOf(runs);
        laps = List.copyOf(laps);
    }

    /**
     * A run of the plan.
     *
     * @param letter A before, B after
     * @param state done, now or next
     * @param laps driven of how many
     */
    public record RunMark(String letter, String state, String laps) {}

    /**
     * A lap.
     *
     * @param number in its run
     * @param time of it
     * @param kind in words; empty for a clean one
     * @param splits times of its sections; empty where it has none
     */
    public record LapRow(int number, String time, String kind, String splits) {}

    /** Who drives, and in which conditions; what was not said is left out. */
    public List<String> about() {
        return Stream.of(fixed.driver(), fixed.conditions())
                .filter(said -> !said.isEmpty())
                .toList();
    }

    /** The page of a drive. */
    public static RunPage of(
            Shell shell,
            GateState gate,
            Standing drive,
            Optional<Verdict> verdict,
            SectionsInWords sections,
            TrialSettings settings) {
        Progress progress = drive.progress();
        RunPlan plan = drive.fixed().plan();
        boolean done = progress.isDone(plan);
        List<TimedRun> ofSide = new ArrayList<>();
        TimedRun run = progress.session().runs().get(progress.run()).run();
        for (DrivenRun driven : progress.session().runs()) {
            if (driven.side() == progress.side(plan)) {
                ofSide.add(driven.run());
            }
        }
        List<List<Lap>> sorted = Sorting.sort(ofSide);
        List<Lap> laps = sorted.get(sorted.size() - 1);
        return new RunPage(
                shell,
                gate(gate),
                drive.id(),
                seen(gate, drive),
                drive.fixed(),
                todo(progress, plan, done),
                Figures.fixed(progress.lastS(), 3),
                pace(laps),
                progress.warmUpLeft() > 0
                        ? "%d to warm up, then %d".formatted(progress.warmUpLeft(), progress.lapsLeft())
                        : "%d left".formatted(progress.lapsLeft()),
                marks(progress, plan, run),
                verdict.map(found -> new VerdictInWords(found, settings).headline())
                        .orElse(""),
                verdict.map(found -> advice(found, settings, done)).orElse(""),
                progress.lapOpen() && !progress.isRunDone() && !progress.paused(),
                progress.paused(),
                progress.isRunDone(),
                done,
                false,
                rows(laps, progress.splits()),
                sections,
                "drive" + drive.name());
    }

    /** The page of a drive that times the runs of a screening: nothing is judged here. */
    public RunPage ofScreening(String now, boolean driven) {
        List<RunMark> numbered = new ArrayList<>();
        for (RunMark mark : runs) {
            numbered.add(new RunMark(Integer.toString(numbered.size() + 1), mark.state(), mark.laps()));
        }
        return new RunPage(
                shell,
                gate,
                id,
                seen,
                fixed,
                now,
                last,
                pace,
                left,
                numbered,
                "",
                "",
                lapOpen,
                paused,
                runDone,
                driven,
                true,
                laps,
                SectionsInWords.NONE,
                key);
    }

    /** The state that is shown, by its name: it begins with the drive's number. */
    public static String seen(GateState gate, Standing drive) {
        String mark = gate.choice().isEmpty() ? "" : gate.trouble().isEmpty() ? "-gate" : "-trouble";
        return drive.name() + mark;
    }

    private static String gate(GateState gate) {
        return gate.choice()
                .map(choice ->
                        gate.trouble().isEmpty() ? "Listening to %s.".formatted(choice.name()) : gate.troubleSentence())
                .orElse("");
    }

    private static String todo(Progress progress, RunPlan plan, boolean done) {
        if (done) {
            return "All runs are driven.";
        }
        if (progress.isRunDone()) {
            Side next = plan.order().get(progress.run() + 1);
            if (next == progress.side(plan)) {
                return "Run done. Leave the car as it is; start the next run.";
            }
            return next == Side.AFTER
                    ? "Run done. Put the change on, then start the next run."
                    : "Run done. Take the change off, then start the next run.";
        }
        if (progress.paused()) {
            return "Paused. What passes now is no lap; go on when the car is ready.";
        }
        String with = progress.side(plan) == Side.AFTER ? "with the change" : "without the change";
        return "Run %d of %d, %s%s"
                .formatted(
                        progress.run() + 1,
                        plan.order().size(),
                        with,
                        progress.lapOpen() ? "." : ": the first pass starts the clock.");
    }

    private static String pace(List<Lap> laps) {
        Stint stint = Stint.of(laps);
        return stint.paceS().isPresent() ? Figures.seconds(stint.paceS().getAsDouble()) : "";
    }

    private static List<RunMark> marks(Progress progress, RunPlan plan, TimedRun run) {
        List<RunMark> marks = new ArrayList<>();
        for (int i = 0; i < plan.order().size(); i++) {
            String letter = String.valueOf(plan.order().get(i).letter());
            if (i < progress.run()) {
                int laps = progress.session().runs().get(i).run().laps().size();
                marks.add(new RunMark(letter, "done", Integer.toString(laps)));
            } else if (i == progress.run()) {
                marks.add(new RunMark(letter, "now", run.laps().size() + " of " + plan.lapsPerRun()));
            } else {
                marks.add(new RunMark(letter, "next", Integer.toString(plan.lapsPerRun())));
            }
        }
        return marks;
    }

    private static String advice(Verdict verdict, TrialSettings settings, boolean done) {
        VerdictInWords words = new VerdictInWords(verdict, settings);
        if (verdict.decision() != Decision.MORE_LAPS) {
            return words.confidence()
                    + (done ? " " + words.leastSeen() : " You may stop here, or drive the plan to its end.");
        }
        return words.confidence()
                + words.needed()
                + (done ? " The plan is driven: keep it as it stands. " + words.leastSeen() : "");
    }

    private static List<LapRow> rows(List<Lap> laps, List<List<LapSplits>> splits) {
        int gates = SectionJudge.gates(splits);
        List<LapSplits> ofRun = splits.get(splits.size() - 1);
        List<LapRow> rows = new ArrayList<>();
        for (int i = laps.size() - 1; i >= 0; i--) {
            Lap lap = laps.get(i);
            rows.add(new LapRow(
                    lap.number(),
                    Figures.fixed(lap.seconds(), 3),
                    lap.kind().counts() ? "" : LapInWords.kind(lap.kind()),
                    gates == 0 ? "" : splits(ofRun.get(i), gates)));
        }
        return rows;
    }

    private static String splits(LapSplits splits, int gates) {
        return IntStream.rangeClosed(1, gates + 1)
                .mapToObj(section -> splits.sectionS(section, gates))
                .map(seconds -> Figures.fixed(seconds, 3))
                .collect(Collectors.joining(" · "));
    }
}
