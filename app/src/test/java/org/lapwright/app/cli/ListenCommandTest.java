package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command {@code listen}, on what a gate would have sent. */
class ListenCommandTest {
    @TempDir
    Path folder;

    private final StringBuilder wire = new StringBuilder();
    private final Random random = new Random(4);
    private long sequence;
    private double at;

    @BeforeEach
    void heartbeat() {
        line("H,7f3a,0,0");
    }

    private void line(String body) {
        int sum = 0;
        for (char c : body.toCharArray()) {
            sum ^= c;
        }
        wire.append(body).append("*%02X".formatted(sum)).append("\r\n");
    }

    private void pass() {
        line("P,%d,1,%d,1".formatted(sequence++, Math.round(at * 1e6)));
        line("P,%d,1,%d,0".formatted(sequence++, Math.round(at * 1e6) + 4000));
    }

    private void run(int laps, double pace) {
        at += 60;
        pass();
        for (int i = 0; i < laps; i++) {
            at += pace + 0.02 * random.nextGaussian();
            pass();
        }
    }

    private Spoken listen(String... more) throws IOException {
        String file = Files.writeString(folder.resolve("evening.log"), wire).toString();
        String[] words = new String[more.length + 3];
        words[0] = "listen";
        words[1] = "--from";
        words[2] = file;
        System.arraycopy(more, 0, words, 3, more.length);
        return Spoken.of(words);
    }

    @Test
    void aWholeSessionRunsToItsVerdict() throws IOException {
        run(10, 6.3);
        run(10, 6.1);
        run(10, 6.1);
        run(10, 6.3);
        Spoken spoken = listen();
        assertThat(spoken.status()).isZero();
        assertThat(spoken.out())
                .contains("run 1 A  lap 1  6.", "run 3 B  lap 10", "All runs are driven.", "s a lap faster")
                .containsPattern("so far: (Not sure yet|After is faster)");
        assertThat(spoken.out().split("so far: ", -1))
                .as("told when it says something else")
                .hasSizeGreaterThan(3);
        assertThat(listen("--json").json().path("verdict").asText()).isEqualTo("faster");
    }

    @Test
    void sectionGatesShowWhereTheChangeGains() throws IOException {
        for (double firstS : new double[] {2.4, 2.3, 2.3, 2.4}) {
            at += 60;
            pass();
            for (int i = 0; i < 10; i++) {
                at += firstS + 0.01 * random.nextGaussian();
                line("P,%d,1,%d,1,1".formatted(sequence++, Math.round(at * 1e6)));
                at += 3.9 + 0.01 * random.nextGaussian();
                pass();
            }
        }
        assertThat(listen().out())
                .contains("With the change faster in section 1.")
                .containsPattern("section 2 +3\\.9\\d{2}|section 2 +3\\.8\\d{2}");
    }

    /** Three laps a run say next to nothing of the spread; an interval over five orders of magnitude is no sentence. */
    @Test
    void aSpreadThatMayBeAnythingIsSaidToBeSo() throws IOException {
        for (double pace : new double[] {6.3, 6.1, 6.1, 6.3}) {
            run(3, pace);
        }
        assertThat(listen("--plan", "ABBA x 3").out())
                .contains("but laps so few leave that wide open.")
                .doesNotContain("between 0.0");
    }

    @Test
    void lapsToWarmUpAndLapsTooManyCountForNothing() throws IOException {
        run(14, 6.3);
        run(12, 6.1);
        Spoken spoken = listen("--plan", "AB x 10", "--warm-up", "2", "--json");
        assertThat(spoken.json().path("before").path("laps")).hasSize(10);
        assertThat(spoken.json().path("after").path("laps")).hasSize(10);
    }

    @Test
    void noiseIsCountedAndInventsNoLap() throws IOException {
        run(5, 6.3);
        wire.append("P,99,1,1,1*00\n\u0000\u0001garbage\n");
        at += 6.3;
        pass();
        Spoken spoken = listen("--plan", "AB x 10");
        assertThat(spoken.status()).isEqualTo(1);
        assertThat(spoken.err())
                .contains("2 lines could not be believed and counted for nothing", "only one side was driven");
        assertThat(spoken.out()).contains("lap 6").doesNotContain("lap 7");
    }

    @Test
    void noLapGoesOverARestartOfTheGate() throws IOException {
        run(3, 6.3);
        line("H,9c01,0,0");
        sequence = 0;
        at = 2;
        pass();
        at += 6.3;
        pass();
        Spoken spoken = listen("--plan", "AB x 10");
        assertThat(spoken.err()).contains("began anew 1 time;");
        assertThat(spoken.out()).contains("lap 4").doesNotContain("lap 5");
    }

    @Test
    void badInputIsNamed() throws IOException {
        assertThat(Spoken.of("listen", "--from", "/nowhere/gate").err()).contains("no gate or file /nowhere/gate");
        assertThat(listen("--plan", "AAAA").err()).contains("is not a run plan");
        assertThat(listen("--pause", "0").err()).contains("--pause");
        assertThat(listen("--lane", "77").err()).contains("lane number");
        assertThat(listen("--threshold", "101").err()).contains("--threshold is 101; it must be from 0 to 100 %");
    }

    @Test
    void aRecordingThatIsNoneIsNamed() {
        Spoken none = Spoken.of("listen", "--recording", "nowhere.wav");
        assertThat(none.status()).isEqualTo(2);
        assertThat(none.err()).contains("nowhere.wav");
        assertThat(Spoken.of("listen", "--recording", "nowhere.wav", "--sound").err())
                .contains("mutually exclusive");
    }
}
