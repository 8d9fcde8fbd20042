package org.lapwright.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.VerdictJson;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.SectionsInWords;
import org.lapwright.app.usecase.VerdictInWords;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.Sources;
import org.lapwright.app.usecase.run.Progress;
import org.lapwright.app.usecase.run.RunCutter;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.section.SectionJudge;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.TrialSettings;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Takes passes from a gate and judges while they come. */
@Command(
        name = "listen",
        description = {
            "Take passes from a gate and judge before against after while they come: from one that sends lines of text over a"
                    + " serial line or a pipe, from a light gate or contact on the sound card, or from a recording.",
            "The lines: P,<seq>,<lane>,<t_us>,<edge>*HH and a heartbeat H,<boot>,<t_us>,<dropped>*HH (docs/timing.md)."
        },
        footer = {
            "",
            "Examples:",
            "  lapwright listen --serial /dev/ttyUSB0 --plan \"ABBA x 10\"",
            "  gpiomon --edges falling -c gpiochip0 17 | lapwright listen --pipe",
            "  lapwright listen --plan \"AB x 20\" --warm-up 3 < evening.log --json",
            "  lapwright listen --serial /dev/ttyUSB0 --to http://127.0.0.1:8737",
            "  lapwright listen --mqtt mqtt://192.168.1.5",
            "  lapwright listen --simulated --speed 20",
            "  lapwright listen --sound --plan \"ABBA x 10\"",
            "  lapwright listen --recording evening.wav --lane 2",
            "",
            "Exit status: 0 both sides were driven, 1 they were not, 2 bad input."
        })
final class ListenCommand implements Callable<Integer> {
    private static final int NOT_DRIVEN = 1;
    private static final double PERCENT = 100;

    private final JudgeChange judgeChange;
    private final Sources sources;

    @Spec
    private CommandSpec spec;

    @ArgGroup(exclusive = true, multiplicity = "0..1")
    private ListenOptions gate = new ListenOptions();

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description = "Runs and laps, A before and B after (default: ${DEFAULT-VALUE}).",
            defaultValue = "ABBA x 10")
    private String plan;

    @Option(
            names = "--warm-up",
            paramLabel = "LAPS",
            description = "Laps at the beginning of each run that count for nothing (default: ${DEFAULT-VALUE}).",
            defaultValue = "0")
    private int warmUp;

    @Option(
            names = "--lane",
            paramLabel = "NUMBER",
            description = "Lane number of the car (default: ${DEFAULT-VALUE}).",
            defaultValue = "1")
    private int lane;

    @Option(
            names = "--pause",
            paramLabel = "SECONDS",
            description = "A run that has its laps is followed by the next one after a pause of this length"
                    + " (default: ${DEFAULT-VALUE}).",
            defaultValue = "20")
    private double pause;

    @Option(
            names = "--speed",
            paramLabel = "FACTOR",
            description = "The simulated gate's time goes so many times faster, 1 to 1000 (default: ${DEFAULT-VALUE}).",
            defaultValue = "1")
    private double speed;

    @Option(
            names = "--threshold",
            paramLabel = "PERCENT",
            description = "A pass on the sound card reaches at least so much of the full scale, 0 to 100; what is not"
                    + " eight times as high as the noise never counts (default: ${DEFAULT-VALUE}).",
            defaultValue = "1")
    private double threshold;

    @Option(
            names = "--to",
            paramLabel = "URL",
            arity = "0..1",
            fallbackValue = "http://127.0.0.1:8737",
            description =
                    "Sends the passes to the page Run of the program that serves there, which has the plan and judges"
                            + " (default: ${FALLBACK-VALUE}).")
    private @Nullable String to;

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    private int unreadable;
    private int restarts;
    private long lost;
    private int told;
    private String soFar = "";

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    ListenCommand(JudgeChange judgeChange, Sources sources) {
        this.judgeChange = judgeChange;
        this.sources = sources;
    }

    @Override
    public Integer call() {
        NewDrive fixed = fixed();
        if (to != null) {
            return handOn(to);
        }
        RunCutter cutter = new RunCutter(fixed, pause);
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter laps = json ? spec.commandLine().getErr() : out;
        if (gate.isSimulated()) {
            spec.commandLine()
                    .getErr()
                    .println("lapwright: simulated; these laps are an example and were never driven.");
        }
        gate.listen(
                sources,
                wanted(),
                passes -> {
                    passes.forEach(pass -> take(cutter, fixed.plan(), pass, laps));
                    return !cutter.progress().isDone(fixed.plan());
                },
                new Told(spec.commandLine().getErr()));
        tellNews();
        Optional<Session> session = cutter.progress().comparable();
        if (session.isEmpty()) {
            spec.commandLine().getErr().println("lapwright: only one side was driven, so there is nothing to compare.");
            return NOT_DRIVEN;
        }
        print(out, session.get());
        if (!json) {
            printSections(out, cutter.progress());
        }
        return 0;
    }

    private int handOn(String address) {
        PrintWriter err = spec.commandLine().getErr();
        Told told = new Told(err);
        try {
            PassSink page = sources.runPage(address, told);
            err.println("lapwright: passes go to the page Run at " + address + "; Ctrl+C ends it.");
            err.flush();
            gate.listen(sources, wanted(), page, told);
        } catch (IOException wrong) {
            throw new BadInput("--to: " + wrong.getMessage() + ".");
        }
        tellNews();
        return 0;
    }

    private ListenOptions.Wanted wanted() {
        return new ListenOptions.Wanted(speed, threshold / PERCENT);
    }

    private NewDrive fixed() {
        if (!(pause >= 1 && pause <= 3600)) {
            throw new BadInput("--pause is " + Figures.significant(pause, 6) + " s; it must be from 1 to 3600 s.");
        }
        if (!(speed >= 1 && speed <= 1000)) {
            throw new BadInput("--speed is " + Figures.significant(speed, 6) + "; it must be from 1 to 1000.");
        }
        if (!(threshold >= 0 && threshold <= PERCENT)) {
            throw new BadInput("--threshold is " + Figures.significant(threshold, 6) + "; it must be from 0 to 100 %.");
        }
        try {
            return new NewDrive("the car", "", "the track", "", lane, "", "", RunPlan.parse(plan), warmUp);
        } catch (IllegalArgumentException wrong) {
            throw new BadInput(wrong.getMessage() + ".");
        }
    }

    private void take(RunCutter cutter, RunPlan planned, Pass pass, PrintWriter out) {
        Progress progress = cutter.take(pass);
        int all = progress.session().laps();
        if (all > told) {
            told = all;
            int number =
                    progress.session().runs().get(progress.run()).run().laps().size();
            out.println("run %d %s  lap %d  %s"
                    .formatted(
                            progress.run() + 1,
                            progress.side(planned).letter(),
                            number,
                            Figures.seconds(progress.lastS().orElse(0))));
            tellSoFar(progress, out);
            if (progress.isRunDone()) {
                out.println(
                        progress.isDone(planned)
                                ? "All runs are driven."
                                : "Run done; the next one begins after a pause.");
            }
            out.flush();
        }
    }

    /** The verdict holds whenever one looks, so it is told as soon as it says something else. */
    private void tellSoFar(Progress progress, PrintWriter out) {
        progress.comparable().ifPresent(session -> {
            TrialSettings settings = settings();
            String headline = new VerdictInWords(judgeChange.judge(session, settings), settings).headline();
            if (!headline.equals(soFar)) {
                soFar = headline;
                out.println("so far: " + headline);
            }
        });
    }

    private TrialSettings settings() {
        return TrialSettings.DEFAULT.withPlan(RunPlan.parse(plan));
    }

    private void tellNews() {
        PrintWriter err = spec.commandLine().getErr();
        if (unreadable > 0) {
            err.println("lapwright: %s could not be believed and counted for nothing."
                    .formatted(counted(unreadable, "line", "lines")));
        }
        if (restarts > 0) {
            err.println("lapwright: the gate began anew %s; no lap goes over that."
                    .formatted(counted(restarts, "time", "times")));
        }
        if (lost > 0) {
            err.println("lapwright: the gate says that it lost %s.".formatted(counted(lost, "pass", "passes")));
        }
    }

    private static String counted(long count, String one, String many) {
        return count == 1 ? "1 " + one : count + " " + many;
    }

    private void print(PrintWriter out, Session session) {
        TrialSettings settings = settings();
        Verdict verdict = judgeChange.judge(session, settings);
        if (json) {
            out.println(Json.of(VerdictJson.of(verdict, settings)));
            return;
        }
        VerdictInWords words = new VerdictInWords(verdict, settings);
        out.println();
        out.println(words.headline());
        Optional.of(words.confidence() + words.needed())
                .filter(text -> !text.isBlank())
                .ifPresent(out::println);
        out.println(words.consistency());
    }

    /** Where on the lap, where section gates saw the car. */
    private void printSections(PrintWriter out, Progress progress) {
        SectionsInWords sections = SectionsInWords.of(
                SectionJudge.judge(progress.session(), progress.splits(), settings(), judgeChange::judge), List.of());
        if (sections.rows().isEmpty()) {
            return;
        }
        out.println();
        out.println(sections.sentence());
        for (SectionsInWords.Row row : sections.rows()) {
            out.println("%-12s%8s%8s   %s".formatted(row.name(), row.before(), row.after(), row.difference()));
        }
    }

    /** Counts what was wrong on the wire, and says at once what the racer can mend. */
    private final class Told implements SourceNews {
        private static final int SHOWN = 3;

        private final PrintWriter err;

        Told(PrintWriter err) {
            this.err = err;
        }

        private void say(String what) {
            err.println("lapwright: " + what);
            err.flush();
        }

        @Override
        public void unreadable(String why) {
            unreadable++;
            if (unreadable <= SHOWN) {
                say("a line from the gate was left out: " + why + ".");
            }
        }

        @Override
        public void restarted() {
            restarts++;
        }

        @Override
        public void dropped(long passes) {
            lost = Math.max(lost, passes);
        }

        @Override
        public void gone(String why) {
            say(why + ". Waiting; what came before counts.");
        }

        @Override
        public void back() {
            say("the gate is back.");
        }

        @Override
        public void stepped() {
            say("the gate's clock was set; no lap goes over that.");
        }
    }
}
