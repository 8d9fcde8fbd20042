package org.lapwright.app.usecase.run;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.lapwright.app.usecase.capture.Sources;
import org.lapwright.app.usecase.capture.TimingSource;

/** Takes passes from a gate on this computer into the drive that is on, while the pages are open. Any thread. */
public final class ListenHere implements AutoCloseable {
    private static final int PATIENCE_MS = 2000;

    private final Sources sources;
    private final DriveLive driveLive;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final List<Runnable> troubled = new CopyOnWriteArrayList<>();
    private volatile Optional<Ear> ear = Optional.empty();

    /** One gate that is listened to, and the thread that does it. */
    private record Ear(GateEar gate, Thread thread) {}

    /** Gates of {@code sources}, whose passes go to {@code driveLive}. */
    public ListenHere(Sources sources, DriveLive driveLive) {
        this.sources = sources;
        this.driveLive = driveLive;
    }

    /** Has {@code listener} told, on the gate's thread, whenever {@link #state} is another one. */
    public void watch(Runnable listener) {
        listeners.add(listener);
    }

    /** Has {@code listener} told when another gate is listened to, or one is in trouble or out of it; not of each sound. */
    public void watchTrouble(Runnable listener) {
        troubled.add(listener);
    }

    /** How the gate is doing. */
    public GateState state() {
        return ear.map(each -> each.gate().state()).orElse(GateState.NONE);
    }

    /**
     * Listens to a gate, and no longer to another one.
     *
     * @throws IOException if it is not there, with what would be right
     */
    public synchronized void begin(GateChoice choice) throws IOException {
        end();
        GateEar gate = new GateEar(choice, driveLive, () -> tell(listeners), () -> tell(troubled));
        TimingSource source = switch (choice.kind()) {
            case SOUND -> sources.soundCard(gate);
            case SERIAL -> sources.serial(choice.port());
        };
        Thread thread = new Thread(() -> gate.listen(source), "gate");
        thread.setDaemon(true);
        ear = Optional.of(new Ear(gate, thread));
        thread.start();
        tellAll();
    }

    /** Asks another least height of a pass on the sound card from now on, in full scale, 0 to 1. */
    public void need(double leastLevel) {
        ear.ifPresent(each -> each.gate().need(leastLevel));
        tell(listeners);
    }

    /** Listens no longer. */
    public synchronized void end() {
        ear.ifPresent(each -> {
            each.gate().end();
            each.thread().interrupt();
            try {
                each.thread().join(PATIENCE_MS);
            } catch (InterruptedException hurried) {
                Thread.currentThread().interrupt();
            }
        });
        ear = Optional.empty();
        tellAll();
    }

    private void tellAll() {
        tell(listeners);
        tell(troubled);
    }

    private static void tell(List<Runnable> who) {
        who.forEach(Runnable::run);
    }

    @Override
    public void close() {
        end();
    }
}
