package org.lapwright.app.capture;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.lapwright.app.capture.WireLine.Bad;
import org.lapwright.app.capture.WireLine.Heartbeat;
import org.lapwright.app.capture.WireLine.Passed;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.TimingSource;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;

/**
 * A gate that sends lines of text: a serial device, a pipe, a file of an earlier evening. What cannot be believed is told and left
 * out, never guessed.
 */
public final class WireSource implements TimingSource {
    private static final String NAME = "wire";
    private static final long NS_PER_US = 1000;

    private final InputStream in;
    private String boot = "first";
    private long newest = -1;
    private int restarts;

    /** Reads from a stream until it ends. */
    public WireSource(InputStream in) {
        this.in = in;
    }

    @Override
    public void listen(PassSink sink, SourceNews news) throws IOException {
        BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII));
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            take(WireLine.parse(line), sink, news);
        }
    }

    private void take(WireLine line, PassSink sink, SourceNews news) {
        if (line instanceof Passed passed) {
            if (passed.edge() == 1) {
                pass(passed, sink, news);
            }
        } else if (line instanceof Heartbeat beat) {
            if (!beat.boot().equals(boot) && newest >= 0) {
                news.restarted();
            }
            if (!beat.boot().equals(boot)) {
                newest = -1;
            }
            boot = beat.boot();
            if (beat.dropped() > 0) {
                news.dropped(beat.dropped());
            }
        } else if (line instanceof Bad bad) {
            news.unreadable(bad.why());
        }
    }

    /** A count that begins anew without a heartbeat is a restart all the same. */
    private void pass(Passed passed, PassSink sink, SourceNews news) {
        if (passed.lane() < 1 || passed.lane() > Pass.MOST_LANES) {
            news.unreadable("lane %d; it must be 1 to %d".formatted(passed.lane(), Pass.MOST_LANES));
            return;
        }
        if (passed.sequence() < newest && passed.sequence() == 0) {
            boot = "restart " + ++restarts;
            news.restarted();
            newest = -1;
        }
        newest = Math.max(newest, passed.sequence());
        sink.accept(List.of(new Pass(
                NAME,
                boot,
                passed.sequence(),
                passed.lane(),
                0,
                new PassStamp(PassClock.DEVICE, passed.timeUs() * NS_PER_US, System.nanoTime(), 0))));
    }
}
