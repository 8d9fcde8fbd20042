package org.lapwright.core.track;

/**
 * Which lane is followed round a layout.
 *
 * @param number its place among the track's lanes, from 0; −1 for a line that keeps its distance from the centre whatever the lanes do
 * @param offsetM left of the centre line at the timing line, m
 */
public record LanePath(int number, double offsetM) {
    /** The centre line. */
    public static final LanePath CENTRE = beside(0);

    /** A line at a constant distance from the centre line. */
    public static LanePath beside(double offsetM) {
        return new LanePath(-1, offsetM);
    }
}
