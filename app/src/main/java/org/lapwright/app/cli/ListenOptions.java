package org.lapwright.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SoundWatch;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.Sources;
import picocli.CommandLine.Option;

/** Which gate to listen to; one of these. */
final class ListenOptions {
    @Option(
            names = "--from",
            paramLabel = "FILE",
            description = "The gate: a pipe, or a file of an earlier evening; - is standard input (default).")
    private @Nullable String from;

    @Option(
            names = "--pipe",
            description = "The gate is at the other end of standard input: its own lines, or what gpiomon prints.")
    private boolean pipe;

    @Option(names = "--serial", paramLabel = "PORT", description = "The gate is on this serial line, at 115200 baud.")
    private @Nullable String serial;

    @Option(
            names = "--mqtt",
            paramLabel = "URL",
            description = "The gate publishes to this MQTT broker, such as mqtt://192.168.1.5 (docs/timing.md).")
    private @Nullable String mqtt;

    @Option(
            names = "--simulated",
            paramLabel = "CAR",
            arity = "0..1",
            fallbackValue = "",
            description = "No gate at all: laps of a car of the example garage, all invented, come as from a gate.")
    private @Nullable String simulated;

    @Option(
            names = "--sound",
            description = "The gate is on the sound card: left channel lane 1, right channel lane 2.")
    private boolean sound;

    @Option(names = "--recording", paramLabel = "FILE", description = "A recording (WAV) of a gate on the sound card.")
    private @Nullable Path recording;

    /** Whether what comes is invented. */
    boolean isSimulated() {
        return simulated != null;
    }

    /**
     * What is wanted of some gates.
     *
     * @param speed how many of its seconds the simulated gate lets go by in one
     * @param leastLevel least height of a pass on the sound card, in full scale
     */
    record Wanted(double speed, double leastLevel) {}

    /** Listens until it ends. Bad input where that fails. */
    void listen(Sources sources, Wanted wanted, PassSink sink, SourceNews news) {
        try {
            if (serial != null) {
                sources.serial(serial).listen(sink, news);
            } else if (mqtt != null) {
                sources.mqtt(mqtt).listen(sink, news);
            } else if (simulated != null) {
                sources.simulated(simulated, wanted.speed()).listen(sink, news);
            } else if (sound) {
                sources.soundCard(SoundWatch.fixed(wanted.leastLevel())).listen(sink, news);
            } else if (recording != null) {
                sources.recording(recording, SoundWatch.fixed(wanted.leastLevel()))
                        .listen(sink, news);
            } else {
                try (InputStream in = open()) {
                    sources.lines(in).listen(sink, news);
                }
            }
        } catch (IOException broken) {
            throw new BadInput(
                    "%s cannot be listened to: %s. What came before counts.".formatted(name(), broken.getMessage()));
        }
    }

    private InputStream open() throws IOException {
        if (from == null || from.equals("-")) {
            return System.in;
        }
        Path path = Path.of(from);
        if (!Files.exists(path) || Files.isDirectory(path)) {
            throw new BadInput("There is no gate or file " + from + ".");
        }
        return Files.newInputStream(path);
    }

    private String name() {
        if (serial != null) {
            return serial;
        } else if (mqtt != null) {
            return "The broker";
        } else if (simulated != null) {
            return "The simulated gate";
        } else if (sound) {
            return "The sound card";
        } else if (recording != null) {
            return recording.toString();
        }
        return pipe || from == null ? "Standard input" : from;
    }
}
