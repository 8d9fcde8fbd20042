package org.lapwright.app.capture;

import java.util.List;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.TimingSource;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.trial.session.DrivenRun;

/**
 * A gate that is none: sends the laps of a kept comparison as a real gate would send them, line by line, with a pause between two runs.
 */
final class SimulatedSource implements TimingSource {
    private static final String BOOT = "simulated";
    private static final double PAUSE_S = 30;
    private static final double BEAT_S = 1;
    private static final double US = 1e6;
    private static final double MS = 1e3;

    private final KeptComparison laps;
    private final double speed;
    private final GateLines lines = new GateLines("simulated", false);
    private double nowS;
    private long sequence;

    /**
     * A gate.
     *
     * @param laps what is driven
     * @param speed how many of its seconds go by in a second
     */
    SimulatedSource(KeptComparison laps, double speed) {
        this.laps = laps;
        this.speed = speed;
    }

    @Override
    public void listen(PassSink sink, SourceNews news) {
        try {
            beat(news, sink);
            boolean wanted = true;
            for (DrivenRun run : laps.session().runs()) {
                wanted = wanted && drive(run.run().laps(), sink, news);
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private boolean drive(List<TimedLap> run, PassSink sink, SourceNews news) throws InterruptedException {
        go(PAUSE_S, sink, news);
        boolean wanted = pass(sink, news);
        for (TimedLap lap : run) {
            if (!wanted) {
                return false;
            }
            go(lap.seconds(), sink, news);
            wanted = pass(sink, news);
        }
        return wanted;
    }

    /** Lets time go by, heartbeat by heartbeat. */
    private void go(double seconds, PassSink sink, SourceNews news) throws InterruptedException {
        double left = seconds;
        while (left > BEAT_S) {
            sleep(BEAT_S);
            left -= BEAT_S;
            beat(news, sink);
        }
        sleep(left);
    }

    private void sleep(double seconds) throws InterruptedException {
        Thread.sleep(Math.round(seconds * MS / speed));
        nowS += seconds;
    }

    private void beat(SourceNews news, PassSink sink) {
        send("H,%s,%d,0".formatted(BOOT, Math.round(nowS * US)), sink, news);
    }

    private boolean pass(PassSink sink, SourceNews news) {
        return send("P,%d,1,%d,1".formatted(sequence++, Math.round(nowS * US)), sink, news);
    }

    private boolean send(String body, PassSink sink, SourceNews news) {
        String line = body + "*" + WireLine.checksum(body);
        return Handing.on(lines.take(line, System.nanoTime(), news), sink);
    }
}
