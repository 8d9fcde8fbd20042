package org.lapwright.app.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own: its exit status, its streams, its data folder. */
class LapwrightTest {
    private static final int LONGEST_S = 60;

    @TempDir
    Path folder;

    private record Ended(int status, String out, String err) {}

    private Ended run(List<String> options, String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx96m"));
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Lapwright.class.getName()));
        command.addAll(List.of(words));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectInput(Files.writeString(folder.resolve("in"), "").toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().put("LAPWRIGHT_DATA", folder.resolve("data").toString());
        Process process = builder.start();
        try {
            assertThat(process.waitFor(LONGEST_S, TimeUnit.SECONDS)).as("ends").isTrue();
            return new Ended(
                    process.exitValue(),
                    Files.readString(out, StandardCharsets.UTF_8),
                    Files.readString(err, StandardCharsets.UTF_8));
        } finally {
            process.destroyForcibly();
        }
    }

    @Test
    void aForeignLocaleChangesNoDigit() throws IOException, InterruptedException {
        Ended ended = run(List.of("-Duser.language=ar", "-Duser.country=EG"), "verdict", "--plan", "AB x 1000");
        assertThat(ended.status()).isEqualTo(2);
        assertThat(ended.err())
                .isEqualTo("lapwright: --plan: laps per run in the plan is 1000; it must be from 3 to 500."
                        + System.lineSeparator());
    }

    @Test
    void theLadderLeavesTheStoreClosed() throws IOException, InterruptedException {
        Ended ended = run(List.of(), "ladder");
        assertThat(ended.status()).isZero();
        assertThat(ended.out()).startsWith("No cars yet.");
        assertThat(folder.resolve("data")).isDirectoryNotContaining("glob:**.db-wal");
    }

    @Test
    void anImpossiblePortIsBadInput() throws IOException, InterruptedException {
        assertThat(run(List.of(), "serve", "--port", "70000").err())
                .startsWith("lapwright: --port is 70000; it must be from 0 to 65535.");
        Ended word = run(List.of(), "serve", "--port", "web");
        assertThat(word.status()).isEqualTo(2);
        assertThat(word.err()).contains("'web' is not a whole number; write one such as 8080.");
    }

    @Test
    void aTakenPortIsOneSentence() throws IOException, InterruptedException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Ended ended = run(List.of(), "serve", "--port", String.valueOf(taken.getLocalPort()));
            assertThat(ended.status()).isEqualTo(2);
            assertThat(ended.out()).isEmpty();
            assertThat(ended.err().lines()).hasSize(1);
            assertThat(ended.err())
                    .contains("port " + taken.getLocalPort() + " is taken")
                    .contains("--port 0");
        }
    }

    @Test
    void theRehearsalStaysOutOfTheHelp() throws IOException, InterruptedException {
        Ended help = run(List.of(), "--help");
        assertThat(help.out()).contains("serve").doesNotContain("rehearse");
    }
}
