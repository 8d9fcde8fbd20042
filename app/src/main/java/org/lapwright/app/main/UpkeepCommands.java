package org.lapwright.app.main;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.store.GarageUpkeep;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The commands that look after the garage on disk. */
final class UpkeepCommands {
    private UpkeepCommands() {}

    /** Makes a copy. */
    @Command(
            name = "backup",
            description = {
                "Make a copy of the garage, also while the pages are open.",
                "Without a file it goes into the folder backups beside the garage."
            },
            footer = {"", "Example:", "  lapwright backup /media/stick/garage.db"})
    static final class Backup implements Callable<Integer> {
        private final Supplier<GarageUpkeep> upkeep;
        private final Clock clock;

        @Spec
        private CommandSpec spec;

        @Parameters(arity = "0..1", paramLabel = "FILE", description = "Where the copy goes; nothing may be there yet.")
        private @Nullable Path file;

        @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
        Backup(Supplier<GarageUpkeep> upkeep, Clock clock) {
            this.upkeep = upkeep;
            this.clock = clock;
        }

        @Override
        public Integer call() {
            Path made = file == null
                    ? upkeep.get().backUp(clock.instant())
                    : upkeep.get().backUp(file, clock.instant());
            spec.commandLine().getOut().println("Backed up as " + made + ". It was opened again and is sound.");
            return 0;
        }
    }

    /** Puts a copy back. */
    @Command(
            name = "restore",
            description = {
                "Put a backup in the place of the garage.",
                "The garage of now is backed up first, so that this can be undone the same way."
            },
            footer = {"", "Example:", "  lapwright restore /media/stick/garage.db"})
    static final class Restore implements Callable<Integer> {
        private final Supplier<GarageUpkeep> upkeep;
        private final Clock clock;

        @Spec
        private CommandSpec spec;

        @Parameters(paramLabel = "FILE", description = "A backup.")
        private Path file;

        @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
        Restore(Supplier<GarageUpkeep> upkeep, Clock clock) {
            this.upkeep = upkeep;
            this.clock = clock;
        }

        @Override
        public Integer call() {
            PrintWriter out = spec.commandLine().getOut();
            Path before = upkeep.get().restore(file, clock.instant());
            out.println("Restored from " + file + ".");
            if (!before.equals(file.toAbsolutePath().normalize())) {
                out.println("What was there before is kept as " + before + ".");
            }
            out.println("If the pages are open, load them again.");
            return 0;
        }
    }

    /** Looks whether all is sound. */
    @Command(
            name = "check",
            description = "Read every page and row of the garage, and say whether all is sound and how much there is.",
            footer = {"", "Exit status: 0 all is sound, 1 something is damaged."})
    static final class Check implements Callable<Integer> {
        private static final int DAMAGED = 1;

        private final Supplier<GarageUpkeep> upkeep;

        @Spec
        private CommandSpec spec;

        @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
        Check(Supplier<GarageUpkeep> upkeep) {
            this.upkeep = upkeep;
        }

        @Override
        public Integer call() {
            PrintWriter out = spec.commandLine().getOut();
            GarageUpkeep.Findings findings = upkeep.get().check();
            for (Map.Entry<String, Long> count : findings.counts().entrySet()) {
                out.println("%-16s%10d".formatted(count.getKey(), count.getValue()));
            }
            if (findings.isSound()) {
                out.println("All is sound.");
                return 0;
            }
            findings.complaints().forEach(complaint -> out.println("Damaged: " + complaint + "."));
            out.println("Take the newest backup that is sound: lapwright restore FILE.");
            return DAMAGED;
        }
    }
}
