package org.lapwright.app.capture;

import java.io.IOException;
import java.io.InputStream;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.TimingSource;

/** Lines of a gate from a pipe, or from a file of an earlier evening. */
public final class WireSource implements TimingSource {
    private final InputStream in;

    /** Reads from a stream until it ends. */
    public WireSource(InputStream in) {
        this.in = in;
    }

    @Override
    public void listen(PassSink sink, SourceNews news) throws IOException {
        GateLines lines = new GateLines("wire", false);
        LineFeed feed = new LineFeed();
        byte[] bytes = new byte[4096];
        for (int read = in.read(bytes); read >= 0; read = in.read(bytes)) {
            for (String line : feed.take(bytes, read)) {
                if (!Handing.on(lines.take(line, System.nanoTime(), news), sink)) {
                    return;
                }
            }
        }
        Handing.on(lines.take(feed.rest(), System.nanoTime(), news), sink);
        Handing.on(lines.end(news), sink);
    }
}
