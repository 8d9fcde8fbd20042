package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.lapwright.app.usecase.DescribeLaps;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.Glossary;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.advice.FindBestSetUp;
import org.lapwright.app.usecase.advice.LearnCar;
import org.lapwright.app.usecase.advice.SuggestChanges;
import org.lapwright.app.usecase.capture.Sources;
import org.lapwright.app.usecase.physics.ForecastLap;
import org.lapwright.app.usecase.physics.WorkOutNumbers;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** The command line: every command, its exit status, and how mistakes are told. */
public final class Commands {
    private static final int BAD_INPUT = 2;
    private static final int FAULT = 3;

    private final CommandLine commandLine;
    private final JudgeChange judgeChange;

    /** What {@code lapwright} does without a command, and its version. */
    @Command(
            name = "lapwright",
            description = "Did the change help? Find out from the laps of a slot car on your own track.",
            footer = {"", "Without a command, Lapwright's pages open for your browser, on this computer only."})
    private static final class Root {
        @Option(
                names = {"-h", "--help"},
                usageHelp = true,
                scope = CommandLine.ScopeType.INHERIT,
                description = "Show this help.")
        private boolean help;

        @Option(
                names = {"-V", "--version"},
                versionHelp = true,
                description = "Show the version.")
        private boolean version;
    }

    /**
     * Use cases about laps.
     *
     * @param describeLaps what laps amount to
     * @param judgeChange did the change help
     */
    public record LapQuestions(DescribeLaps describeLaps, JudgeChange judgeChange) {}

    /**
     * Use cases about car and track.
     *
     * @param workOutNumbers what a set-up works out to
     * @param forecastLap the best lap that it could do, and how sure that is
     * @param suggestChanges which change is worth trying
     * @param findBestSetUp the fastest set-up
     * @param learnCar what laps tell of the car
     */
    public record PhysicsQuestions(
            WorkOutNumbers workOutNumbers,
            ForecastLap forecastLap,
            SuggestChanges suggestChanges,
            FindBestSetUp findBestSetUp,
            LearnCar learnCar) {}

    /**
     * Commands that answer by these use cases.
     *
     * @param laps what laps amount to, and whether the change helped
     * @param physics what the model of car and track answers
     * @param glossary what a word means
     * @param openGarage opens the store; asked only by a command that needs it, which closes it again
     * @param version as shown by --version
     */
    public Commands(
            LapQuestions laps,
            PhysicsQuestions physics,
            Glossary glossary,
            Supplier<GarageStore> openGarage,
            String version) {
        commandLine = new CommandLine(new Root()).setExpandAtFiles(false);
        commandLine.getCommandSpec().version("Lapwright " + version);
        judgeChange = laps.judgeChange();
        commandLine.addSubcommand(new LapsCommand(laps.describeLaps()));
        commandLine.addSubcommand(new VerdictCommand(laps.judgeChange()));
        commandLine.addSubcommand(new NumbersCommand(physics.workOutNumbers()));
        commandLine.addSubcommand(new PredictCommand(physics.forecastLap()));
        commandLine.addSubcommand(new SuggestCommand(physics.suggestChanges(), physics.learnCar()));
        commandLine.addSubcommand(new BestCommand(physics.findBestSetUp()));
        commandLine.addSubcommand(new EvenCommand());
        commandLine.addSubcommand(new FitCommand(physics.learnCar()));
        commandLine.addSubcommand(new LadderCommand(openGarage));
        commandLine.addSubcommand(new ExportCommand(openGarage));
        commandLine.addSubcommand(new ImportCommand(openGarage, laps.judgeChange(), Clock.systemUTC()));
        commandLine.addSubcommand(new ExplainCommand(glossary));
        commandLine.setExecutionExceptionHandler((failure, command, parsed) -> tell(failure, command));
        commandLine.setParameterExceptionHandler(Commands::tellMisuse);
    }

    /** Adds a command that needs more than use cases, such as the one that serves the pages. */
    public Commands with(String name, Callable<Integer> command) {
        commandLine.addSubcommand(name, command);
        return this;
    }

    /**
     * Adds the command that takes passes.
     *
     * @param sources what can be listened to
     */
    public Commands listening(Sources sources) {
        commandLine.addSubcommand(new ListenCommand(judgeChange, sources));
        return this;
    }

    /** Sends what is printed elsewhere. */
    public Commands printingTo(PrintWriter out, PrintWriter err) {
        commandLine.setOut(out).setErr(err);
        return this;
    }

    /**
     * Runs a command.
     *
     * @return the exit status
     */
    public int run(String... args) {
        Numbers.readBy(commandLine);
        // Else a mistyped option behind --before would be taken for a file.
        commandLine.setUnmatchedOptionsAllowedAsOptionParameters(false);
        try {
            return commandLine.execute(args);
        } catch (OutOfMemoryError full) {
            commandLine
                    .getErr()
                    .println("lapwright: that is more than fits into the memory of this program; nothing was changed."
                            + " Give it less at a time, such as one file for each stint.");
            return FAULT;
        } catch (StackOverflowError | LinkageError broken) {
            return fault(broken, commandLine.getErr());
        }
    }

    private static int tell(Exception failure, CommandLine command) {
        PrintWriter err = command.getErr();
        if (failure instanceof BadInput || failure instanceof StoreException) {
            err.println("lapwright: " + failure.getMessage());
            return failure instanceof BadInput ? BAD_INPUT : FAULT;
        }
        return fault(failure, err);
    }

    private static int fault(Throwable failure, PrintWriter err) {
        err.println("lapwright: this is a fault of the program, and nothing was changed. Please report it with:");
        failure.printStackTrace(err);
        return FAULT;
    }

    private static int tellMisuse(ParameterException misuse, String[] args) {
        CommandLine command = misuse.getCommandLine();
        CommandSpec spec = command.getCommandSpec();
        PrintWriter err = command.getErr();
        err.println("lapwright: " + Misuse.sentence(misuse, args));
        err.println("Try '" + spec.qualifiedName() + " --help'.");
        return BAD_INPUT;
    }
}
