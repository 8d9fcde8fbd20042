package org.lapwright.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.lapwright.app.files.ComparisonJson;
import org.lapwright.app.files.Problem;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.FileReading;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.FileStore.Kind;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeptFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Brings cars, tracks and comparisons into the garage. */
@Command(
        name = "import",
        description = {
            "Bring cars, tracks and comparisons into the garage: a ZIP that lapwright export wrote, or single JSON files.",
            "What is there already is not doubled, and not overwritten without --replace."
        },
        footer = {
            "",
            "Examples:",
            "  lapwright import garage.zip",
            "  lapwright import dunlin.car.json shed-loop.track.json",
            "",
            "Exit status: 0 all came in or was there, 1 something was left out."
        })
final class ImportCommand implements Callable<Integer> {
    private static final int LEFT_OUT = 1;
    private static final int LONGEST_ENTRY = 20_000_000;
    private static final int MOST_ENTRIES = 100_000;
    private static final int KEY_LENGTH = 40;

    private final Supplier<GarageStore> openGarage;
    private final JudgeChange judge;
    private final Clock clock;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "1..*", paramLabel = "FILE", description = "A ZIP or JSON files.")
    private List<Path> files;

    @Option(names = "--replace", description = "A car or track of the same name is replaced; its older versions stay.")
    private boolean replace;

    private int came;
    private int there;
    private int leftOut;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    ImportCommand(Supplier<GarageStore> openGarage, JudgeChange judge, Clock clock) {
        this.openGarage = openGarage;
        this.judge = judge;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        for (Path file : files) {
            if (!Files.isRegularFile(file)) {
                throw new BadInput("There is no file %s. Nothing was brought in.".formatted(file));
            }
        }
        try (GarageStore garage = openGarage.get()) {
            for (Path file : files) {
                take(garage, file);
            }
        }
        PrintWriter out = spec.commandLine().getOut();
        out.println("%d came in, %d were there already, %d were left out.".formatted(came, there, leftOut));
        return leftOut > 0 ? LEFT_OUT : 0;
    }

    private void take(GarageStore garage, Path file) {
        try {
            if (isZip(file)) {
                takeZip(garage, file);
            } else {
                try (InputStream in = Files.newInputStream(file)) {
                    takeText(garage, file.toString(), text(in));
                }
            }
        } catch (ZipException torn) {
            throw new BadInput("%s is torn: %s. Nothing of it came in.".formatted(file, torn.getMessage()));
        } catch (IOException failed) {
            throw new BadInput("%s cannot be read: %s. What came before is in; nothing is doubled by another try."
                    .formatted(file, failed.getMessage()));
        }
    }

    private static boolean isZip(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.read() == 'P' && in.read() == 'K';
        }
    }

    /** By its directory, which stands at the end, so that a torn one is seen before anything comes in. */
    private void takeZip(GarageStore garage, Path file) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
            if (zip.size() > MOST_ENTRIES) {
                throw new BadInput(
                        "%s has more than %d entries; that is no garage of ours.".formatted(file, MOST_ENTRIES));
            }
            for (ZipEntry entry : Collections.list(zip.entries())) {
                if (!entry.isDirectory() && entry.getName().endsWith(".json")) {
                    try (InputStream in = zip.getInputStream(entry)) {
                        takeText(garage, file + ", " + entry.getName(), text(in));
                    }
                }
            }
        }
    }

    private static String text(InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(LONGEST_ENTRY + 1);
        if (bytes.length > LONGEST_ENTRY) {
            throw new IOException("a part of it is larger than 20 MB unpacked");
        }
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private void takeText(GarageStore garage, String where, String text) {
        Optional<ExchangedList> list = ExchangedList.of(text);
        if (text.contains("\"" + ComparisonJson.FORMAT + "\"")) {
            comparison(garage, where, text);
        } else if (list.isPresent()) {
            list(garage, where, text, list.get());
        } else if (text.contains("lapwright-track/")) {
            FileReading<TrackFile> reading = TrackFile.read(text);
            keep(
                    garage,
                    where,
                    Kind.TRACK,
                    text,
                    reading.accepted().map(read -> read.track().name()),
                    reading.problems());
        } else {
            FileReading<CarFile> reading = CarFile.read(text);
            keep(
                    garage,
                    where,
                    Kind.CAR,
                    text,
                    reading.accepted().map(read -> read.setUp().name()),
                    reading.problems());
        }
    }

    private void keep(
            GarageStore garage, String where, Kind kind, String text, Optional<String> name, List<Problem> problems) {
        if (name.isEmpty()) {
            leave(where, problems.get(0).sentence());
            return;
        }
        Optional<KeptFile> before = garage.file(kind, name.get()).filter(kept -> !kept.example());
        if (before.filter(kept -> kept.text().equals(text)).isPresent()) {
            there++;
        } else if (before.isPresent() && !replace) {
            leave(where, "there is another '%s' already; --replace takes this one.".formatted(name.get()));
        } else {
            garage.keepFile(new KeptFile(kind, name.get(), text, false, clock.instant()));
            came++;
        }
    }

    private void list(GarageStore garage, String where, String text, ExchangedList list) {
        List<Problem> problems = list.problems(text);
        Optional<String> before = garage.list(list.kind());
        if (!problems.isEmpty()) {
            leave(where, problems.get(0).sentence());
        } else if (before.filter(text::equals).isPresent()) {
            there++;
        } else if (before.isPresent() && !replace) {
            leave(where, "there is another %s already; --replace takes this one.".formatted(list.words()));
        } else {
            garage.keepList(list.kind(), text, clock.instant());
            came++;
        }
    }

    private void comparison(GarageStore garage, String where, String text) {
        try {
            Parcel.Unpacked unpacked = Parcel.unpack(text);
            boolean known = garage.comparisons().stream()
                    .anyMatch(each -> each.savedAt().equals(unpacked.at())
                            && each.kept().car().equals(unpacked.kept().car())
                            && each.kept().session().equals(unpacked.kept().session()));
            if (known) {
                there++;
                return;
            }
            garage.keep(
                    unpacked.kept(),
                    judge.judge(unpacked.kept().session(), unpacked.kept().settings()),
                    "import-" + key(text),
                    unpacked.at());
            came++;
        } catch (IllegalArgumentException wrong) {
            leave(where, wrong.getMessage() + ".");
        }
    }

    private void leave(String where, String why) {
        leftOut++;
        spec.commandLine().getErr().println(where + ": left out, " + why);
    }

    /** The same text comes in once. */
    private static String key(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest).substring(0, KEY_LENGTH);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
