package org.lapwright.app.capture;

import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;

/** A clock by which each line comes a quarter of an hour after the last: an evening goes through in a second, and none of it is early. */
public final class SlowWire implements LongSupplier {
    private final AtomicLong now = new AtomicLong();

    /** Whether a line has come. */
    public boolean isAsked() {
        return now.get() > 0;
    }

    @Override
    public long getAsLong() {
        return now.addAndGet(900_000_000_000L);
    }
}
