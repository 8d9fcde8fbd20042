package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.LapReading;
import org.lapwright.app.files.ReadRun;
import org.lapwright.app.files.ReadSession;
import org.lapwright.app.files.VerdictJson;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.VerdictInWords;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
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
            "Give one file for each run, or one table with the columns run, side and lap_s."
        })
final class VerdictCommand implements Callable<Integer> {
    private final JudgeChange judgeChange;

    @Spec
    private CommandSpec spec;

    @Mixin
    private LapSource source;

    @Option(names = "--before", arity = "1..*", paramLabel = "FILE", description = "Laps before the change.")
    private List<String> before = new ArrayList<>();

    @Option(names = "--after", arity = "1..*", paramLabel = "FILE", description = "Laps after the change.")
    private List<String> after = new ArrayList<>();

    @Option(
            names = "--session",
            paramLabel = "FILE",
            description = "A table of all runs. With a column session, one verdict for each.")
    private @Nullable String session;

    @Option(
            names = "--plan",
            paramLabel = "PLAN",
            description = "The runs planned before the first look, such as \"ABBAAB x 10\" (A before, B after)."
                    + " Without it, the runs as driven.")
    private @Nullable String plan;

    @Option(
            names = "--margin",
            paramLabel = "PERCENT",
            description = "Difference that does not matter, in percent of a lap (default: ${DEFAULT-VALUE}).",
            defaultValue = "0.3")
    private double margin;

    @Option(
            names = "--confidence",
            paramLabel = "SHARE",
            description = "Confidence of the interval, 0.7 to 0.999 (default: ${DEFAULT-VALUE}).",
            defaultValue = "0.95")
    private double confidence;

    @Option(names = "--hand-timed", description = "A person pressed a button: judge whole runs, not laps.")
    private boolean handTimed;

    @Option(names = "--json", description = "Print one JSON document.")
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
            throw new BadInput("--confidence is " + confidence + "; it must be from 0.7 to 0.999.");
        }
        if (!(margin >= 0 && margin <= 10)) {
            throw new BadInput("--margin is " + margin + " %; it must be from 0 to 10 %.");
        }
        // Rounded, so that a confidence of 0.95 is an alpha of 0.05 and not of 0.05000000000000004.
        double alpha = Math.round((1 - confidence) * 1e9) / 1e9;
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
        List<Verdict> verdicts = reading.sessions().stream()
                .map(read -> judgeChange.judge(SessionSource.of(read, file), settings))
                .toList();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            List<VerdictJson> all = verdicts.stream()
                    .map(verdict -> VerdictJson.of(verdict, settings.alpha()))
                    .toList();
            out.println(Json.of(reading.hasSessions() ? all : all.get(0)));
            return;
        }
        for (int i = 0; i < verdicts.size(); i++) {
            ReadSession read = reading.sessions().get(i);
            if (!read.name().isEmpty()) {
                out.println((i == 0 ? "" : System.lineSeparator()) + "Session " + read.name());
            }
            print(out, verdicts.get(i), settings);
        }
    }

    private void judgeFiles(TrialSettings settings) {
        if (before.isEmpty() || after.isEmpty()) {
            throw new BadInput(
                    "Give laps of both sides: --before FILE --after FILE, or one table with --session FILE.");
        }
        SessionSource.Ordered ordered = SessionSource.of(runs(before), runs(after), settings.plan());
        PrintWriter out = spec.commandLine().getOut();
        Session driven = ordered.session();
        Verdict verdict = judgeChange.judge(driven, settings);
        if (json) {
            out.println(Json.of(VerdictJson.of(verdict, settings.alpha())));
        } else {
            print(out, verdict, settings);
            if (!ordered.assumption().isEmpty()) {
                out.println("- " + ordered.assumption());
            }
        }
    }

    private List<ReadRun> runs(List<String> files) {
        List<ReadRun> runs = new ArrayList<>();
        for (String file : files) {
            runs.addAll(source.read(file, spec.commandLine().getErr()).runs());
        }
        return runs;
    }

    private static void print(PrintWriter out, Verdict verdict, TrialSettings settings) {
        VerdictInWords words = new VerdictInWords(verdict, settings);
        out.println(words.headline());
        printIfAny(out, words.needed());
        printIfAny(out, words.confidence());
        printIfAny(out, words.consistency());
        printIfAny(out, words.offs());
        out.println();
        out.printf("%8s%8s%8s%12s%12s%12s%n", "", "laps", "count", "pace", "spread", "best");
        printSide(out, "before", verdict.before());
        printSide(out, "after", verdict.after());
        if (!words.caveats().isEmpty()) {
            out.println();
            words.caveats().forEach(caveat -> out.println("- " + caveat));
        }
    }

    private static void printIfAny(PrintWriter out, String sentence) {
        if (!sentence.isEmpty()) {
            out.println(sentence);
        }
    }

    private static void printSide(PrintWriter out, String name, Stint stint) {
        out.printf(
                "%8s%8d%8d%12s%12s%12s%n",
                name,
                stint.laps().size(),
                stint.cleanLaps(),
                stint.paceS().isPresent() ? Figures.seconds(stint.paceS().getAsDouble()) : Figures.NONE,
                stint.spreadS().isPresent() ? Figures.seconds(stint.spreadS().getAsDouble()) : Figures.NONE,
                stint.bestS().isPresent() ? Figures.seconds(stint.bestS().getAsDouble()) : Figures.NONE);
    }
}
