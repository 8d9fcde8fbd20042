package org.lapwright.app.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class StandardOutputTest {
    private static StandardOutput printedOn(OutputStream target) {
        StandardOutput out = new StandardOutput(target);
        new PrintWriter(out, true, StandardCharsets.UTF_8).println("6.214 s ± 0.1");
        return out;
    }

    private static OutputStream failingWith(String message) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(message);
            }
        };
    }

    @Test
    void whatIsPrintedArrives() {
        ByteArrayOutputStream target = new ByteArrayOutputStream();
        assertThat(printedOn(target).isCutShort()).isFalse();
        assertThat(target.toString(StandardCharsets.UTF_8)).isEqualTo("6.214 s ± 0.1" + System.lineSeparator());
    }

    @Test
    void aFullDiskDoesNotPassForSuccess() {
        StandardOutput out = printedOn(failingWith("No space left on device"));
        assertThat(out.isCutShort()).isTrue();
        StringWriter said = new StringWriter();
        assertThat(out.tellOn(new PrintWriter(said))).isEqualTo(3);
        assertThat(said.toString()).startsWith("lapwright: the output could not be written to its end: No space left");
    }

    @Test
    void aReaderThatHasSeenEnoughIsNoFailure() {
        assertThat(printedOn(failingWith("Broken pipe")).isCutShort()).isFalse();
    }
}
