package org.lapwright.app.capture;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.usecase.capture.SourceNews;

/** What a gate sends, and what there was to tell of it. */
public final class Sent implements SourceNews {
    final List<String> told = new ArrayList<>();
    private final List<String> reasons = new ArrayList<>();

    public static String line(String body) {
        return body + "*" + WireLine.checksum(body);
    }

    public static String pass(long sequence, double seconds) {
        return line("P,%d,1,%d,1".formatted(sequence, Math.round(seconds * 1e6)));
    }

    public static String beat(String boot, double seconds) {
        return line("H,%s,%d,0".formatted(boot, Math.round(seconds * 1e6)));
    }

    /** What was told. */
    public synchronized List<String> told() {
        return List.copyOf(told);
    }

    /** Why nothing came any more, each time. */
    public synchronized List<String> reasons() {
        return List.copyOf(reasons);
    }

    /** Forgets it. */
    public synchronized void clear() {
        told.clear();
        reasons.clear();
    }

    private synchronized void tell(String what) {
        told.add(what);
    }

    public synchronized boolean isTold(String what) {
        return told.contains(what);
    }

    @Override
    public void unreadable(String why) {
        tell("unreadable");
    }

    @Override
    public void restarted() {
        tell("restarted");
    }

    @Override
    public void dropped(long passes) {
        tell("dropped " + passes);
    }

    @Override
    public synchronized void gone(String why) {
        reasons.add(why);
        tell("gone");
    }

    @Override
    public void back() {
        tell("back");
    }

    @Override
    public void stepped() {
        tell("stepped");
    }
}
