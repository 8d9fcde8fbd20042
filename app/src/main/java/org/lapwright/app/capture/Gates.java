package org.lapwright.app.capture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import org.lapwright.app.usecase.capture.Sources;
import org.lapwright.app.usecase.capture.TimingSource;

/** All timing sources that there are. */
public final class Gates implements Sources {
    @Override
    public TimingSource lines(InputStream in) {
        return new WireSource(in);
    }

    @Override
    public TimingSource recording(Path file) throws IOException {
        return SoundSource.recording(file);
    }

    @Override
    public TimingSource soundCard() throws IOException {
        return SoundSource.soundCard();
    }
}
