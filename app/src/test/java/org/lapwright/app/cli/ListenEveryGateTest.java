package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.hivemq.client.mqtt.MqttClient;
import com.hivemq.client.mqtt.datatypes.MqttQos;
import com.hivemq.client.mqtt.mqtt3.Mqtt3BlockingClient;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javax.sound.sampled.AudioFileFormat;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.lapwright.app.capture.Broker;
import org.lapwright.app.capture.Gates;
import org.lapwright.app.capture.SlowWire;

/** One and the same A B B A session, from every gate there is: each gives its laps and the verdict. */
class ListenEveryGateTest {
    private static final int LAPS = 10;
    private static final String[] LISTEN = {"listen", "--plan", "ABBA x 10", "--json"};

    @TempDir
    Path folder;

    private final List<Double> stamps = session();
    private final SlowWire clock = new SlowWire();

    private static List<Double> session() {
        List<Double> stamps = new ArrayList<>();
        Random random = new Random(4);
        double at = 1;
        for (double pace : new double[] {2.3, 2.1, 2.1, 2.3}) {
            stamps.add(at);
            for (int i = 0; i < LAPS; i++) {
                at += pace + 0.01 * random.nextGaussian();
                stamps.add(at);
            }
            at += 25;
        }
        return stamps;
    }

    private static String[] words(String... more) {
        List<String> words = new ArrayList<>(List.of(LISTEN));
        words.addAll(List.of(more));
        return words.toArray(new String[0]);
    }

    private void check(Spoken spoken) {
        assertThat(spoken.status()).as(spoken.err()).isZero();
        assertThat(spoken.json().path("verdict").asText()).isEqualTo("faster");
        assertThat(spoken.json().path("before").path("laps")).hasSize(2 * LAPS);
        assertThat(spoken.json().path("after").path("laps")).hasSize(2 * LAPS);
        assertThat(spoken.err()).contains("run 4 A  lap 10").doesNotContain("left out", "clock was set");
    }

    private static String line(String body) {
        int sum = 0;
        for (char c : body.toCharArray()) {
            sum ^= c;
        }
        return body + "*%02X\r\n".formatted(sum);
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < stamps.size(); i++) {
            lines.add(line("P,%d,1,%d,1".formatted(i, Math.round(stamps.get(i) * 1e6))));
        }
        return lines;
    }

    private CompletableFuture<Spoken> listening(String... more) {
        return CompletableFuture.supplyAsync(() -> Spoken.listening(new Gates(clock), words(more)));
    }

    /** Somebody listens as soon as a heartbeat has arrived. */
    private void awaitListener(Sending sending) throws Exception {
        for (int i = 0; i < 300 && !clock.isAsked(); i++) {
            sending.send(line("H,7f3a,0,0"));
            Thread.sleep(100);
        }
        assertThat(clock.isAsked()).isTrue();
    }

    private interface Sending {
        void send(String line) throws Exception;
    }

    @Test
    void overASerialLine() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/socat")), "socat is not installed");
        Path gate = folder.resolve("gate");
        Path port = folder.resolve("port");
        Process cable = new ProcessBuilder(
                        "/usr/bin/socat", "pty,raw,echo=0,link=" + gate, "pty,raw,echo=0,link=" + port)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            for (int i = 0; i < 200 && !(Files.exists(gate) && Files.exists(port)); i++) {
                Thread.sleep(50);
            }
            CompletableFuture<Spoken> spoken = listening("--serial", port.toString());
            try (OutputStream out = Files.newOutputStream(gate)) {
                Sending sending = line -> {
                    out.write(line.getBytes(StandardCharsets.US_ASCII));
                    out.flush();
                };
                awaitListener(sending);
                for (String line : lines()) {
                    sending.send(line);
                }
                check(spoken.get(60, TimeUnit.SECONDS));
            }
        } finally {
            cable.destroy();
        }
    }

    @Test
    void throughABroker() throws Exception {
        assumeTrue(Broker.isThere(), "mosquitto is not installed");
        try (Broker broker = new Broker(folder)) {
            CompletableFuture<Spoken> spoken = listening("--mqtt", broker.url());
            Mqtt3BlockingClient gate = MqttClient.builder()
                    .useMqttVersion3()
                    .serverHost("127.0.0.1")
                    .serverPort(broker.port())
                    .buildBlocking();
            gate.connect();
            Sending sending = line -> gate.publishWith()
                    .topic("lapwright/v1/shed/pass")
                    .qos(MqttQos.AT_LEAST_ONCE)
                    .payload(line.getBytes(StandardCharsets.US_ASCII))
                    .send();
            awaitListener(sending);
            for (String line : lines()) {
                sending.send(line);
            }
            check(spoken.get(60, TimeUnit.SECONDS));
            gate.disconnect();
        }
    }

    @Test
    void fromTheKernelThroughAPipe() {
        StringBuilder text = new StringBuilder();
        for (double at : stamps) {
            text.append("%.9f\tfalling\tgpiochip0 17\n".formatted(at));
            text.append("%.9f\trising\tgpiochip0 17\n".formatted(at + 0.02));
        }
        InputStream before = System.in;
        try {
            System.setIn(new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.US_ASCII)));
            check(Spoken.of(words("--pipe")));
        } finally {
            System.setIn(before);
        }
    }

    @Test
    void fromARecording() throws IOException {
        float rate = 8000;
        double end = stamps.get(stamps.size() - 1) + 1;
        byte[] bytes = new byte[2 * (int) (end * rate)];
        Random random = new Random(5);
        int next = 0;
        double since = end;
        for (int i = 0; i < bytes.length / 2; i++) {
            double t = i / (double) rate;
            if (next < stamps.size() && t >= stamps.get(next)) {
                since = stamps.get(next++);
            }
            double pulse = t >= since ? 0.4 * Math.exp(-(t - since) / 0.02) : 0;
            int value = (int) Math.round(32_000 * (pulse + 0.005 * random.nextGaussian()));
            bytes[2 * i] = (byte) value;
            bytes[2 * i + 1] = (byte) (value >> 8);
        }
        Path file = folder.resolve("evening.wav");
        AudioFormat format = new AudioFormat(rate, 16, 1, true, false);
        AudioSystem.write(
                new AudioInputStream(new ByteArrayInputStream(bytes), format, bytes.length / 2),
                AudioFileFormat.Type.WAVE,
                file.toFile());
        check(Spoken.of(words("--recording", file.toString())));
    }

    @Test
    void fromTheSimulatedGate() {
        check(Spoken.of(words("--simulated", "--speed", "1000")));
        Spoken none = Spoken.of(words("--simulated", "no such car"));
        assertThat(none.status()).isEqualTo(2);
        assertThat(none.err()).contains("no such car", "Dunlin");
    }
}
