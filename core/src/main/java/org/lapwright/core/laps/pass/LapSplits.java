package org.lapwright.core.laps.pass;

import java.util.Collections;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Where the time of a lap went. A section ends at the gate of its number; the last one ends at the timing line.
 *
 * @param lapS lap time, s
 * @param atS time since the timing line at each section gate that saw the car, by the gate's number, s; both rise
 */
public record LapSplits(double lapS, SortedMap<Integer, Double> atS) {
    /** Copies the map. */
    public LapSplits {
        atS = Collections.unmodifiableSortedMap(new TreeMap<>(atS));
    }

    /** Greatest number of a gate that saw the car; 0 where none did. */
    public int lastGate() {
        return atS.isEmpty() ? 0 : atS.lastKey();
    }

    /**
     * Time of a section, s; empty where a gate at one of its ends saw nothing.
     *
     * @param section its number, 1 to {@code gates + 1}
     * @param gates how many section gates there are on the lap
     */
    public OptionalDouble sectionS(int section, int gates) {
        Double from = section == 1 ? Double.valueOf(0) : atS.get(section - 1);
        Double to = section == gates + 1 ? Double.valueOf(lapS) : atS.get(section);
        return from == null || to == null ? OptionalDouble.empty() : OptionalDouble.of(to - from);
    }
}
