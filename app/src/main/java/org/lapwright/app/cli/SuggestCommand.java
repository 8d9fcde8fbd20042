package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.answer.SuggestionJson;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.advice.LearnCar;
import org.lapwright.app.usecase.advice.SuggestChanges;
import org.lapwright.app.usecase.advice.SuggestChanges.Advice;
import org.lapwright.app.usecase.advice.SuggestChanges.Answer;
import org.lapwright.app.usecase.advice.SuggestChanges.Question;
import org.lapwright.core.advice.Proof;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.session.NoisePrior;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What to try next. */
@Command(
        name = "suggest",
        description = {
            "Which change of a car is worth trying next on a track, why, and how many laps would prove it.",
            "A guess of the model, to be tested."
        },
        footer = {
            "",
            "Examples:",
            "  lapwright suggest dunlin.json shed-loop.json",
            "  lapwright suggest dunlin.json shed-loop.json --shelf parts.json --most-mass 90 --json",
            "  lapwright suggest dunlin.json shed-loop.json --laps monday.csv",
            "",
            "Exit status: 0 something is worth trying, 1 nothing is, 2 bad input."
        })
final class SuggestCommand implements Callable<Integer> {
    private static final int NOTHING = 1;
    private static final int SHOWN = 10;

    private final SuggestChanges suggestChanges;
    private final LearnCar learnCar;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "CAR", description = "A car file (lapwright-car/1); - is standard input.")
    private String car;

    @Parameters(index = "1", paramLabel = "TRACK", description = "A track file (lapwright-track/1).")
    private String track;

    @Option(names = "--shelf", paramLabel = "FILE", description = "A shelf file (lapwright-shelf/1): parts at hand.")
    private @Nullable String shelf;

    @Option(names = "--lane", paramLabel = "NAME", description = "Only this lane; else the mean of all.")
    private @Nullable String lane;

    @Mixin
    private LapSource source;

    @Option(
            names = "--laps",
            paramLabel = "FILE",
            description =
                    "Laps of the car as it is: the changes are tried on cars as these leave it. May be given several times.")
    private List<String> laps = List.of();

    @Mixin
    private ClassRules rules;

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    SuggestCommand(SuggestChanges suggestChanges, LearnCar learnCar) {
        this.suggestChanges = suggestChanges;
        this.learnCar = learnCar;
    }

    @Override
    public Integer call() {
        if (car.equals("-") && track.equals("-")) {
            throw new BadInput("Standard input can be read only once; name a file for the car or for the track.");
        }
        GarageFiles files = new GarageFiles(spec.commandLine().getErr());
        Build build = files.build(car);
        Track course = files.track(track);
        Answer answer = answer(build, course, shelf == null ? List.of() : files.shelf(shelf));
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(Json.of(
                    answer.worthwhile().stream().map(SuggestCommand::json).toList()));
        } else {
            print(out, build, course, answer);
        }
        return answer.worthwhile().isEmpty() ? NOTHING : 0;
    }

    private Answer answer(Build build, Track course, List<Change> parts) {
        try {
            List<Lane> lanes = lane == null ? course.lanes() : List.of(course.requireLane(lane));
            return suggestChanges.answer(
                    new Question(build, course, lanes, parts, rules.bounds(), Proof.USUAL, learned(build, course)));
        } catch (IllegalArgumentException impossible) {
            throw new BadInput(impossible.getMessage() + ".");
        }
    }

    /** Cars as the laps leave it; none without laps. */
    private List<SetUp> learned(Build build, Track course) {
        if (laps.isEmpty()) {
            return List.of();
        }
        List<LearnCar.LaneRun> runs = LaneRuns.of(
                source, laps, lane, build.setUp(), spec.commandLine().getErr());
        return learnCar.learn(new LearnCar.Driven(build.setUp(), course, runs), List.of(), NoisePrior.DEFAULT)
                .draws();
    }

    private static SuggestionJson json(Advice advice) {
        Integer laps = advice.lapsToProve().isPresent() ? advice.lapsToProve().getAsInt() : null;
        return new SuggestionJson(
                advice.words(),
                advice.suggestion().gainS(),
                List.of(
                        advice.suggestion().intervalS().low(),
                        advice.suggestion().intervalS().high()),
                advice.suggestion().chance(),
                advice.suggestion().candidate().effortMin(),
                laps,
                advice.suggestion().candidate().changes().stream()
                        .map(change -> change.kind().code())
                        .toList(),
                advice.why(),
                advice.caution().orElse(null),
                advice.suggestion().candidate().reversible());
    }

    private static void print(PrintWriter out, Build build, Track course, Answer answer) {
        out.printf(
                Locale.ROOT,
                "%s on %s, best lap %s; %d changes tried on cars within what is known of it.%n",
                build.setUp().name(),
                course.name(),
                Figures.seconds(answer.lapS()),
                answer.tried());
        if (answer.worthwhile().isEmpty()) {
            out.println("None of them is likely to make it faster by more than a millisecond.");
            return;
        }
        int place = 1;
        for (Advice advice : answer.worthwhile().stream().limit(SHOWN).toList()) {
            out.println();
            out.println("%d. %s".formatted(place++, advice.words()));
            out.println("   %s faster (9 in 10: %s to %s), chance %s, %s minutes of work, %s"
                    .formatted(
                            Figures.seconds(advice.suggestion().gainS()),
                            Figures.fixed(advice.suggestion().intervalS().low(), 3),
                            Figures.seconds(advice.suggestion().intervalS().high()),
                            Figures.percent(advice.suggestion().chance()),
                            Figures.fixed(advice.suggestion().candidate().effortMin(), 0),
                            advice.lapsToProve().isPresent()
                                    ? "about " + advice.lapsToProve().getAsInt() + " laps would prove it"
                                    : "too small to prove in an evening"));
            out.println("   " + advice.why());
            advice.caution().ifPresent(caution -> out.println("   " + caution));
        }
        out.println();
        out.println("A guess of the model, to be tested: body float, bedding and braids it does not know.");
    }
}
