package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.answer.PredictionJson;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.ForecastInWords;
import org.lapwright.app.usecase.physics.ForecastLap;
import org.lapwright.app.usecase.physics.GateTimes;
import org.lapwright.app.usecase.physics.PredictionInWords;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The best lap that a car could do. */
@Command(
        name = "predict",
        description = {
            "The best lap that a car could do on a track, lane by lane, and what limits it.",
            "A bound that physics sets, not a forecast of what a hand holds."
        },
        footer = {
            "",
            "Examples:",
            "  lapwright predict dunlin.json shed-loop.json",
            "  lapwright predict dunlin.json shed-loop.json --lane red --json --trace",
            "",
            "Exit status: 0 a lap was found, 1 the car can be driven round none of the lanes, 2 bad input."
        })
final class PredictCommand implements Callable<Integer> {
    private static final int NO_LAP = 1;

    private final ForecastLap forecastLap;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "CAR", description = "A car file (lapwright-car/1); - is standard input.")
    private String car;

    @Parameters(index = "1", paramLabel = "TRACK", description = "A track file (lapwright-track/1).")
    private String track;

    @Option(names = "--lane", paramLabel = "NAME", description = "Only this lane.")
    private @Nullable String lane;

    @Option(names = "--trace", description = "With --json: the speed along the lap as well.")
    private boolean trace;

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    PredictCommand(ForecastLap forecastLap) {
        this.forecastLap = forecastLap;
    }

    @Override
    public Integer call() {
        if (trace && !json) {
            throw new BadInput("--trace goes with --json; add it.");
        }
        if (car.equals("-") && track.equals("-")) {
            throw new BadInput("Standard input can be read only once; name a file for the car or for the track.");
        }
        GarageFiles files = new GarageFiles(spec.commandLine().getErr());
        SetUp setUp = files.car(car);
        Track course = files.track(track);
        List<ForecastLap.OnLane> laps = predict(setUp, course);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(Json.of(json(setUp, course, laps)));
        } else {
            print(out, setUp, course, laps);
        }
        return laps.stream().anyMatch(lap -> lap.forecast().central() instanceof PredictedLap) ? 0 : NO_LAP;
    }

    private List<ForecastLap.OnLane> predict(SetUp setUp, Track course) {
        try {
            if (lane == null) {
                return forecastLap.forecast(setUp, course);
            }
            Lane only = course.requireLane(lane);
            return List.of(forecastLap.forecast(setUp, course, only));
        } catch (IllegalArgumentException impossible) {
            throw new BadInput(impossible.getMessage() + ".");
        }
    }

    private PredictionJson json(SetUp setUp, Track course, List<ForecastLap.OnLane> laps) {
        List<PredictionJson.LaneJson> lanes = new ArrayList<>();
        for (ForecastLap.OnLane lap : laps) {
            lanes.add(PredictionJson.LaneJson.of(
                    lap.lane().name(),
                    lap.lengthM(),
                    lap.forecast(),
                    forecastLap.level(),
                    sections(course, lap),
                    caveats(lap),
                    trace));
        }
        return new PredictionJson(setUp.name(), course.name(), lanes);
    }

    private static List<PredictionJson.SectionJson> sections(Track course, ForecastLap.OnLane lap) {
        return lap.forecast().central() instanceof PredictedLap best
                ? GateTimes.of(course, best.trace()).stream()
                        .map(section -> new PredictionJson.SectionJson(section.name(), section.seconds()))
                        .toList()
                : List.of();
    }

    private static List<String> caveats(ForecastLap.OnLane lap) {
        List<String> said = new ArrayList<>(ForecastInWords.caveats(lap.forecast()));
        String none = PredictionInWords.noLap(lap.forecast().central());
        if (!none.isEmpty()) {
            said.add(0, none + ".");
        }
        return said;
    }

    private static void print(PrintWriter out, SetUp setUp, Track course, List<ForecastLap.OnLane> laps) {
        out.println(setUp.name() + " on " + course.name() + ", the best lap that physics allows:");
        out.println();
        out.printf(
                Locale.ROOT,
                "%-12s%10s%12s   %-18s%10s%12s   %s%n",
                "lane",
                "length",
                "lap",
                "9 in 10 between",
                "top",
                "slowest",
                "limited by");
        List<String> notes = new ArrayList<>();
        for (ForecastLap.OnLane lap : laps) {
            out.println(line(lap));
            caveats(lap).stream().filter(note -> !notes.contains(note)).forEach(notes::add);
        }
        printSections(out, course, laps);
        printCauses(out, laps);
        if (!notes.isEmpty()) {
            out.println();
            notes.forEach(note -> out.println("- " + note));
        }
    }

    private static void printSections(PrintWriter out, Track course, List<ForecastLap.OnLane> laps) {
        for (ForecastLap.OnLane lap : laps) {
            List<PredictionJson.SectionJson> sections = sections(course, lap);
            if (!sections.isEmpty()) {
                out.println();
                out.println("Lane " + lap.lane().name() + " from gate to gate:");
                sections.forEach(each -> out.println("  " + each.section() + "  " + Figures.seconds(each.seconds())));
            }
        }
    }

    /** What makes the first lane unsure makes the others unsure. */
    private static void printCauses(PrintWriter out, List<ForecastLap.OnLane> laps) {
        List<ForecastInWords.Cause> causes = laps.stream()
                .map(lap -> ForecastInWords.causes(lap.forecast()))
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElse(List.of());
        if (causes.isEmpty()) {
            return;
        }
        out.println();
        out.println("What makes it unsure, most first, and how to know it better:");
        causes.forEach(cause -> out.println(
                "  %s %s: %s. %s".formatted(cause.label(), cause.written(), cause.brings(), cause.measure())));
    }

    private static String line(ForecastLap.OnLane lap) {
        String length = Figures.fixed(lap.lengthM(), 3) + " m";
        if (!(lap.forecast().central() instanceof PredictedLap best)) {
            return "%-12s%10s%12s".formatted(lap.lane().name(), length, "no lap");
        }
        return "%-12s%10s%12s   %-18s%10s%12s   %s"
                .formatted(
                        lap.lane().name(),
                        length,
                        Figures.seconds(best.lapS()),
                        ForecastInWords.between(lap.forecast()),
                        Figures.fixed(best.topMps(), 2) + " m/s",
                        Figures.fixed(best.slowestMps(), 2) + " m/s",
                        PredictionInWords.shares(best));
    }
}
