package org.lapwright.core.fit;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;

/**
 * Paces as best laps over the driver's share: ln pace = ln lap − ln share − own + noise. The share is common to all cars of the
 * driver; {@code own} is how much better or worse this car suits him.
 */
final class PaceTarget implements Target {
    /** How far the model may be wrong about one lane against another, as a share of the lap: a choice. */
    static final double LANE_MISFIT = 0.005;

    /**
     * One run.
     *
     * @param curve its best lap
     * @param from place of the first unknown of its car
     * @param to one after the last
     * @param own place of the car's own share, or −1
     * @param course runs of the same car on the same lanes have the same one
     * @param lnPace logarithm of the pace
     * @param deviation its noise
     */
    record Row(LapCurve curve, int from, int to, int own, int course, double lnPace, double deviation) {}

    private final int size;
    private final Belief driver;
    private final Belief own;
    private final List<Row> rows;
    private final double[][] precision;

    /**
     * Puts runs together.
     *
     * @param size how many unknowns; the first is the driver's share
     * @param driver what is believed of its logarithm
     * @param own what is believed of a car's own share, as a logarithm
     */
    PaceTarget(int size, Belief driver, Belief own, List<Row> rows) {
        this.size = size;
        this.driver = driver;
        this.own = own;
        this.rows = List.copyOf(rows);
        precision = precision(this.rows);
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public double[] residuals(double[] z) {
        double[] residuals = new double[rows.size()];
        double lnShare = lnShare(z);
        for (int i = 0; i < residuals.length; i++) {
            Row row = rows.get(i);
            residuals[i] = row.lnPace - lnLap(i, z) + lnShare + (row.own < 0 ? 0 : own.at(z[row.own]));
        }
        return residuals;
    }

    /**
     * Logarithm of the driver's share; NaN where it cannot be, so that the density there is none. It stays a straight line of z, and
     * the cut a wall, because a bent one makes ridges that draws follow badly.
     */
    private double lnShare(double[] z) {
        double lnShare = driver.middle() + driver.deviation() * z[0];
        return lnShare >= driver.low() && lnShare <= driver.high() ? lnShare : Double.NaN;
    }

    /** Logarithm of the best lap of a run, by its curve. */
    double lnLap(int run, double[] z) {
        Row row = rows.get(run);
        return row.curve.value(Arrays.copyOfRange(z, row.from, row.to));
    }

    @Override
    public double lnDensity(double[] z) {
        // Without runs the wall still stands.
        return Target.super.lnDensity(z) + 0 * lnShare(z);
    }

    @Override
    public double[][] slopes(double[] z) {
        double[][] slopes = new double[rows.size()][size];
        for (int i = 0; i < slopes.length; i++) {
            Row row = rows.get(i);
            double[] curve = row.curve.gradient(Arrays.copyOfRange(z, row.from, row.to));
            System.arraycopy(curve, 0, slopes[i], row.from, curve.length);
            slopes[i][0] = -driver.deviation();
            if (row.own >= 0) {
                slopes[i][row.own] = -own.deviation();
            }
        }
        return slopes;
    }

    @Override
    public double[][] precision() {
        return precision;
    }

    private static double[][] precision(List<Row> rows) {
        if (rows.isEmpty()) {
            return new double[0][0];
        }
        double[][] covariance = new double[rows.size()][rows.size()];
        for (int i = 0; i < covariance.length; i++) {
            for (int k = 0; k < covariance.length; k++) {
                boolean alike = rows.get(i).course == rows.get(k).course;
                covariance[i][k] = alike ? LANE_MISFIT * LANE_MISFIT : 0;
            }
            covariance[i][i] += rows.get(i).deviation * rows.get(i).deviation;
        }
        return new CholeskyDecomposition(new Array2DRowRealMatrix(covariance, false))
                .getSolver()
                .getInverse()
                .getData();
    }
}
