package org.lapwright.app.usecase.run;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.app.usecase.capture.SoundLevel;
import org.lapwright.app.usecase.capture.SoundWatch;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.app.usecase.capture.TimingSource;
import org.lapwright.core.laps.pass.Pass;

/** What comes from one gate while it is listened to: passes for the drive that is on, and how the gate is doing. */
final class GateEar implements PassSink, SourceNews, SoundWatch {
    private static final int MOST_REMARKS = 3;
    private static final int AGAIN_MS = 500;

    private final DriveLive driveLive;
    private final Runnable changed;
    private final Runnable troubled;
    private final LevelHistory levels = new LevelHistory();
    private final Deque<String> remarks = new ArrayDeque<>();
    private GateChoice choice;
    private String trouble = "";
    private long seen;
    private long taken;
    private boolean ended;

    /**
     * An ear for a gate.
     *
     * @param changed told on the gate's thread whenever {@link #state} is another one
     * @param troubled told besides when it is in trouble or out of it
     */
    GateEar(GateChoice choice, DriveLive driveLive, Runnable changed, Runnable troubled) {
        this.choice = choice;
        this.driveLive = driveLive;
        this.changed = changed;
        this.troubled = troubled;
    }

    synchronized GateState state() {
        return new GateState(Optional.of(choice), trouble, seen, taken, List.copyOf(remarks), levels.lanes());
    }

    /** Listens until it ends or breaks for good. */
    void listen(TimingSource source) {
        try {
            source.listen(this, this);
            broken("it sends no more");
        } catch (IOException broken) {
            broken(String.valueOf(broken.getMessage()));
        }
    }

    private void broken(String why) {
        if (!hasEnded()) {
            gone(why);
        }
    }

    synchronized void need(double leastLevel) {
        choice = choice.withLeastLevel(leastLevel);
    }

    synchronized void end() {
        ended = true;
    }

    private synchronized boolean hasEnded() {
        return ended;
    }

    @Override
    public boolean accept(List<Pass> passes) {
        synchronized (this) {
            seen += passes.size();
        }
        boolean more = keep(passes);
        changed.run();
        return more;
    }

    /** Offers the passes until they are on disk, so that a full disk loses none; false where it is no longer listened to. */
    private boolean keep(List<Pass> passes) {
        while (!hasEnded()) {
            try {
                drive(passes);
                return true;
            } catch (StoreException failed) {
                gone("its passes cannot be saved: " + failed.getMessage());
                if (!waited()) {
                    return false;
                }
                back();
            }
        }
        return false;
    }

    private void drive(List<Pass> passes) {
        Optional<Standing> open = driveLive.open();
        if (open.isEmpty()) {
            return;
        }
        try {
            driveLive.happened(
                    open.get().id(),
                    passes.stream()
                            .<DriveEvent>map(pass -> new DriveEvent.Passed(pass))
                            .toList());
        } catch (IllegalArgumentException over) {
            remark("a drive ended just as the gate saw a pass; it counts for nothing");
            return;
        }
        synchronized (this) {
            taken += passes.size();
        }
    }

    private static boolean waited() {
        try {
            Thread.sleep(AGAIN_MS);
            return true;
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    @Override
    public synchronized double leastLevel() {
        return choice.leastLevel();
    }

    @Override
    public void heard(List<SoundLevel> lanes) {
        boolean full;
        synchronized (this) {
            full = levels.add(lanes);
        }
        if (full) {
            changed.run();
        }
    }

    private void remark(String what) {
        synchronized (this) {
            remarks.addLast(what);
            if (remarks.size() > MOST_REMARKS) {
                remarks.removeFirst();
            }
        }
        changed.run();
    }

    @Override
    public void unreadable(String why) {
        remark("a line was left out: " + why);
    }

    @Override
    public void restarted() {
        remark("the gate began anew; no lap goes over that");
    }

    @Override
    public void dropped(long passes) {
        remark("the gate says that it has lost " + Figures.passes(passes));
    }

    @Override
    public void gone(String why) {
        boolean other;
        synchronized (this) {
            other = !trouble.equals(why);
            trouble = why;
        }
        changed.run();
        if (other) {
            troubled.run();
        }
    }

    @Override
    public void back() {
        gone("");
    }

    @Override
    public void stepped() {
        remark("the gate's clock was set; no lap goes over that");
    }
}
