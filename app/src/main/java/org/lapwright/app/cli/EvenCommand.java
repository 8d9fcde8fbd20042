package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.answer.EvenRaceJson;
import org.lapwright.app.usecase.advice.EvenRaceInWords;
import org.lapwright.core.advice.Course;
import org.lapwright.core.advice.EvenRace;
import org.lapwright.core.advice.EvenRace.Answer;
import org.lapwright.core.advice.EvenRace.Rival;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** An even race. */
@Command(
        name = "even",
        description = {
            "What makes two cars run level: weight on the faster one, or less voltage on its lane.",
            "A guess of the model, to be tested."
        },
        footer = {
            "",
            "Examples:",
            "  lapwright even dunlin.json knot.json shed-loop.json",
            "  lapwright even dunlin.json knot.json shed-loop.json --lanes red,blue --held 0.95,0.88",
            "",
            "Exit status: 0 there is a way or they are level, 1 there is none, 2 bad input."
        })
final class EvenCommand implements Callable<Integer> {
    private static final int NONE = 1;
    private static final int TWO = 2;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "CAR", description = "A car file (lapwright-car/1).")
    private String first;

    @Parameters(index = "1", paramLabel = "CAR", description = "The other car's file.")
    private String second;

    @Parameters(index = "2", paramLabel = "TRACK", description = "A track file (lapwright-track/1).")
    private String track;

    @Option(
            names = "--lanes",
            split = ",",
            paramLabel = "NAME",
            description = "The lane of each; else the first lane for the first, the second for the second.")
    private @Nullable List<String> lanes;

    @Option(
            names = "--held",
            split = ",",
            paramLabel = "SHARE",
            description = "How much of the best lap each driver holds, 0.5 to 1; else 1 for both.")
    private @Nullable List<Double> held;

    @Mixin
    private ClassRules rules;

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    EvenCommand() {}

    @Override
    public Integer call() {
        GarageFiles files = new GarageFiles(spec.commandLine().getErr());
        Build one = files.build(first);
        Build other = files.build(second);
        Answer answer = answer(one, other, files.track(track));
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(Json.of(json(answer)));
        } else {
            EvenRaceInWords.of(one.setUp().name(), other.setUp().name(), answer).forEach(out::println);
            out.println("A guess of the model, to be tested.");
        }
        return answer.ways().isEmpty() && !answer.isLevel() ? NONE : 0;
    }

    private Answer answer(Build one, Build other, Track course) {
        try {
            return EvenRace.of(rival(one, course, 0), rival(other, course, 1));
        } catch (IllegalArgumentException impossible) {
            throw new BadInput(impossible.getMessage() + ".");
        }
    }

    private Rival rival(Build car, Track course, int place) {
        if ((lanes != null && lanes.size() != TWO) || (held != null && held.size() != TWO)) {
            throw new IllegalArgumentException("lanes and shares are for two cars; give two with a comma between");
        }
        Lane lane = lanes == null
                ? course.lanes().get(Math.min(place, course.lanes().size() - 1))
                : course.requireLane(lanes.get(place));
        return new Rival(car, new Course(course, lane), held == null ? 1 : held.get(place), rules.bounds());
    }

    private static EvenRaceJson json(Answer answer) {
        return new EvenRaceJson(
                answer.firstS(),
                answer.secondS(),
                answer.ways().stream()
                        .map(way -> new EvenRaceJson.Way(
                                answer.firstIsFaster() ? "first" : "second",
                                way.by() == EvenRace.By.BALLAST ? way.amount() : null,
                                way.by() == EvenRace.By.VOLTAGE ? way.amount() : null,
                                way.ballast().map(piece -> piece.xMm().value()).orElse(null),
                                way.lapS()))
                        .toList());
    }
}
