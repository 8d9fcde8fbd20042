package org.lapwright.core.stats;

import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.distribution.discrete.HypergeometricDistribution;
import org.hipparchus.special.Beta;
import org.hipparchus.stat.interval.BinomialProportion;
import org.hipparchus.stat.interval.ConfidenceInterval;
import org.lapwright.core.units.Interval;

/**
 * So many out of so many, for example laps with an off.
 *
 * @param count how many had it, 0 to {@code trials}
 * @param trials how many there were, at least 0
 */
public record Proportion(int count, int trials) {
    /** Tables as likely as the observed one up to rounding count as likely, as in R. */
    private static final double TIE = 1 + 1e-7;

    private static final double QUANTILE_ACCURACY = 1e-12;

    /** Checks the counts. */
    public Proportion {
        if (count < 0 || count > trials) {
            throw new IllegalArgumentException(
                    "count is %d of %d; it must be from 0 to the number of trials".formatted(count, trials));
        }
    }

    /**
     * Wilson's score interval for the rate.
     *
     * @param level confidence, above 0 and below 1
     * @return the interval, within 0 to 1; all of it if there was no trial
     * @throws IllegalArgumentException if the level is outside its range
     * @see <a href="https://doi.org/10.1214/ss/1009213286">Brown, Cai and DasGupta 2001, Statist. Sci. 16</a>
     */
    public Interval wilson(double level) {
        requireLevel(level);
        if (trials == 0) {
            return new Interval(0, 1);
        }
        ConfidenceInterval interval = BinomialProportion.getWilsonScoreInterval(trials, (double) count / trials, level);
        return new Interval(Math.max(0, interval.getLowerBound()), Math.min(1, interval.getUpperBound()));
    }

    /**
     * The interval of equal tails from Jeffreys' prior, Beta(count + 1/2, trials - count + 1/2).
     *
     * @param level probability inside, above 0 and below 1
     * @return the interval, within 0 to 1
     * @throws IllegalArgumentException if the level is outside its range
     */
    public Interval jeffreys(double level) {
        requireLevel(level);
        BetaDistribution posterior = posterior();
        return new Interval(
                posterior.inverseCumulativeProbability((1 - level) / 2),
                posterior.inverseCumulativeProbability((1 + level) / 2));
    }

    /**
     * Fisher's exact test against another proportion, two-sided: the chance of a table with these margins that is as
     * unlikely as this one or more so, if the rates are equal.
     *
     * @param other the other proportion
     * @return the p-value, above 0, at most 1
     */
    public double fisherExact(Proportion other) {
        int total = count + other.count;
        int all = trials + other.trials;
        if (all == 0) {
            return 1;
        }
        HypergeometricDistribution tables = new HypergeometricDistribution(all, total, trials);
        double observed = tables.probability(count) * TIE;
        double p = 0;
        for (int k = tables.getSupportLowerBound(); k <= tables.getSupportUpperBound(); k++) {
            double probability = tables.probability(k);
            p += probability <= observed ? probability : 0;
        }
        return Math.min(1, p);
    }

    /**
     * Chance that this rate is higher than another one, both with Jeffreys' prior.
     *
     * @param other the other proportion
     * @return the chance, 0 to 1
     */
    public double chanceHigherThan(Proportion other) {
        BetaDistribution mine = posterior();
        // With rate = sin²θ the density of the other has no poles, and its scatter in θ is about 1/(2√n).
        double centre = Math.asin(Math.sqrt((other.count + 0.5) / (other.trials + 1)));
        double reach = 5 / Math.sqrt(other.trials + 1);
        double logBeta = Beta.logBeta(other.count + 0.5, other.trials - other.count + 0.5);
        double chance = Quadrature.integrate(
                theta -> {
                    double sine = Math.sin(theta);
                    double logDensity = power(sine, 2.0 * other.count)
                            + power(Math.cos(theta), 2.0 * (other.trials - other.count))
                            - logBeta;
                    return 2 * Math.exp(logDensity) * (1 - mine.cumulativeProbability(sine * sine));
                },
                Math.max(0, centre - reach),
                Math.min(Math.PI / 2, centre + reach));
        return Math.min(1, Math.max(0, chance));
    }

    private static double power(double base, double exponent) {
        return exponent == 0 ? 0 : exponent * Math.log(base);
    }

    private BetaDistribution posterior() {
        return new BetaDistribution(count + 0.5, trials - count + 0.5, QUANTILE_ACCURACY);
    }

    private static void requireLevel(double level) {
        if (!(level > 0 && level < 1)) {
            throw new IllegalArgumentException("level is %s; it must be above 0 and below 1".formatted(level));
        }
    }
}
