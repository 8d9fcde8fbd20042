package org.lapwright.core.track.closing;

/**
 * One number of one piece that is to change.
 *
 * @param piece which, from 0
 * @param quantity what about it
 * @param from as it is, mm or degrees
 * @param to as it is to be, mm or degrees
 */
public record Change(int piece, Quantity quantity, double from, double to) {
    /** By how much, mm or degrees; positive when it grows. */
    public double by() {
        return to - from;
    }
}
