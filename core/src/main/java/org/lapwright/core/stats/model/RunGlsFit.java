package org.lapwright.core.stats.model;

import java.util.Optional;

/** What {@link RunGls} found: an effect with its standard error, or why there is none. */
public sealed interface RunGlsFit {
    /**
     * The effect, if the data can show one.
     *
     * @return the effect, or empty
     */
    Optional<Effect> effect();

    /**
     * An effect. The unit of {@code delta}, {@code sigma} and {@code se} is that of y (if the effect column holds 0 and
     * 1).
     *
     * @param n number of values
     * @param p number of other columns used; those that earlier ones explain do not count
     * @param s information: Z'MZ, with M the inverse covariance (σ = 1) less what the other columns explain
     * @param delta estimated effect
     * @param rss1 weighted sum of squares left with the effect in the model
     */
    record Effect(int n, int p, double s, double delta, double rss1) implements RunGlsFit {
        @Override
        public Optional<Effect> effect() {
            return Optional.of(this);
        }

        /**
         * Degrees of freedom.
         *
         * @return n - p - 1, at least 1
         */
        public int nu() {
            return n - p - 1;
        }

        /**
         * Scatter of a single value within a run.
         *
         * @return √(rss1/ν)
         */
        public double sigma() {
            return Math.sqrt(rss1 / nu());
        }

        /**
         * Standard error of the effect.
         *
         * @return σ/√s; 0 if the model fits exactly
         */
        public double se() {
            return sigma() / Math.sqrt(s);
        }

        /**
         * The effect over its standard error.
         *
         * @return t on ν degrees of freedom; 0 for no effect at all, infinite for an effect without scatter
         */
        public double t() {
            return delta == 0 ? 0 : delta / se();
        }
    }

    /**
     * No effect can be told.
     *
     * @param n number of values
     * @param p number of other columns used
     * @param reason why
     */
    record NoEffect(int n, int p, Reason reason) implements RunGlsFit {
        @Override
        public Optional<Effect> effect() {
            return Optional.empty();
        }
    }

    /** Why no effect can be told. */
    enum Reason {
        /** The other columns explain the effect column, for example because only one side has been driven. */
        CONFOUNDED,
        /** There are no more values than unknowns, so that nothing is left to judge the scatter by. */
        TOO_FEW_VALUES
    }
}
