package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.answer.BestSetUpJson;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.advice.FindBestSetUp;
import org.lapwright.app.usecase.advice.FindBestSetUp.Answer;
import org.lapwright.app.usecase.advice.FindBestSetUp.Question;
import org.lapwright.core.advice.BestSteps;
import org.lapwright.core.advice.Course;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.track.Track;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The best set-up. */
@Command(
        name = "best",
        description = {
            "The fastest set-up that can be made of a car, for one lane, all lanes or several tracks, and what each step brings.",
            "A guess of the model, to be tested."
        },
        footer = {
            "",
            "Examples:",
            "  lapwright best dunlin.json shed-loop.json",
            "  lapwright best dunlin.json shed-loop.json hall.json --shelf parts.json --most-mass 90 --json",
            "",
            "Exit status: 0 there is a faster set-up, 1 there is none, 2 bad input."
        })
final class BestCommand implements Callable<Integer> {
    private static final int NOTHING = 1;

    private final FindBestSetUp findBestSetUp;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "CAR", description = "A car file (lapwright-car/1); - is standard input.")
    private String car;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "TRACK",
            description = "Track files (lapwright-track/1): the mean of all lanes counts.")
    private List<String> tracks;

    @Option(names = "--shelf", paramLabel = "FILE", description = "A shelf file (lapwright-shelf/1): parts at hand.")
    private @Nullable String shelf;

    @Option(names = "--lane", paramLabel = "NAME", description = "Only this lane of each track.")
    private @Nullable String lane;

    @Mixin
    private ClassRules rules;

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    BestCommand(FindBestSetUp findBestSetUp) {
        this.findBestSetUp = findBestSetUp;
    }

    @Override
    public Integer call() {
        GarageFiles files = new GarageFiles(spec.commandLine().getErr());
        Build build = files.build(car);
        Answer answer = answer(build, files);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(Json.of(json(answer)));
        } else {
            print(out, build, answer);
        }
        return answer.steps().isEmpty() ? NOTHING : 0;
    }

    private Answer answer(Build build, GarageFiles files) {
        List<Course> courses = new ArrayList<>();
        for (String file : tracks) {
            Track track = files.track(file);
            try {
                courses.addAll(lane == null ? Course.all(track) : List.of(new Course(track, track.requireLane(lane))));
            } catch (IllegalArgumentException noLane) {
                throw new BadInput(noLane.getMessage() + ".");
            }
        }
        try {
            Question question =
                    new Question(build, courses, shelf == null ? List.of() : files.shelf(shelf), rules.bounds());
            return findBestSetUp.answer(question, share -> true);
        } catch (IllegalArgumentException impossible) {
            throw new BadInput(impossible.getMessage() + ".");
        }
    }

    private static BestSetUpJson json(Answer answer) {
        List<BestSetUpJson.Step> steps = new ArrayList<>();
        for (int i = 0; i < answer.steps().size(); i++) {
            BestSteps.Step step = answer.steps().get(i);
            steps.add(new BestSetUpJson.Step(
                    answer.words().get(i),
                    step.change().kind().code(),
                    step.gainS(),
                    step.lapS(),
                    List.of(step.allGainS().low(), step.allGainS().high()),
                    step.chance(),
                    step.minutes(),
                    step.reversible()));
        }
        return new BestSetUpJson(answer.wasS(), answer.lapS(), steps, answer.predictions());
    }

    private static void print(PrintWriter out, Build build, Answer answer) {
        out.println("%s could do %s as it is, %s at best; %d laps predicted."
                .formatted(
                        build.setUp().name(),
                        Figures.seconds(answer.wasS()),
                        Figures.seconds(answer.lapS()),
                        answer.predictions()));
        if (answer.steps().isEmpty()) {
            out.println("Nothing that can be set on it makes it faster by as much as a thousandth.");
            return;
        }
        out.println("The steps, the one that brings most for its work first:");
        double minutes = 0;
        for (int i = 0; i < answer.steps().size(); i++) {
            BestSteps.Step step = answer.steps().get(i);
            minutes += step.minutes();
            out.println();
            out.println("%d. %s".formatted(i + 1, answer.words().get(i)));
            out.println("   %s off, lap %s; so far %s to %s (9 in 10) for %s minutes of work%s"
                    .formatted(
                            Figures.seconds(step.gainS()),
                            Figures.seconds(step.lapS()),
                            Figures.fixed(step.allGainS().low(), 3),
                            Figures.seconds(step.allGainS().high()),
                            Figures.fixed(minutes, 0),
                            step.reversible() ? "" : "; cannot be taken back"));
            if (step.margins().twitchier()) {
                out.println("   The car gives less warning from here on.");
            }
        }
        out.println();
        out.println("A guess of the model, to be tested one step at a time.");
    }
}
