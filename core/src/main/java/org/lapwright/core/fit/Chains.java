package org.lapwright.core.fit;

import java.util.Arrays;

/**
 * Several chains of draws, and whether they can be believed: split R̂ and effective sample size of Gelman, Carlin, Stern, Dunson,
 * Vehtari and Rubin, Bayesian Data Analysis, 3rd edition, sections 11.4 and 11.5, with Geyer's (1992) initial monotone sequence.
 *
 * @param draws by chain and step; all chains equally long, at least 8 steps
 */
record Chains(double[][][] draws) {
    private static final int LEAST_STEPS = 8;

    Chains {
        if (draws.length < 1 || Arrays.stream(draws).anyMatch(chain -> chain.length != draws[0].length)) {
            throw new IllegalArgumentException("chains must be at least one, and equally long");
        }
        if (draws[0].length < LEAST_STEPS) {
            throw new IllegalArgumentException(
                    "chains of %d steps say nothing; at least 8 are needed".formatted(draws[0].length));
        }
    }

    /** How many draws in all. */
    int count() {
        return draws.length * draws[0].length;
    }

    /** A draw by its number over all chains. */
    double[] draw(int i) {
        return draws[i / draws[0].length][i % draws[0].length];
    }

    /** By how much the scatter might still shrink if the chains went on for ever; 1 when they agree, below 1.01 is good. */
    double splitRHat(int unknown) {
        Moments all = Moments.of(halves(unknown));
        return Math.sqrt(all.pooled / all.within);
    }

    /** How many independent draws these are worth, for the mean of one unknown. */
    double effectiveSize(int unknown) {
        double[][] halves = halves(unknown);
        Moments all = Moments.of(halves);
        int steps = halves[0].length;
        double sum = 0;
        double before = Double.POSITIVE_INFINITY;
        for (int lag = 0; lag + 1 < steps; lag += 2) {
            double pair = all.correlation(halves, lag) + all.correlation(halves, lag + 1);
            if (pair <= 0) {
                break;
            }
            before = Math.min(before, pair);
            sum += before;
        }
        double total = (double) halves.length * steps;
        double time = Math.max(2 * sum - 1, 1 / Math.log10(total));
        return total / time;
    }

    private double[][] halves(int unknown) {
        int half = draws[0].length / 2;
        double[][] halves = new double[2 * draws.length][half];
        for (int c = 0; c < draws.length; c++) {
            int rest = draws[c].length - half;
            for (int i = 0; i < half; i++) {
                halves[2 * c][i] = draws[c][i][unknown];
                halves[2 * c + 1][i] = draws[c][rest + i][unknown];
            }
        }
        return halves;
    }

    /** Variance within chains, and the estimate of the whole variance that also counts how far their means are apart. */
    private record Moments(double within, double pooled) {
        static Moments of(double[][] chains) {
            int steps = chains[0].length;
            double[] means = new double[chains.length];
            double within = 0;
            for (int c = 0; c < chains.length; c++) {
                means[c] = Arrays.stream(chains[c]).average().orElseThrow();
                within += variance(chains[c], means[c]) / chains.length;
            }
            double between = chains.length < 2
                    ? 0
                    : variance(means, Arrays.stream(means).average().orElseThrow());
            return new Moments(within, (steps - 1.0) / steps * within + between);
        }

        /** Correlation of steps so far apart, by the variogram. */
        double correlation(double[][] chains, int lag) {
            int steps = chains[0].length;
            double squares = 0;
            for (double[] chain : chains) {
                for (int i = lag; i < steps; i++) {
                    double apart = chain[i] - chain[i - lag];
                    squares += apart * apart;
                }
            }
            double variogram = squares / ((double) chains.length * (steps - lag));
            return 1 - variogram / (2 * pooled);
        }

        private static double variance(double[] values, double mean) {
            double squares = 0;
            for (double value : values) {
                squares += (value - mean) * (value - mean);
            }
            return squares / (values.length - 1);
        }
    }
}
