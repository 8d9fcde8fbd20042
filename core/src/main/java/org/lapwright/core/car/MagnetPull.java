package org.lapwright.core.car;

import java.util.Comparator;
import java.util.List;

/**
 * How a magnet pulls at any distance, learned from readings at a few.
 *
 * <p>From three distances on, F₀, z₀ and n of {@link PullCurve} follow by least squares on log pull. Two distances leave n
 * open: then three curves run through both readings, with the exponents that published magnets have at either end and the
 * one in the middle; between the readings they hardly differ, outside they part.
 *
 * @param gentle the curve with the least exponent
 * @param middle the best guess
 * @param steep the curve with the greatest exponent
 * @param scatter what is left over for each degree of freedom, as a share of the pull, one standard deviation; 0 when
 *     there are no more than three readings, because then nothing is left over to tell it by
 */
public record MagnetPull(PullCurve gentle, PullCurve middle, PullCurve steep, double scatter) {
    /** Least exponent of a published magnet: circuits closed by steel. */
    public static final double LEAST_EXPONENT = 1.4;

    /** Greatest exponent of a published magnet: a small one in the open. */
    public static final double GREATEST_EXPONENT = 3.9;

    private static final int PARAMETERS = 3;
    private static final int MOST_READINGS = 1000;

    /** Below this z₀, mm, the curve is a pure power at every gap that a car has. A choice, as is the upper end. */
    private static final double LEAST_SCALE_MM = 0.05;

    private static final double GREATEST_SCALE_MM = 500;
    private static final int GRID = 40;
    private static final int ZOOMS = 12;

    /**
     * The pull at one distance, gram-force.
     *
     * @param lowG least
     * @param middleG best guess
     * @param highG greatest
     */
    public record Band(double lowG, double middleG, double highG) {}

    /**
     * Learns a magnet.
     *
     * @param readings two or more, each at its own distance, in any order
     * @throws IllegalArgumentException if there are too few, two at one distance, or the pull does not fall with distance
     *     as a magnet's does
     */
    public static MagnetPull fit(List<PullReading> readings) {
        if (readings.size() < 2 || readings.size() > MOST_READINGS) {
            throw new IllegalArgumentException(
                    "%d readings of the pull; it needs from 2 to %d, each at its own distance"
                            .formatted(readings.size(), MOST_READINGS));
        }
        List<PullReading> sorted = readings.stream()
                .sorted(Comparator.comparingDouble(PullReading::distanceMm))
                .toList();
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).distanceMm() == sorted.get(i - 1).distanceMm()) {
                throw new IllegalArgumentException("two readings of the pull at %s mm; give their mean as one"
                        .formatted(sorted.get(i).distanceMm()));
            }
        }
        return sorted.size() == 2 ? throughTwo(sorted.get(0), sorted.get(1)) : leastSquares(sorted);
    }

    /**
     * The pull at a distance: the lowest and highest of the curves, wider by the scatter of a reading.
     *
     * @param distanceMm between magnet and rails, mm
     * @throws IllegalArgumentException if the distance is out of range
     */
    public Band at(double distanceMm) {
        double a = gentle.atG(distanceMm);
        double b = steep.atG(distanceMm);
        double best = middle.atG(distanceMm);
        double spread = Math.exp(scatter);
        return new Band(Math.min(best, Math.min(a, b)) / spread, best, Math.max(best, Math.max(a, b)) * spread);
    }

    private static MagnetPull throughTwo(PullReading near, PullReading far) {
        requireFalling(near, far);
        double fall = Math.log(near.pullG() / far.pullG());
        double least = fall / Math.log((far.distanceMm() + LEAST_SCALE_MM) / (near.distanceMm() + LEAST_SCALE_MM));
        if (least > GREATEST_EXPONENT) {
            throw new IllegalArgumentException(
                    ("the pull falls from %s g at %s mm to %s g at %s mm, faster than a magnet's does; distances are"
                                    + " counted from the rails to the magnet itself: measure again")
                            .formatted(near.pullG(), near.distanceMm(), far.pullG(), far.distanceMm()));
        }
        double from = Math.max(LEAST_EXPONENT, least);
        return new MagnetPull(
                through(near, far, from),
                through(near, far, (from + GREATEST_EXPONENT) / 2),
                through(near, far, GREATEST_EXPONENT),
                0);
    }

    /** The curve with a given exponent: (z₀ + z₂)/(z₀ + z₁) = (F₁/F₂)^(1/n). */
    private static PullCurve through(PullReading near, PullReading far, double exponent) {
        double excess = Math.expm1(Math.log(near.pullG() / far.pullG()) / exponent);
        double span = far.distanceMm() - near.distanceMm();
        double scale = Math.max(LEAST_SCALE_MM, span / excess - near.distanceMm());
        return new PullCurve(near.pullG() * Math.pow(1 + near.distanceMm() / scale, exponent), scale, exponent);
    }

    /** For a given z₀ the law is a straight line in ln(1 + z/z₀), so only z₀ is searched for. */
    private static MagnetPull leastSquares(List<PullReading> sorted) {
        requireFalling(sorted.get(0), sorted.get(sorted.size() - 1));
        double low = Math.log(LEAST_SCALE_MM);
        double high = Math.log(GREATEST_SCALE_MM);
        double best = low;
        for (int zoom = 0; zoom < ZOOMS; zoom++) {
            double step = (high - low) / GRID;
            double least = Double.POSITIVE_INFINITY;
            double from = low;
            for (int i = 0; i <= GRID; i++) {
                double left = LogLine.of(sorted, Math.exp(from + i * step)).leftOver();
                if (left < least) {
                    least = left;
                    best = from + i * step;
                }
            }
            low = Math.max(low, best - step);
            high = Math.min(high, best + step);
        }
        LogLine line = LogLine.of(sorted, Math.exp(best));
        if (line.exponent() <= 0) {
            throw notFalling(sorted.get(0), sorted.get(sorted.size() - 1));
        }
        PullCurve curve = new PullCurve(Math.exp(line.logContact()), Math.exp(best), line.exponent());
        int spare = sorted.size() - PARAMETERS;
        return new MagnetPull(curve, curve, curve, spare == 0 ? 0 : Math.sqrt(line.leftOver() / spare));
    }

    private static void requireFalling(PullReading near, PullReading far) {
        if (!(near.pullG() > far.pullG())) {
            throw notFalling(near, far);
        }
    }

    private static IllegalArgumentException notFalling(PullReading near, PullReading far) {
        return new IllegalArgumentException(
                "the pull is %s g at %s mm and %s g at %s mm; it must fall with distance: measure again"
                        .formatted(near.pullG(), near.distanceMm(), far.pullG(), far.distanceMm()));
    }

    /** ln F = ln F₀ − n ln(1 + z/z₀) by least squares for a given z₀, and the sum of squares left over. */
    private record LogLine(double logContact, double exponent, double leftOver) {
        static LogLine of(List<PullReading> readings, double scaleMm) {
            double meanX = 0;
            double meanY = 0;
            for (PullReading reading : readings) {
                meanX += Math.log1p(reading.distanceMm() / scaleMm) / readings.size();
                meanY += Math.log(reading.pullG()) / readings.size();
            }
            double xx = 0;
            double xy = 0;
            double yy = 0;
            for (PullReading reading : readings) {
                double x = Math.log1p(reading.distanceMm() / scaleMm) - meanX;
                double y = Math.log(reading.pullG()) - meanY;
                xx += x * x;
                xy += x * y;
                yy += y * y;
            }
            return new LogLine(meanY - xy / xx * meanX, -xy / xx, Math.max(0, yy - xy * xy / xx));
        }
    }
}
