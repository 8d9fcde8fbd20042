package org.lapwright.core.stats.many;

import java.util.stream.DoubleStream;
import org.hipparchus.stat.StatUtils;
import org.lapwright.core.stats.Samples;

/**
 * The estimator of James and Stein towards the common mean, for at least four means of one known precision.
 *
 * @see <a href="https://doi.org/10.1080/01621459.1975.10479864">Efron and Morris 1975, J. Amer. Statist. Assoc. 70</a>
 * @param centre the common mean
 * @param factor share of its distance from the centre that each mean keeps, 0 to 1
 */
public record JamesStein(double centre, double factor) {
    /**
     * Finds centre and factor: 1 - (k - 3) se²/Σ(x - centre)², not below 0.
     *
     * @param means the means, at least four
     * @param se the standard error of each, above 0
     * @return the estimator
     * @throws IllegalArgumentException if there are fewer than four means, one is not finite or {@code se} is not above
     *     0
     */
    public static JamesStein of(double[] means, double se) {
        Samples.require(means, 4, "means");
        if (!(se > 0 && se <= Samples.LARGEST)) {
            throw new IllegalArgumentException("standard error is %s; it must be finite and above 0".formatted(se));
        }
        double centre = StatUtils.mean(means);
        double squares =
                DoubleStream.of(means).map(x -> (x - centre) * (x - centre)).sum();
        double factor = squares > 0 ? Math.max(0, 1 - (means.length - 3) * se * se / squares) : 0;
        return new JamesStein(centre, factor);
    }

    /**
     * Shrinks one mean.
     *
     * @param mean the mean
     * @return centre + factor (mean - centre)
     */
    public double shrunk(double mean) {
        return centre + factor * (mean - centre);
    }
}
