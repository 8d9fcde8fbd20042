package org.lapwright.app.capture;

import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongSupplier;

/** A clock by which each line comes a quarter of an hour after the last: an evening goes through in a second, and none of it is early. */
final class SlowWire implements LongSupplier {
    private final AtomicLong now = new AtomicLong();

    @Override
    public long getAsLong() {
        return now.addAndGet(900_000_000_000L);
    }
}
