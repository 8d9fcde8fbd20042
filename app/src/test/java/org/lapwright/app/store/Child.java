package org.lapwright.app.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Another Java process that runs a main class of the tests and prints lines. */
final class Child implements AutoCloseable {
    private final Process process;
    private final BufferedReader out;

    private Child(Process process) {
        this.process = process;
        this.out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /**
     * Starts one.
     *
     * @param before words to put before the command, such as those that limit it
     * @param scratch where it may put passing files: a killed process does not tidy up
     */
    static Child start(List<String> before, Path scratch, Class<?> main, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(before);
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Xmx96m",
                "-Dorg.sqlite.tmpdir=" + scratch,
                "-Djava.io.tmpdir=" + scratch,
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        command.addAll(List.of(arguments));
        return new Child(new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start());
    }

    /** The next line, or an empty one at the end. */
    String line() {
        try {
            String line = out.readLine();
            return line == null ? "" : line;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Kills it as "kill -9" does; what it had printed can still be read. */
    void kill() throws InterruptedException {
        // Through the handle, because Process.destroyForcibly() would close our end of the pipe as well.
        process.toHandle().destroyForcibly();
        process.waitFor(10, TimeUnit.SECONDS);
    }

    /** All lines up to the end. */
    List<String> rest() {
        List<String> lines = new ArrayList<>();
        for (String line = line(); !line.isEmpty(); line = line()) {
            lines.add(line);
        }
        return lines;
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
