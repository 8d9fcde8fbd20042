package org.lapwright.app.capture;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;

/** Debian's mosquitto on a port of this machine. */
public final class Broker implements AutoCloseable {
    private static final Path PROGRAM = Path.of("/usr/sbin/mosquitto");

    private final Path configuration;
    private final int port;
    private Process process;

    /** Whether it is installed. */
    public static boolean isThere() {
        return Files.isExecutable(PROGRAM);
    }

    /** Starts it; it keeps its configuration in this folder. */
    public Broker(Path folder) throws Exception {
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        configuration = Files.writeString(
                folder.resolve("broker.conf"),
                "listener %d 127.0.0.1\nallow_anonymous true\npersistence false\nuser root\n".formatted(port));
        start();
    }

    /** Starts it again. */
    public void start() throws Exception {
        process = new ProcessBuilder(PROGRAM.toString(), "-c", configuration.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        for (int i = 0; i < 200; i++) {
            try (Socket probe = new Socket()) {
                probe.connect(new InetSocketAddress("127.0.0.1", port), 1000);
                return;
            } catch (IOException notYet) {
                Thread.sleep(50);
            }
        }
        throw new AssertionError("the broker did not start");
    }

    public String url() {
        return "mqtt://127.0.0.1:" + port;
    }

    public int port() {
        return port;
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        process.waitFor();
    }
}
