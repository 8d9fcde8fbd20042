package org.lapwright.app.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.lapwright.app.usecase.FileStore.Kind;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.SavedComparison;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes cars, tracks and comparisons of the racer's out of the garage, in open formats. */
@Command(
        name = "export",
        description = {
            "Write your cars, tracks and comparisons into one ZIP of small JSON files, and all laps into a table beside them.",
            "The example garage stays out; so do the shelf and photos, which a backup has. lapwright import brings it into another garage."
        },
        footer = {"", "Example:", "  lapwright export garage.zip"})
final class ExportCommand implements Callable<Integer> {
    private final Supplier<GarageStore> openGarage;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "FILE", description = "The ZIP; nothing may be there yet.")
    private Path file;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    ExportCommand(Supplier<GarageStore> openGarage) {
        this.openGarage = openGarage;
    }

    @Override
    public Integer call() {
        try (GarageStore garage = openGarage.get()) {
            List<KeptFile> cars = own(garage.files(Kind.CAR));
            List<KeptFile> tracks = own(garage.files(Kind.TRACK));
            List<SavedComparison> comparisons = garage.comparisons().stream()
                    .filter(each -> !each.kept().example())
                    .toList();
            write(cars, tracks, lists(garage), comparisons);
            spec.commandLine()
                    .getOut()
                    .println("%d cars, %d tracks and %d comparisons are in %s."
                            .formatted(cars.size(), tracks.size(), comparisons.size(), file));
        } catch (FileAlreadyExistsException there) {
            throw new BadInput(file + " is there already; give another name.");
        } catch (IOException failed) {
            throw new BadInput("%s could not be written: %s.".formatted(file, failed.getMessage()));
        }
        return 0;
    }

    private static Map<ExchangedList, String> lists(GarageStore garage) {
        Map<ExchangedList, String> lists = new EnumMap<>(ExchangedList.class);
        for (ExchangedList list : ExchangedList.values()) {
            garage.list(list.kind()).ifPresent(text -> lists.put(list, text));
        }
        return lists;
    }

    private static List<KeptFile> own(List<KeptFile> files) {
        return files.stream().filter(each -> !each.example()).toList();
    }

    /** Under a passing name first, so that a file with the final name is whole. */
    private void write(
            List<KeptFile> cars,
            List<KeptFile> tracks,
            Map<ExchangedList, String> lists,
            List<SavedComparison> comparisons)
            throws IOException {
        if (Files.exists(file)) {
            throw new FileAlreadyExistsException(file.toString());
        }
        Path passing = file.resolveSibling(file.getFileName() + ".part");
        try (OutputStream out = Files.newOutputStream(passing);
                ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            put(zip, "cars", "car.json", cars);
            put(zip, "tracks", "track.json", tracks);
            for (Map.Entry<ExchangedList, String> list : lists.entrySet()) {
                put(zip, list.getKey().entry(), list.getValue());
            }
            StringBuilder laps = new StringBuilder("session,run,side,lap,lap_s\r\n");
            for (SavedComparison each : comparisons) {
                put(zip, "comparisons/%06d.json".formatted(each.id()), Parcel.pack(each));
                append(laps, each);
            }
            put(zip, "laps.csv", laps.toString());
        }
        Files.move(passing, file, StandardCopyOption.ATOMIC_MOVE);
    }

    private static void put(ZipOutputStream zip, String folder, String ending, List<KeptFile> files)
            throws IOException {
        int number = 1;
        for (KeptFile each : files) {
            String plain = each.name().replaceAll("[^A-Za-z0-9]+", "-").toLowerCase(Locale.ROOT);
            put(zip, "%s/%03d-%s.%s".formatted(folder, number++, plain, ending), each.text());
        }
    }

    private static void put(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    /** As {@code verdict --session} reads them: one session for each comparison. */
    private static void append(StringBuilder laps, SavedComparison saved) {
        int run = 1;
        for (var driven : saved.kept().session().runs()) {
            for (var lap : driven.run().laps()) {
                laps.append(saved.id())
                        .append(',')
                        .append(run)
                        .append(',')
                        .append(driven.side().code());
                laps.append(',')
                        .append(lap.number())
                        .append(',')
                        .append(lap.seconds())
                        .append("\r\n");
            }
            run++;
        }
    }
}
