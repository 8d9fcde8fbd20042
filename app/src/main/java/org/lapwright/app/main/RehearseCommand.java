package org.lapwright.app.main;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.lapwright.app.store.SqliteGarage;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.web.WebApp;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * Does what a start does, in a folder of its own, and ends: the launcher records the classes that this loads, so that the
 * next start finds them ready.
 */
@Command(name = "rehearse", hidden = true, description = "Load what a start loads, and end.")
final class RehearseCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Spec
    private CommandSpec spec;

    @SuppressWarnings("NullAway.Init") // picocli fills the annotated fields
    RehearseCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("lapwright-rehearsal");
        try {
            Path laps = Files.writeString(folder.resolve("laps.csv"), "lap_s\n" + "6.214\n6.301\n6.299\n".repeat(4));
            Path car = example(folder, "dunlin.car.json");
            Path track = example(folder, "shed-loop.track.json");
            for (String json : List.of("--json", "")) {
                runCommand("numbers", car.toString(), "--track", track.toString(), json);
                runCommand("predict", car.toString(), track.toString(), json);
                runCommand("laps", laps.toString(), json);
                runCommand("verdict", "--before", laps.toString(), "--after", laps.toString(), json);
            }
            visit(folder.resolve("garage.db"));
        } finally {
            delete(folder);
        }
        return 0;
    }

    private static Path example(Path folder, String name) throws IOException {
        try (InputStream in = RehearseCommand.class.getResourceAsStream("/example/" + name)) {
            return Files.write(folder.resolve(name), in.readAllBytes());
        }
    }

    private void runCommand(String... words) {
        CommandLine commands = spec.parent().commandLine();
        commands.execute(Stream.of(words).filter(word -> !word.isEmpty()).toArray(String[]::new));
    }

    private void visit(Path database) throws IOException, InterruptedException {
        try (GarageStore garage = SqliteGarage.open(database);
                WebApp app = new WebApp(wiring.useCases(garage)).start(0)) {
            wiring.exampleGarage(garage).putInAtFirstStart();
            HttpClient client = HttpClient.newHttpClient();
            for (String page : List.of("", "bench", "bench/measure", "ladder", "kept", "words")) {
                client.send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + app.port() + "/" + page))
                                .build(),
                        HttpResponse.BodyHandlers.discarding());
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }
}
