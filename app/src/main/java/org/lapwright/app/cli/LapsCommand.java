package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.lapwright.app.files.LapReading;
import org.lapwright.app.files.ReadRun;
import org.lapwright.app.files.VerdictJson;
import org.lapwright.app.usecase.DescribeLaps;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.LapInWords;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Stint;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Describes one stint: its laps with their kinds, pace, spread, drift. */
@Command(
        name = "laps",
        description = "Describe one stint: pace, spread, best lap, drift, and which laps were left out and why.",
        footer = {"", "Example:", "  lapwright laps monday.txt"})
final class LapsCommand implements Callable<Integer> {
    private static final int ODD_LAPS_SHOWN = 40;

    private final DescribeLaps describeLaps;

    @Spec
    private CommandSpec spec;

    @Mixin
    private LapSource source;

    @Parameters(
            paramLabel = "FILE",
            description = "A file of lap times: one a line, a pasted list, or a table (CSV) with a column lap_s."
                    + " A single - reads what is piped in.")
    private String file;

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    LapsCommand(DescribeLaps describeLaps) {
        this.describeLaps = describeLaps;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        LapReading reading = source.read(file, err);
        tellOfSides(reading, err);
        Stint stint =
                describeLaps.describe(reading.runs().stream().map(ReadRun::run).toList());
        if (json) {
            out.println(Json.of(VerdictJson.StintJson.of(stint)));
        } else {
            print(out, reading.understoodAs(), stint);
        }
        return 0;
    }

    private void tellOfSides(LapReading reading, PrintWriter err) {
        long sides = reading.runs().stream().map(ReadRun::side).distinct().count();
        if (sides > 1 || reading.sessions().size() > 1) {
            err.println(file + ": all " + Figures.count(reading.runs().size())
                    + " runs are described as one stint. To compare before with after: lapwright verdict --session "
                    + file);
        }
    }

    private static void print(PrintWriter out, String understoodAs, Stint stint) {
        out.println("Read as " + understoodAs + ".");
        out.println();
        row(out, "pace", seconds(stint.paceS()), "middle of the " + Figures.laps(stint.cleanLaps()) + " that count");
        row(out, "spread", seconds(stint.spreadS()), "how far they scatter");
        row(out, "best", seconds(stint.bestS()), "falls with the number of laps; nothing is judged by it");
        row(
                out,
                "held",
                seconds(stint.heldS()),
                "four in five laps are this or better"
                        + stint.heldIntervalS()
                                .map(held -> ", surely between " + Figures.fixed(held.low(), 3) + " and "
                                        + Figures.fixed(held.high(), 3))
                                .orElse(""));
        row(
                out,
                "drift",
                stint.driftSPerLap().isPresent()
                        ? Figures.signed(1000 * stint.driftSPerLap().getAsDouble(), 2) + " ms a lap"
                        : Figures.NONE,
                "");
        row(
                out,
                "worth",
                stint.effectiveLaps().isPresent()
                        ? Figures.laps(Math.round(stint.effectiveLaps().getAsDouble()))
                        : Figures.NONE,
                stint.autocorrelation().isPresent()
                        ? "as many independent ones; neighbours are alike by "
                                + Figures.fixed(stint.autocorrelation().getAsDouble(), 2)
                        : "");
        row(out, "all in", seconds(stint.timePerLapS()), "all time over all laps, incidents included");
        printOddLaps(out, stint);
    }

    private static void printOddLaps(PrintWriter out, Stint stint) {
        List<Lap> odd = stint.laps().stream().filter(lap -> !lap.counts()).toList();
        if (odd.isEmpty()) {
            out.println();
            out.println("Every lap counts.");
            return;
        }
        Map<LapKind, Integer> counts = new TreeMap<>();
        odd.forEach(lap -> counts.merge(lap.kind(), 1, Integer::sum));
        out.println();
        out.println("Left out: "
                + counts.entrySet().stream()
                        .map(count -> Figures.count(count.getValue()) + " "
                                + count.getKey().code())
                        .collect(Collectors.joining(", "))
                + ".");
        for (Lap lap : odd.subList(0, Math.min(ODD_LAPS_SHOWN, odd.size()))) {
            out.printf(
                    Locale.ROOT,
                    "  lap %-5d %9s  %-14s %s%n",
                    lap.number(),
                    Figures.fixed(lap.seconds(), 3),
                    lap.kind().code(),
                    LapInWords.why(lap));
        }
        if (odd.size() > ODD_LAPS_SHOWN) {
            out.println("  … and " + (odd.size() - ODD_LAPS_SHOWN) + " more; --json lists every lap.");
        }
    }

    private static void row(PrintWriter out, String name, String value, String meaning) {
        out.println("%-8s%14s   %s".formatted(name, value, meaning).stripTrailing());
    }

    private static String seconds(OptionalDouble value) {
        return value.isPresent() ? Figures.seconds(value.getAsDouble()) : Figures.NONE;
    }
}
