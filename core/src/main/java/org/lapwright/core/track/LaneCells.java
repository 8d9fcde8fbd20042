package org.lapwright.core.track;

import java.util.List;

/**
 * A lane cut into cells by arc length, with curvature, bank and grade of each; what the equations of motion reckon on.
 * Immutable. Cell edges lie on the joints between pieces.
 */
public final class LaneCells {
    private static final int FEWEST = 600;
    private static final double LONGEST_M = 0.02;
    private static final int MOST = 200_000;

    private final Lane lane;
    private final Power power;
    private final ClosingGap closingGap;
    private final double lapM;
    private final double[] lengthM;
    private final double[] curvature;
    private final double[] bankRad;
    private final double[] gradeSine;
    private final double[] feedLengthM;
    private final boolean[] afterJoint;
    private final double[] gripShare;
    private final boolean[] pulls;

    LaneCells(Track track, Lane lane, int cells) {
        if (cells < 2 || cells > MOST) {
            throw new IllegalArgumentException(
                    "a lane is to be cut into %d cells; it must be from 2 to %d".formatted(cells, MOST));
        }
        this.lane = lane;
        this.power = track.power();
        this.closingGap = track.layout().closingGap();
        List<Cell> row = track.layout().cut(track.path(lane), cells);
        lengthM = row.stream().mapToDouble(cell -> cell.section().lengthM()).toArray();
        curvature = row.stream().mapToDouble(cell -> cell.section().curvature()).toArray();
        bankRad = row.stream().mapToDouble(cell -> cell.section().bankRad()).toArray();
        gradeSine = row.stream().mapToDouble(cell -> cell.section().gradeSine()).toArray();
        gripShare = row.stream()
                .mapToDouble(cell ->
                        cell.extras().gripFactor().orElse(track.surface().gripFactor())
                                / track.surface().gripFactor())
                .toArray();
        pulls = new boolean[row.size()];
        afterJoint = new boolean[row.size()];
        for (int i = 0; i < afterJoint.length; i++) {
            afterJoint[i] = row.get(i).afterJoint();
            pulls[i] = row.get(i).extras().magnetic().orElse(track.surface().magnetic());
        }
        double sum = 0;
        for (double length : lengthM) {
            sum += length;
        }
        lapM = sum;
        feedLengthM = new double[lengthM.length];
        double at = 0;
        for (int i = 0; i < lengthM.length; i++) {
            feedLengthM[i] = power.feedLengthM(at + lengthM[i] / 2, lapM);
            at += lengthM[i];
        }
    }

    /** How many cells a lane of this length wants: 600, or one for every 20 mm when that is more. */
    public static int usualCount(double lapM) {
        return Math.min(MOST, Math.max(FEWEST, (int) Math.ceil(lapM / LONGEST_M)));
    }

    /** The lane. */
    public Lane lane() {
        return lane;
    }

    /** What feeds it. */
    public Power power() {
        return power;
    }

    /** By how much the layout fails to close. */
    public ClosingGap closingGap() {
        return closingGap;
    }

    /** Length of the lap, m. */
    public double lapM() {
        return lapM;
    }

    /** How many cells. */
    public int count() {
        return lengthM.length;
    }

    /** Length of a cell along the surface, m. */
    public double lengthM(int cell) {
        return lengthM[cell];
    }

    /** Mean plan curvature of a cell, 1/m, left positive. */
    public double curvature(int cell) {
        return curvature[cell];
    }

    /** Bank of a cell, rad, positive leans into a left turn. */
    public double bankRad(int cell) {
        return bankRad[cell];
    }

    /** Sine of a cell's grade, uphill positive. */
    public double gradeSine(int cell) {
        return gradeSine[cell];
    }

    /** Length of rail that stands in for the ring at the middle of a cell, m; see {@link Power#feedLengthM}. */
    public double feedLengthM(int cell) {
        return feedLengthM[cell];
    }

    /** Grip in a cell over what the track's surface gives. */
    public double gripShare(int cell) {
        return gripShare[cell];
    }

    /** Whether a magnet pulls in a cell. */
    public boolean isMagnetic(int cell) {
        return pulls[cell];
    }

    /** Whether curvature, bank, grade or surface jump at the near edge of a cell. */
    public boolean isAfterJoint(int cell) {
        return afterJoint[cell];
    }
}
