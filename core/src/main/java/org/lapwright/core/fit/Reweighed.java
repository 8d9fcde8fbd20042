package org.lapwright.core.fit;

import java.util.Arrays;
import java.util.random.RandomGenerator;

/**
 * Draws from a density near the right one, drawn again with the right weights (importance resampling: Rubin 1987; systematic, as in
 * Kitagawa 1996).
 *
 * @param points all alike likely; a point of much weight stands several times
 * @param share independent draws that the weights leave, as a share: (Σw)² / (n Σw²)
 */
record Reweighed(double[][] points, double share) {
    /**
     * Draws again.
     *
     * @param lnWeights logarithms of the weights, but for a constant; not finite where a point cannot be
     * @throws IllegalArgumentException if no point can be
     */
    static Reweighed of(double[][] points, double[] lnWeights, RandomGenerator chance) {
        double greatest = Arrays.stream(lnWeights)
                .filter(Double::isFinite)
                .max()
                .orElseThrow(() -> new IllegalArgumentException(
                        "none of the cars drawn gets round; predict says where they are stuck"));
        double[] weights = new double[points.length];
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Double.isFinite(lnWeights[i]) ? Math.exp(lnWeights[i] - greatest) : 0;
            sum += weights[i];
            squares += weights[i] * weights[i];
        }
        double[][] again = new double[points.length][];
        double step = sum / points.length;
        double next = step * chance.nextDouble();
        double passed = 0;
        int taken = 0;
        for (int i = 0; i < weights.length; i++) {
            passed += weights[i];
            while (taken < again.length && next < passed) {
                again[taken++] = points[i];
                next += step;
            }
        }
        while (taken < again.length) {
            again[taken] = again[taken - 1];
            taken++;
        }
        return new Reweighed(again, sum * sum / (squares * points.length));
    }
}
