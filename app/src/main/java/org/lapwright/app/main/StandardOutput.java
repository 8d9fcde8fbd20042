package org.lapwright.app.main;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;

/**
 * Standard output that remembers whether all of it could be written: a full disk must not pass for success. A reader
 * that has seen enough and closes the pipe is no failure.
 */
final class StandardOutput extends OutputStream {
    private static final int FAULT = 3;

    private final OutputStream out;
    private Optional<IOException> failure = Optional.empty();

    StandardOutput() {
        this(new FileOutputStream(FileDescriptor.out));
    }

    StandardOutput(OutputStream out) {
        this.out = out;
    }

    @Override
    public void write(int b) throws IOException {
        write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        try {
            out.write(bytes, offset, length);
        } catch (IOException failed) {
            failure = Optional.of(failure.orElse(failed));
            throw failed;
        }
    }

    boolean isCutShort() {
        return failure.map(StandardOutput::reason)
                .filter(reason -> !reason.toLowerCase(Locale.ROOT).contains("pipe"))
                .isPresent();
    }

    /** Says what happened; returns the exit status. */
    int tellOn(PrintWriter err) {
        err.println("lapwright: the output could not be written to its end: "
                + failure.map(StandardOutput::reason).orElse("no reason given") + ". Nothing else was changed.");
        return FAULT;
    }

    private static String reason(IOException failed) {
        return String.valueOf(failed.getMessage());
    }
}
