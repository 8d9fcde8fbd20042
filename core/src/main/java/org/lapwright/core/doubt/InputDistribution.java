package org.lapwright.core.doubt;

import java.util.random.RandomGenerator;

/** What an uncertain input may turn out to be (JCGM 101:2008, clause 6.4). */
public sealed interface InputDistribution {
    /** One possible value. */
    double draw(RandomGenerator chance);

    /**
     * A normal distribution, cut off where a value would make no sense.
     *
     * @param mean the best estimate, inside the range
     * @param deviation standard deviation before anything is cut off; 0 when the value is exact
     * @param low least value that makes sense
     * @param high greatest value that makes sense
     */
    record Normal(double mean, double deviation, double low, double high) implements InputDistribution {
        /** Checks that the estimate lies in the range. */
        public Normal {
            if (!(low <= mean && mean <= high && deviation >= 0 && deviation < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "a normal distribution about %s with deviation %s is cut off at %s and %s; the middle must lie between and the deviation be finite"
                                .formatted(mean, deviation, low, high));
            }
        }

        /** Cut off nowhere. */
        public static Normal of(double mean, double deviation) {
            return new Normal(mean, deviation, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }

        @Override
        public double draw(RandomGenerator chance) {
            if (deviation == 0 || low == high) {
                return mean;
            }
            return high - low < deviation ? drawNarrow(chance) : drawWide(chance);
        }

        /** At least a third of the tries are kept: the range reaches one deviation to one side, or half to both. */
        private double drawWide(RandomGenerator chance) {
            while (true) {
                double value = mean + deviation * chance.nextGaussian();
                if (value >= low && value <= high) {
                    return value;
                }
            }
        }

        /** The density is nearly level over the range: at least three tries in five are kept. */
        private double drawNarrow(RandomGenerator chance) {
            while (true) {
                double value = low + (high - low) * chance.nextDouble();
                double z = (value - mean) / deviation;
                if (chance.nextDouble() <= Math.exp(-z * z / 2)) {
                    return value;
                }
            }
        }
    }

    /**
     * Anything between two bounds alike; standard deviation (high − low)/√12.
     *
     * @param low lower bound
     * @param high upper bound
     */
    record Rectangular(double low, double high) implements InputDistribution {
        /** Checks the order of the bounds. */
        public Rectangular {
            if (!(low <= high && Double.isFinite(high - low))) {
                throw new IllegalArgumentException(
                        "bounds are %s and %s; they must be finite and in order".formatted(low, high));
            }
        }

        @Override
        public double draw(RandomGenerator chance) {
            return low + (high - low) * chance.nextDouble();
        }
    }

    /**
     * A scaled and shifted t distribution, as for a mean of few readings; standard deviation scale √(ν/(ν − 2)).
     *
     * @param mean middle
     * @param scale scale, not negative
     * @param degreesOfFreedom ν, above 0
     */
    record ScaledT(double mean, double scale, double degreesOfFreedom) implements InputDistribution {
        /** Checks each number. */
        public ScaledT {
            if (!(Double.isFinite(mean) && scale >= 0 && Double.isFinite(scale) && degreesOfFreedom > 0)) {
                throw new IllegalArgumentException(
                        "a t distribution about %s with scale %s and %s degrees of freedom cannot be; the scale must not be negative and the degrees of freedom above 0"
                                .formatted(mean, scale, degreesOfFreedom));
            }
        }

        /** Bailey's polar method (Mathematics of Computation 62, 1994, 779), for any ν. */
        @Override
        public double draw(RandomGenerator chance) {
            while (true) {
                double u = 2 * chance.nextDouble() - 1;
                double v = 2 * chance.nextDouble() - 1;
                double w = u * u + v * v;
                if (w > 0 && w <= 1) {
                    double root = Math.sqrt(degreesOfFreedom * Math.expm1(-2 / degreesOfFreedom * Math.log(w)) / w);
                    return mean + scale * u * root;
                }
            }
        }
    }
}
