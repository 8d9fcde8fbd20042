package org.lapwright.core.fit;

import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;

/**
 * Draws from a density by elliptical slice sampling (Murray, Adams and MacKay 2010) about a normal distribution that is near it
 * (Nishihara, Murray and Adams 2014). It has no step length to tune, and every step moves.
 */
final class EllipticalSlice {
    /** The normal distribution is taken this much wider in variance, so that its tails are not the thinner ones. */
    private static final double WIDER = 1.3;

    private static final int MOST_STARTS = 1000;

    private final ToDoubleFunction<double[]> lnDensity;
    private final double[] middle;
    private final double[][] root;

    /**
     * A sampler.
     *
     * @param lnDensity logarithm of the density, but for a constant
     * @param near a normal distribution near it
     */
    EllipticalSlice(ToDoubleFunction<double[]> lnDensity, Laplace near) {
        this.lnDensity = lnDensity;
        middle = near.mode();
        root = near.root();
        for (double[] row : root) {
            for (int k = 0; k < row.length; k++) {
                row[k] *= Math.sqrt(WIDER);
            }
        }
    }

    /**
     * One chain, begun at a point drawn from twice the width of the normal distribution.
     *
     * @param settle steps that are not kept
     * @param keep steps that are
     */
    double[][] chain(int settle, int keep, RandomGenerator chance) {
        double[] y = start(chance);
        double[][] kept = new double[keep][];
        double ln = ratio(y);
        for (int step = 0; step < settle + keep; step++) {
            double height = ln + Math.log(1 - chance.nextDouble());
            double[] across = gaussian(chance);
            double angle = 2 * Math.PI * chance.nextDouble();
            double from = angle - 2 * Math.PI;
            double to = angle;
            double[] next = turned(y, across, angle);
            ln = ratio(next);
            while (!(ln > height) && to - from > 1e-12) {
                if (angle < 0) {
                    from = angle;
                } else {
                    to = angle;
                }
                angle = from + (to - from) * chance.nextDouble();
                next = turned(y, across, angle);
                ln = ratio(next);
            }
            y = next;
            if (step >= settle) {
                kept[step - settle] = outward(y);
            }
        }
        return kept;
    }

    /** From twice the width, but where the density is; failing that, from the middle. */
    private double[] start(RandomGenerator chance) {
        for (int attempt = 0; attempt < MOST_STARTS; attempt++) {
            double[] y = gaussian(chance);
            for (int i = 0; i < y.length; i++) {
                y[i] *= 2 / Math.sqrt(WIDER);
            }
            if (Double.isFinite(ratio(y))) {
                return y;
            }
        }
        return new double[middle.length];
    }

    /** The density over that of the normal distribution, in which y is a unit ball. */
    private double ratio(double[] y) {
        double squares = 0;
        for (double each : y) {
            squares += each * each;
        }
        return lnDensity.applyAsDouble(outward(y)) + squares / 2;
    }

    private double[] outward(double[] y) {
        double[] z = middle.clone();
        for (int i = 0; i < z.length; i++) {
            for (int k = 0; k <= i; k++) {
                z[i] += root[i][k] * y[k];
            }
        }
        return z;
    }

    private double[] gaussian(RandomGenerator chance) {
        double[] drawn = new double[middle.length];
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = chance.nextGaussian();
        }
        return drawn;
    }

    private static double[] turned(double[] y, double[] across, double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double[] next = new double[y.length];
        for (int i = 0; i < next.length; i++) {
            next[i] = cos * y[i] + sin * across[i];
        }
        return next;
    }
}
