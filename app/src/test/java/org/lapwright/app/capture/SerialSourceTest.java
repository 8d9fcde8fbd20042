package org.lapwright.app.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.core.laps.pass.Pass;

/** A serial line, as a pair of pseudo terminals that socat makes; skipped where there is no socat. */
class SerialSourceTest {
    private static final Path SOCAT = Path.of("/usr/bin/socat");

    @TempDir
    Path folder;

    private final Sent news = new Sent();
    private final List<Pass> passes = Collections.synchronizedList(new ArrayList<>());
    private Process cable;

    @BeforeEach
    void plugIn() throws Exception {
        assumeTrue(Files.isExecutable(SOCAT), "socat is not installed");
        cable = new ProcessBuilder(
                        SOCAT.toString(),
                        "pty,raw,echo=0,link=" + folder.resolve("gate"),
                        "pty,raw,echo=0,link=" + folder.resolve("port"))
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        await(() -> Files.exists(folder.resolve("gate")) && Files.exists(folder.resolve("port")));
    }

    @AfterEach
    void pullOut() throws InterruptedException {
        if (cable != null) {
            cable.destroy();
            cable.waitFor();
        }
    }

    private static void await(BooleanSupplier until) throws InterruptedException {
        for (int i = 0; i < 600 && !until.getAsBoolean(); i++) {
            Thread.sleep(50);
        }
        assertThat(until.getAsBoolean()).as("it comes within 30 s").isTrue();
    }

    private void send(String... lines) throws IOException {
        try (OutputStream gate = Files.newOutputStream(folder.resolve("gate"))) {
            gate.write((String.join("\r\n", lines) + "\r\n").getBytes(StandardCharsets.US_ASCII));
        }
    }

    private Thread listening(int until) throws IOException {
        SerialSource source = SerialSource.open(folder.resolve("port").toString(), new SlowWire());
        Thread thread = new Thread(() -> {
            try {
                source.listen(
                        some -> {
                            passes.addAll(some);
                            return passes.size() < until;
                        },
                        news);
            } catch (IOException broken) {
                throw new AssertionError(broken);
            }
        });
        thread.start();
        return thread;
    }

    @Test
    void passesComeOverTheLineAndAPulledCableIsWaitedFor() throws Exception {
        Thread thread = listening(3);
        send(Sent.beat("7f3a", 1), Sent.pass(0, 2), "P,9,1,1,1*00", Sent.pass(1, 8));
        await(() -> passes.size() == 2);
        pullOut();
        await(() -> news.isTold("gone"));
        plugIn();
        await(() -> news.isTold("back"));
        send(Sent.beat("7f3a", 13), Sent.pass(2, 14));
        thread.join(30_000);
        assertThat(thread.isAlive()).isFalse();
        assertThat(passes)
                .extracting(pass -> pass.stamp().timeNs())
                .containsExactly(2_000_000_000L, 8_000_000_000L, 14_000_000_000L);
        assertThat(passes).extracting(Pass::boot).containsOnly("7f3a");
        assertThat(news.told).containsExactly("unreadable", "gone", "back");
    }

    @Test
    void aPortThatIsNotThereIsNamed() {
        assertThatThrownBy(() -> SerialSource.open(folder.resolve("none").toString(), System::nanoTime))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("port");
    }
}
