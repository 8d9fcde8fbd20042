package org.lapwright.app.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SoundLevel;
import org.lapwright.app.usecase.capture.SoundWatch;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.Sources;
import org.lapwright.app.usecase.capture.TimingSource;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;

/** A sound card and a serial port "/dev/gate" that do as a test says. */
final class FakeGates implements Sources {
    private final BlockingQueue<Happening> happenings = new LinkedBlockingQueue<>();
    private volatile double leastLevel = Double.NaN;
    private volatile int listening;
    private long sequence;

    /** Something that the gate does; says whether it goes on. */
    private interface Happening {
        boolean to(PassSink sink, SourceNews news, Optional<SoundWatch> watch);
    }

    /** Passes a lane at a time by its clock, s. */
    void pass(int lane, double atS) {
        long number = sequence++;
        PassStamp stamp = new PassStamp(PassClock.AUDIO, Math.round(atS * 1e9), 0, 0);
        happenings.add((sink, news, watch) -> sink.accept(List.of(new Pass("sound", "b", number, lane, 0, stamp))));
    }

    /** Lets a hundred milliseconds pass in which one lane was so loud. */
    void level(double loudest) {
        for (int i = 0; i < 4; i++) {
            happenings.add((sink, news, watch) -> {
                watch.ifPresent(each -> {
                    leastLevel = each.leastLevel();
                    each.heard(List.of(new SoundLevel(loudest, leastLevel, 0)));
                });
                return true;
            });
        }
    }

    void pulled(String why) {
        happenings.add((sink, news, watch) -> {
            news.gone(why);
            return true;
        });
    }

    void back() {
        happenings.add((sink, news, watch) -> {
            news.back();
            return true;
        });
    }

    /** The least height that was asked of it when it was loud last. */
    double leastLevel() {
        return leastLevel;
    }

    /** How many listen to it. */
    int listening() {
        return listening;
    }

    private synchronized void count(int by) {
        listening += by;
    }

    private TimingSource source(Optional<SoundWatch> watch) {
        return (sink, news) -> {
            count(1);
            try {
                boolean more = true;
                while (more) {
                    more = happenings.take().to(sink, news, watch);
                }
            } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
            } finally {
                count(-1);
            }
        };
    }

    @Override
    public TimingSource soundCard(SoundWatch watch) {
        return source(Optional.of(watch));
    }

    @Override
    public TimingSource serial(String port) throws IOException {
        if (!port.equals("/dev/gate")) {
            throw new IOException("there is no such port; the ports here are /dev/gate");
        }
        return source(Optional.empty());
    }

    @Override
    public PassSink runPage(String address, SourceNews news) {
        throw new AssertionError("not asked of pages");
    }

    @Override
    public TimingSource lines(InputStream in) {
        throw new AssertionError("not asked of pages");
    }

    @Override
    public TimingSource mqtt(String address) {
        throw new AssertionError("not asked of pages");
    }

    @Override
    public TimingSource simulated(String car, double speed) {
        throw new AssertionError("not asked of pages");
    }

    @Override
    public TimingSource recording(Path file, SoundWatch watch) {
        throw new AssertionError("not asked of pages");
    }
}
