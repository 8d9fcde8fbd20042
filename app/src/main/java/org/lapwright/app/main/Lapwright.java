package org.lapwright.app.main;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.lapwright.app.capture.Gates;
import org.lapwright.app.cli.Commands;
import org.lapwright.app.store.GarageUpkeep;

/** The program's entry: wires the rooms together and runs one command. */
public final class Lapwright {
    private Lapwright() {}

    /** Runs the command named by {@code args}; without any, the web app. */
    public static void main(String[] args) {
        System.exit(run(args));
    }

    private static int run(String... args) {
        // Numbers and messages read the same in every country: files and scripts depend on them.
        Locale.setDefault(Locale.ROOT);
        Wiring wiring = new Wiring(System.getenv());
        StandardOutput standardOutput = new StandardOutput();
        PrintWriter out = new PrintWriter(standardOutput, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        String version = Optional.ofNullable(Lapwright.class.getPackage().getImplementationVersion())
                .orElse("(not packaged)");
        Supplier<GarageUpkeep> upkeep = wiring::upkeep;
        Clock clock = Clock.systemUTC();
        int status = new Commands(
                        wiring.lapQuestions(),
                        wiring.physicsQuestions(),
                        wiring.glossary(),
                        wiring::openGarage,
                        version)
                .listening(new Gates(System::nanoTime))
                .with("serve", new ServeCommand(wiring))
                .with("rehearse", new RehearseCommand(wiring))
                .with("backup", new UpkeepCommands.Backup(upkeep, clock))
                .with("restore", new UpkeepCommands.Restore(upkeep, clock))
                .with("check", new UpkeepCommands.Check(upkeep))
                .printingTo(out, err)
                .run(args.length == 0 ? new String[] {"serve"} : args);
        out.flush();
        return standardOutput.isCutShort() ? standardOutput.tellOn(err) : status;
    }
}
