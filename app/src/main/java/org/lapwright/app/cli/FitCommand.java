package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.answer.LearnedJson;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.advice.LearnCar;
import org.lapwright.app.usecase.advice.LearnCar.Driven;
import org.lapwright.app.usecase.advice.LearnedInWords;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.fit.Learned;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.units.Interval;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Learns a car from its laps. */
@Command(
        name = "fit",
        description = {
            "Learn a car from its laps: what grip, motor, pickup and drag may be, and how close to the best lap you drive.",
            "Says what the laps cannot tell apart, and which measurement would tell."
        },
        footer = {
            "",
            "A table of laps may say lane by lane and run by run (columns lane and run); --lane says it for all.",
            "",
            "Examples:",
            "  lapwright fit dunlin.json shed-loop.json --laps monday.csv",
            "  lapwright fit dunlin.json shed-loop.json --laps red.txt --lane red --json"
        })
final class FitCommand implements Callable<Integer> {
    private final LearnCar learnCar;

    @Spec
    private CommandSpec spec;

    @Mixin
    private LapSource source;

    @Parameters(index = "0", paramLabel = "CAR", description = "A car file (lapwright-car/1).")
    private String car;

    @Parameters(index = "1", paramLabel = "TRACK", description = "A track file (lapwright-track/1).")
    private String track;

    @Option(
            names = "--laps",
            paramLabel = "FILE",
            required = true,
            arity = "1..*",
            description =
                    "Laps of this set-up: one run a file, or a table with a column run. May be given several times.")
    private List<String> laps;

    @Option(names = "--lane", paramLabel = "NAME", description = "The lane of laps that do not say theirs.")
    private @Nullable String lane;

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    FitCommand(LearnCar learnCar) {
        this.learnCar = learnCar;
    }

    @Override
    public Integer call() {
        GarageFiles files = new GarageFiles(spec.commandLine().getErr());
        SetUp setUp = files.car(car);
        Track course = files.track(track);
        Driven driven = new Driven(
                setUp,
                course,
                LaneRuns.of(source, laps, lane, setUp, spec.commandLine().getErr()));
        try {
            Learned learned = learnCar.learn(driven, List.of(), NoisePrior.DEFAULT);
            PrintWriter out = spec.commandLine().getOut();
            if (json) {
                out.println(Json.of(LearnedJson.of(
                        setUp.name(), course.name(), learned, learnCar.level(), notes(driven, learned))));
            } else {
                print(out, driven, learned);
            }
            return 0;
        } catch (IllegalArgumentException impossible) {
            throw new BadInput(impossible.getMessage() + ".");
        }
    }

    private static List<String> notes(Driven driven, Learned learned) {
        List<String> notes = new ArrayList<>(LearnedInWords.caveats(learned));
        if (driven.track().lanes().size() > 1
                && driven.onKnownLanes() < driven.runs().size()) {
            notes.add(
                    "Some laps do not say their lane: they are taken as the mean of all lanes. --lane, or a column lane,"
                            + " would say.");
        }
        notes.addAll(LearnedInWords.advice(learned));
        return notes;
    }

    private static void print(PrintWriter out, Driven driven, Learned learned) {
        out.println("%s on %s, learned from %s:"
                .formatted(
                        driven.car().name(),
                        driven.track().name(),
                        learned.diagnosis().paces() == 1
                                ? "1 run"
                                : Figures.count(learned.diagnosis().paces()) + " runs"));
        out.println();
        out.printf(Locale.ROOT, "%-34s%-26s%-26s%n", "", "believed before", "after the laps");
        for (Learned.Parameter number : learned.numbers()) {
            out.println("%-34s%-26s%-26s%s"
                    .formatted(
                            LearnedInWords.label(learned, number.name()),
                            LearnedInWords.value(number, number.before()),
                            LearnedInWords.value(number, number.after()),
                            LearnedInWords.told(number))
                    .stripTrailing());
        }
        out.println();
        out.printf(
                Locale.ROOT,
                "%-12s%10s   %-20s%12s   %s%n",
                "lane",
                "best lap",
                "9 in 10 between",
                "your pace",
                "held");
        learned.lanes().forEach(each -> out.println(line(each)));
        out.println();
        notes(driven, learned).forEach(note -> out.println("- " + note));
    }

    private static String line(Learned.OnLane lane) {
        return "%-12s%10s   %-20s%12s   %s"
                .formatted(
                        lane.lane().map(Lane::name).orElse("all"),
                        Figures.seconds(lane.lapS()),
                        between(lane.intervalS()),
                        Figures.seconds(lane.paceS()),
                        lane.measuredS().isPresent()
                                ? Figures.seconds(lane.measuredS().getAsDouble())
                                : "not driven");
    }

    private static String between(Interval interval) {
        int decimals = Figures.decimals(interval);
        return Figures.fixed(interval.low(), decimals) + " and " + Figures.fixed(interval.high(), decimals) + " s";
    }
}
