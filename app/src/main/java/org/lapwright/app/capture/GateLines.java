package org.lapwright.app.capture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.app.capture.WireLine.Bad;
import org.lapwright.app.capture.WireLine.Edge;
import org.lapwright.app.capture.WireLine.Heartbeat;
import org.lapwright.app.capture.WireLine.Passed;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;

/**
 * Passes from the lines of one sender. What cannot be believed is told and left out. A lap may only join two passes of one run of
 * the sender's clock: passes wait until a heartbeat names it, and whatever leaves that in doubt (a restart, a count that goes back, a
 * clock that was set) begins a new one.
 */
final class GateLines {
    private static final long NS_PER_US = 1000;

    /** A heartbeat comes each second; without one for so long by the sender's clock there is none. */
    private static final long WAIT_US = 3_000_000;

    /** A message queue may bring a pass twice, but not after so many others. */
    private static final int REMEMBERED = 256;

    private final String source;
    private final boolean live;
    private final Map<Long, Long> recent = new LinkedHashMap<>();
    private final List<Waiting> waiting = new ArrayList<>();
    private final GpioLines gpio = new GpioLines();

    private SenderClock clock;
    private String sender = "";
    private String boot = "";
    private boolean named;
    private int cuts;
    private long newest = -1;
    private long notPasses;
    private long dropped;

    private record Waiting(Passed passed, long arrivalNs) {}

    /**
     * Lines of a sender.
     *
     * @param source its name
     * @param live whether the lines come as they are sent; a recording may come faster
     */
    GateLines(String source, boolean live) {
        this.source = source;
        this.live = live;
        this.clock = new SenderClock(live);
    }

    /** The passes that are known with this line. */
    List<Pass> take(String text, long arrivalNs, SourceNews news) {
        WireLine line = WireLine.parse(text);
        List<Pass> passes = new ArrayList<>();
        if (line instanceof Passed passed) {
            passed(passed, arrivalNs, passes, news);
        } else if (line instanceof Heartbeat beat) {
            heartbeat(beat, arrivalNs, passes, news);
        } else if (line instanceof Edge edge) {
            gpio.pass(source, edge, arrivalNs, news).ifPresent(passes::add);
        } else if (line instanceof Bad bad) {
            news.unreadable(bad.why());
        }
        return passes;
    }

    /** The connection was broken: the next heartbeat must say whether the sender is still in the same run. */
    void broken() {
        named = false;
    }

    /** The passes that still wait, where no more lines come. */
    List<Pass> end(SourceNews news) {
        List<Pass> passes = new ArrayList<>();
        if (!waiting.isEmpty()) {
            begin("");
            release(passes, news);
        }
        return passes;
    }

    private void passed(Passed passed, long arrivalNs, List<Pass> out, SourceNews news) {
        if (passed.lane() < 1 || passed.lane() > Pass.MOST_LANES) {
            news.unreadable("lane %d; it must be 1 to %d".formatted(passed.lane(), Pass.MOST_LANES));
            return;
        }
        if (passed.gate() > Pass.MOST_GATES) {
            news.unreadable("gate %d; it must be 0 to %d".formatted(passed.gate(), Pass.MOST_GATES));
            return;
        }
        if (named) {
            pass(passed, arrivalNs, news).ifPresent(out::add);
            return;
        }
        waiting.add(new Waiting(passed, arrivalNs));
        if (Math.abs(passed.timeUs() - waiting.get(0).passed().timeUs()) > WAIT_US) {
            begin("");
            release(out, news);
        }
    }

    private void heartbeat(Heartbeat beat, long arrivalNs, List<Pass> out, SourceNews news) {
        if (!beat.boot().equals(sender)) {
            if (!boot.isEmpty()) {
                news.restarted();
            }
            begin(beat.boot());
        }
        named = true;
        release(out, news);
        if (clock.take(beat.timeUs(), arrivalNs)) {
            cut();
            news.stepped();
        }
        if (beat.dropped() > dropped) {
            dropped = beat.dropped();
            news.dropped(dropped);
        }
    }

    private void release(List<Pass> out, SourceNews news) {
        List<Waiting> now = List.copyOf(waiting);
        waiting.clear();
        now.forEach(each -> pass(each.passed(), each.arrivalNs(), news).ifPresent(out::add));
    }

    private Optional<Pass> pass(Passed passed, long arrivalNs, SourceNews news) {
        Long before = recent.get(passed.sequence());
        if (before != null && before == passed.timeUs()) {
            return Optional.empty();
        }
        if (before != null || passed.sequence() < newest - REMEMBERED) {
            // The same number for another pass: the sender began anew and no heartbeat has said so yet.
            begin(sender);
            cut();
            news.restarted();
        } else if (passed.sequence() < newest) {
            news.unreadable("pass %d came after pass %d".formatted(passed.sequence(), newest));
            return Optional.empty();
        }
        remember(passed);
        if (passed.edge() == 0) {
            notPasses++;
            return Optional.empty();
        }
        if (clock.take(passed.timeUs(), arrivalNs)) {
            cut();
            news.stepped();
        }
        PassStamp stamp = new PassStamp(PassClock.DEVICE, clock.us() * NS_PER_US, arrivalNs, 0);
        long number = passed.sequence() - notPasses + dropped;
        return Optional.of(new Pass(source, boot, number, passed.lane(), passed.gate(), stamp));
    }

    private void remember(Passed passed) {
        newest = Math.max(newest, passed.sequence());
        recent.put(passed.sequence(), passed.timeUs());
        if (recent.size() > REMEMBERED) {
            recent.remove(recent.keySet().iterator().next());
        }
    }

    /** A new run of the sender's clock; the name is empty where no heartbeat tells one. */
    private void begin(String name) {
        sender = name;
        boot = name;
        clock = new SenderClock(live);
        recent.clear();
        newest = -1;
        notPasses = 0;
        dropped = 0;
        named = true;
        if (name.isEmpty()) {
            cut();
        }
    }

    /** What comes has a clock of its own. */
    private void cut() {
        boot = "%s~%d".formatted(sender, ++cuts);
    }
}
