package org.lapwright.app.web.run;

import java.io.IOException;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Tells pages how a drive stands, by server-sent events (WHATWG HTML, 9.2). An event is the whole state and its id the state's
 * name, so a page that was away misses nothing: it says what it saw last and gets the present state, if that is another one.
 *
 * <p>The state is written once for all viewers. Each viewer has a thread of its own: a phone that has walked out of reach holds up
 * nobody. When states come faster than a viewer takes them, it gets the newest.
 */
public final class RunStream implements AutoCloseable {
    /** More pages than this ask by themselves, as without a stream. */
    static final int MOST_VIEWERS = 40;

    private static final Logger LOG = Logger.getLogger(RunStream.class.getName());

    /** So often a word goes out while nothing happens, that each end knows the other is there. */
    private static final long HEARTBEAT_MS = 10_000;

    private final Supplier<Shown> now;
    private final Object board = new Object();
    private Optional<Shown> shown = Optional.empty();
    private boolean stale = true;
    private boolean closed;
    private int viewers;

    /**
     * A state as the pages show it.
     *
     * @param name of the state
     * @param html of it; empty when no drive is on
     */
    public record Shown(String name, String html) {
        /** No drive is on. */
        public static final Shown NOTHING = new Shown("none", "");

        /** As it goes over the wire. */
        String event() {
            StringBuilder event = new StringBuilder(html.length() + 500);
            event.append("id: ").append(name).append("\nevent: ").append(html.isEmpty() ? "over" : "now");
            html.lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .forEach(line -> event.append("\ndata: ").append(line));
            // An event without data is none.
            return event.append(html.isEmpty() ? "\ndata: over\n\n" : "\n\n").toString();
        }
    }

    /** Whoever is told. */
    interface Viewer {
        /** Sends this at once; waits until it is under way. */
        void send(String text) throws IOException;

        /** It is told no more. */
        void close();
    }

    /** A stream of what {@code now} says whenever it has {@link #changed}. */
    public RunStream(Supplier<Shown> now) {
        this.now = now;
        start("run-writer", this::write);
    }

    private static void start(String name, Runnable work) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        thread.start();
    }

    /** Says that the drive stands otherwise than before. Returns at once. */
    public void changed() {
        synchronized (board) {
            stale = true;
            board.notifyAll();
        }
    }

    /** Tells a viewer from now on; {@code seen} is the state it shows, or empty. Says whether there is room for it. */
    boolean open(Viewer viewer, String seen) {
        synchronized (board) {
            if (viewers >= MOST_VIEWERS || closed) {
                return false;
            }
            if (viewers == 0) {
                // Nobody looked, so nothing was written.
                shown = Optional.empty();
                stale = true;
            }
            viewers++;
            board.notifyAll();
        }
        start("run-viewer", () -> tell(viewer, seen));
        return true;
    }

    private void tell(Viewer viewer, String seenFirst) {
        String seen = seenFirst;
        try {
            viewer.send(": here\n\n");
            while (!isClosed()) {
                Optional<Shown> next = await(seen);
                viewer.send(next.map(Shown::event).orElse(": here\n\n"));
                seen = next.map(Shown::name).orElse(seen);
            }
        } catch (IOException gone) {
            // It left; when it comes back it says what it saw last.
            LOG.log(Level.FINE, "a viewer left", gone);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        } finally {
            synchronized (board) {
                viewers--;
            }
            viewer.close();
        }
    }

    /** The present state once it is another one than {@code seen}; empty if it is not for a while. */
    private Optional<Shown> await(String seen) throws InterruptedException {
        long until = System.nanoTime() + HEARTBEAT_MS * 1_000_000;
        synchronized (board) {
            while (!closed && shown.filter(state -> !state.name().equals(seen)).isEmpty()) {
                long leftMs = (until - System.nanoTime()) / 1_000_000;
                if (leftMs <= 0) {
                    return Optional.empty();
                }
                board.wait(leftMs);
            }
            return closed ? Optional.empty() : shown;
        }
    }

    private boolean isClosed() {
        synchronized (board) {
            return closed;
        }
    }

    /** Writes the state whenever it has changed and somebody looks. */
    private void write() {
        try {
            while (true) {
                synchronized (board) {
                    while (!closed && (!stale || viewers == 0)) {
                        board.wait();
                    }
                    if (closed) {
                        return;
                    }
                    stale = false;
                }
                put(written());
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private Optional<Shown> written() {
        try {
            return Optional.of(now.get());
        } catch (RuntimeException fault) {
            // The pages keep what they show, and the next lap is another attempt.
            LOG.log(Level.SEVERE, "fault while telling the run", fault);
            return Optional.empty();
        }
    }

    private void put(Optional<Shown> state) {
        synchronized (board) {
            shown = state.or(() -> shown);
            board.notifyAll();
        }
    }

    @Override
    public void close() {
        synchronized (board) {
            closed = true;
            board.notifyAll();
        }
    }
}
