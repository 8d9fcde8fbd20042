package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.LapReading;
import org.lapwright.app.files.ReadRun;
import org.lapwright.app.files.VerdictJson;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.VerdictInWords;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Did the change help? */
@Command(
        name = "verdict",
        description = {
            "Did the change help, on pace and on consistency, and how sure is that?",
            "Give --before and --after with one file for each run, or --session with one table of all runs."
        },
        footer = {
            "",
            "Examples:",
            "  lapwright verdict --before monday.txt --after tuesday.txt",
            "  lapwright verdict --before b1.txt b2.txt --after a1.txt a2.txt --plan \"ABBA x 10\"",
            "  lapwright verdict --session evening.csv --json"
        })
final class VerdictCommand implements Callable<Integer> {
    /** More laps than this are refused: a look after every lap takes its time, and nobody drives so many. */
    static final int MOST_LAPS = 10_000;

    /** As many runs as are judged in one session: beyond, the runs cost more time than their laps. */
    static final int MOST_RUNS = 1_000;

    private final JudgeChange judgeChange;

    @Spec
    private CommandSpec spec;

    @Mixin
    private LapSource source;

    @Option(
            names = "--before",
            arity = "1..*",
            paramLabel = "FILE",
            description = "Laps before the change, one file for each run.")
    private List<String> before = new ArrayList<>();

    @Option(
            names = "--after",
            arity = "1..*",
            paramLabel = "FILE",
            description = "Laps after the change, one file for each run.")
    private List<String> after = new ArrayList<>();

    @Option(
            names = "--session",
            paramLabel = "FILE",
            description =
                    "One table (CSV) of all runs, with the columns run, side and lap_s. With a column session too,"
                            + " one verdict for each session.")
    private @Nullable String session;

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description =
                    "The runs you meant to drive, fixed before you first looked: \"ABBAAB x 10\" is six runs of ten laps,"
                            + " A before and B after the change. Without it, the runs as driven count as the plan.")
    private @Nullable String plan;

    @Option(
            names = "--margin",
            paramLabel = "PERCENT",
            description = "The difference too small to matter to you, in percent of a lap (default: ${DEFAULT-VALUE}).",
            defaultValue = "0.3")
    private double margin;

    @Option(
            names = "--confidence",
            paramLabel = "SHARE",
            description = "How sure to be, 0.7 to 0.999; 0.95 is wrong at most once in twenty"
                    + " (default: ${DEFAULT-VALUE}).",
            defaultValue = "0.95")
    private double confidence;

    @Option(names = "--hand-timed", description = "The laps were timed by hand, with a stopwatch or a button.")
    private boolean handTimed;

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    VerdictCommand(JudgeChange judgeChange) {
        this.judgeChange = judgeChange;
    }

    @Override
    public Integer call() {
        TrialSettings settings = settings();
        if (session != null) {
            if (!before.isEmpty() || !after.isEmpty()) {
                throw new BadInput("Give either --session, or --before and --after; not both.");
            }
            judgeTable(session, settings);
        } else {
            judgeFiles(settings);
        }
        return 0;
    }

    private TrialSettings settings() {
        if (!(confidence >= 0.7 && confidence <= 0.999)) {
            throw new BadInput(
                    "--confidence is " + Figures.significant(confidence, 6) + "; it must be from 0.7 to 0.999"
                            + (confidence >= 70 && confidence < 100 ? ", so 95 % is 0.95." : "."));
        }
        if (!(margin >= 0 && margin <= 10)) {
            throw new BadInput("--margin is " + Figures.significant(margin, 6) + " %; it must be from 0 to 10 %.");
        }
        double alpha = TrialSettings.alphaOf(confidence);
        return new TrialSettings(
                alpha, margin / 100, handTimed, Optional.ofNullable(plan).map(this::plan), NoisePrior.DEFAULT);
    }

    private RunPlan plan(String text) {
        try {
            return RunPlan.parse(text);
        } catch (IllegalArgumentException impossible) {
            throw new BadInput("--plan: " + impossible.getMessage() + ".");
        }
    }

    private void judgeTable(String file, TrialSettings settings) {
        LapReading reading = source.read(file, spec.commandLine().getErr());
        PrintWriter out = spec.commandLine().getOut();
        List<VerdictJson> all = new ArrayList<>();
        // Read first: a later session that cannot be judged must not cut the output in half.
        List<Session> sessions = reading.sessions().stream()
                .map(read -> SessionSource.of(read, file))
                .toList();
        for (int i = 0; i < sessions.size(); i++) {
            String name = reading.sessions().get(i).name();
            Verdict verdict = judge(sessions.get(i), settings);
            String note = SessionSource.besidePlan(sessions.get(i), settings.plan());
            if (json) {
                all.add(VerdictJson.of(verdict, settings, name));
                tell(name.isEmpty() || note.isEmpty() ? note : "Session " + name + ": " + note);
            } else {
                if (!name.isEmpty()) {
                    out.println((i == 0 ? "" : System.lineSeparator()) + "Session " + name);
                }
                print(out, verdict, settings, List.of(note));
            }
        }
        if (json) {
            out.println(Json.of(reading.hasSessions() ? all : all.get(0)));
        } else {
            out.println();
            out.println("Read " + LapSource.named(file) + " as " + reading.understoodAs() + ".");
        }
    }

    private Verdict judge(Session driven, TrialSettings settings) {
        if (driven.laps() > MOST_LAPS) {
            throw new BadInput("That is " + Figures.laps(driven.laps()) + " in one session; a verdict takes up to "
                    + Figures.laps(MOST_LAPS) + ". Leave out what belongs to another change.");
        }
        if (driven.runs().size() > MOST_RUNS) {
            throw new BadInput("That is " + Figures.count(driven.runs().size())
                    + " runs in one session; a verdict takes" + " up to " + Figures.count(MOST_RUNS)
                    + ". A run is all laps between two touches of the car.");
        }
        return judgeChange.judge(driven, settings);
    }

    private void tell(String note) {
        if (!note.isEmpty()) {
            spec.commandLine().getErr().println(note);
        }
    }

    private void judgeFiles(TrialSettings settings) {
        if (before.isEmpty() || after.isEmpty()) {
            throw new BadInput(
                    "Give laps of both sides: --before FILE --after FILE, or one table with --session FILE.");
        }
        refuseTwice();
        List<String> readAs = new ArrayList<>();
        SessionSource.Ordered ordered =
                SessionSource.of(runs(Side.BEFORE, before, readAs), runs(Side.AFTER, after, readAs), settings.plan());
        PrintWriter out = spec.commandLine().getOut();
        Session driven = ordered.session();
        Verdict verdict = judge(driven, settings);
        List<String> notes = List.of(ordered.assumption(), SessionSource.besidePlan(driven, settings.plan()));
        if (json) {
            notes.forEach(this::tell);
            out.println(Json.of(VerdictJson.of(verdict, settings)));
        } else {
            print(out, verdict, settings, notes);
            out.println();
            readAs.forEach(out::println);
        }
    }

    /** The same file twice on one side would count its laps twice; standard input can be read only once. */
    private void refuseTwice() {
        for (List<String> side : List.of(before, after)) {
            for (String file : side) {
                boolean twice = side.stream().filter(file::equals).count() > 1;
                boolean inputTwice = file.equals("-") && before.contains("-") && after.contains("-");
                if (twice || inputTwice) {
                    throw new BadInput(LapSource.named(file) + " is given twice; each run is a file of its own.");
                }
            }
        }
    }

    private List<ReadRun> runs(Side side, List<String> files, List<String> readAs) {
        List<ReadRun> runs = new ArrayList<>();
        for (String file : files) {
            LapReading reading = source.read(file, spec.commandLine().getErr());
            runs.addAll(SessionSource.runs(reading, side, file));
            readAs.add("Read " + LapSource.named(file) + " as " + reading.understoodAs() + ".");
        }
        return runs;
    }

    private static void print(PrintWriter out, Verdict verdict, TrialSettings settings, List<String> notes) {
        VerdictInWords words = new VerdictInWords(verdict, settings);
        out.println(words.headline());
        printIfAny(out, words.needed());
        printIfAny(out, words.confidence());
        printIfAny(out, words.consistency());
        printIfAny(out, words.offs());
        printIfAny(out, words.leastSeen());
        out.println();
        out.printf(Locale.ROOT, "%8s%8s%8s%12s%12s%12s%n", "", "laps", "count", "pace", "spread", "best");
        printSide(out, "before", verdict.before());
        printSide(out, "after", verdict.after());
        List<String> said = Stream.concat(words.caveats().stream(), notes.stream())
                .filter(note -> !note.isEmpty())
                .toList();
        if (!said.isEmpty()) {
            out.println();
            said.forEach(note -> out.println("- " + note));
        }
    }

    private static void printIfAny(PrintWriter out, String sentence) {
        if (!sentence.isEmpty()) {
            out.println(sentence);
        }
    }

    private static void printSide(PrintWriter out, String name, Stint stint) {
        out.printf(
                Locale.ROOT,
                "%8s%8d%8d%12s%12s%12s%n",
                name,
                stint.laps().size(),
                stint.cleanLaps(),
                stint.paceS().isPresent() ? Figures.seconds(stint.paceS().getAsDouble()) : Figures.NONE,
                stint.spreadS().isPresent() ? Figures.seconds(stint.spreadS().getAsDouble()) : Figures.NONE,
                stint.bestS().isPresent() ? Figures.seconds(stint.bestS().getAsDouble()) : Figures.NONE);
    }
}
