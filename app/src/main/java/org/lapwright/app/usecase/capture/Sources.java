package org.lapwright.app.usecase.capture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;

/** Timing sources that a command can listen to. */
public interface Sources {
    /** A gate that sends lines of text. */
    TimingSource lines(InputStream in);

    /**
     * A recording of a gate on the sound card: its first channel is lane 1, its second lane 2.
     *
     * @throws IOException if it cannot be read or is no recording
     */
    TimingSource recording(Path file) throws IOException;

    /**
     * A gate on the sound card, live.
     *
     * @throws IOException if there is no input to listen to
     */
    TimingSource soundCard() throws IOException;
}
