package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.answer.NumbersJson;
import org.lapwright.app.usecase.physics.ExplainedNumber;
import org.lapwright.app.usecase.physics.NumbersInWords;
import org.lapwright.app.usecase.physics.WorkOutNumbers;
import org.lapwright.core.car.SetUp;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a set-up works out to. */
@Command(
        name = "numbers",
        description = {
            "What a set-up works out to: loads, balance, gearing, when it slides and when it tips.",
            "Without a track: grip as measured, no steel under the magnet, the motor at its test voltage."
        },
        footer = {
            "",
            "Examples:",
            "  lapwright numbers dunlin.json",
            "  lapwright numbers dunlin.json --track shed-loop.json --working"
        })
final class NumbersCommand implements Callable<Integer> {
    private final WorkOutNumbers workOutNumbers;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "CAR", description = "A car file (lapwright-car/1); - is standard input.")
    private String car;

    @Option(
            names = "--track",
            paramLabel = "TRACK",
            description = "A track file (lapwright-track/1): its grip, its rails, its supply.")
    private @Nullable String track;

    @Option(names = "--working", description = "Show how each number is reckoned, and from what.")
    private boolean working;

    @Option(names = "--json", description = Json.OPTION)
    private boolean json;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    NumbersCommand(WorkOutNumbers workOutNumbers) {
        this.workOutNumbers = workOutNumbers;
    }

    @Override
    public Integer call() {
        NumbersInWords numbers = workOut();
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(Json.of(NumbersJson.of(numbers.numbers(), plusMinus(numbers))));
        } else {
            print(out, numbers);
        }
        return 0;
    }

    private NumbersInWords workOut() {
        if (car.equals("-") && "-".equals(track)) {
            throw new BadInput("Standard input can be read only once; name a file for the car or for the track.");
        }
        GarageFiles files = new GarageFiles(spec.commandLine().getErr());
        SetUp setUp = files.car(car);
        return track == null ? workOutNumbers.onBench(setUp) : workOutNumbers.on(setUp, files.track(track));
    }

    private static Map<String, Double> plusMinus(NumbersInWords numbers) {
        Map<String, Double> doubts = new LinkedHashMap<>();
        for (ExplainedNumber number : numbers.all()) {
            if (number.plusMinus() > 0) {
                doubts.put(number.key(), number.plusMinus());
            }
        }
        return doubts;
    }

    private void print(PrintWriter out, NumbersInWords numbers) {
        out.println(numbers.setUp().name());
        out.println(numbers.yieldsFirst());
        out.println();
        for (ExplainedNumber number : numbers.all()) {
            out.println("%-24s%22s   %s"
                    .formatted(number.label(), number.shown(), number.meaning())
                    .stripTrailing());
            if (working) {
                out.println(" ".repeat(49) + "= " + number.formula());
                out.println(" ".repeat(49) + "  " + inputs(number.inputs()));
            }
        }
    }

    private static String inputs(List<ExplainedNumber.Input> inputs) {
        return inputs.stream()
                .map(input ->
                        (input.symbol().isEmpty() ? "" : input.symbol() + ": ") + input.name() + " " + input.shown())
                .collect(Collectors.joining("; "));
    }
}
