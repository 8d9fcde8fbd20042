package org.lapwright.core.stats.design;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.stats.Samples;

/**
 * Several changes tried at once, each in two states, in runs that keep their effects apart. Factors and runs count from
 * 0; the states are -1 and +1. Immutable.
 *
 * @see <a href="https://doi.org/10.2307/2332195">Plackett and Burman 1946, Biometrika 33</a>
 * @see <a href="https://www.itl.nist.gov/div898/handbook/pri/pri.htm">NIST/SEMATECH e-Handbook, chapter 5</a>
 */
public final class TwoLevelDesign {
    /** First run of the design of Plackett and Burman for 12 runs (1946, p. 323). */
    private static final int[] GENERATOR_12 = {1, 1, -1, 1, 1, 1, -1, -1, -1, 1, -1};

    private static final int MOST_FACTORS = 6;

    private final int[][] runs;

    private TwoLevelDesign(int[][] runs) {
        this.runs = runs;
    }

    /**
     * A design written out.
     *
     * @param runs one array of -1 and +1 for each run, all of one length; every factor in both states
     * @return the design
     * @throws IllegalArgumentException if there is no run or factor, a length differs, a state is neither -1 nor +1, or a
     *     factor keeps one state
     */
    public static TwoLevelDesign of(int[][] runs) {
        if (runs.length == 0 || runs[0].length == 0) {
            throw new IllegalArgumentException("a design needs at least one run and one factor");
        }
        int[][] copy = new int[runs.length][];
        int[] sums = new int[runs[0].length];
        for (int r = 0; r < runs.length; r++) {
            if (runs[r].length != sums.length) {
                throw new IllegalArgumentException("run %d has %d factors and run 1 has %d; they must be as many"
                        .formatted(r + 1, runs[r].length, sums.length));
            }
            copy[r] = runs[r].clone();
            for (int f = 0; f < sums.length; f++) {
                if (Math.abs(copy[r][f]) != 1) {
                    throw new IllegalArgumentException(
                            "factor %d of run %d is %d; it must be -1 or +1".formatted(f + 1, r + 1, copy[r][f]));
                }
                sums[f] += copy[r][f];
            }
        }
        for (int f = 0; f < sums.length; f++) {
            if (Math.abs(sums[f]) == runs.length) {
                throw new IllegalArgumentException("factor %d keeps one state; it must take both".formatted(f + 1));
            }
        }
        return new TwoLevelDesign(copy);
    }

    /**
     * All combinations, the first factor changing fastest.
     *
     * @param factors number of factors, 1 to 6
     * @return 2^factors runs
     * @throws IllegalArgumentException if the number is outside its range
     */
    public static TwoLevelDesign full(int factors) {
        return fraction(factors, List.of());
    }

    /**
     * Half of all combinations: the last factor is the product of all others. Main effects are apart from interactions
     * of two from four factors on, interactions of two apart from each other from five on.
     *
     * @param factors number of factors, 3 to 7
     * @return 2^(factors - 1) runs
     * @throws IllegalArgumentException if the number is outside its range
     */
    public static TwoLevelDesign half(int factors) {
        if (factors < 3) {
            throw new IllegalArgumentException("%d factors; a half needs from 3 to 7".formatted(factors));
        }
        int[] others = new int[factors - 1];
        for (int f = 0; f < others.length; f++) {
            others[f] = f;
        }
        return fraction(factors - 1, List.of(others));
    }

    /**
     * Seven factors in eight runs: 4 = 12, 5 = 13, 6 = 23, 7 = 123. Each main effect carries three interactions of two.
     *
     * @return the design
     */
    public static TwoLevelDesign sevenInEight() {
        return fraction(3, List.of(new int[] {0, 1}, new int[] {0, 2}, new int[] {1, 2}, new int[] {0, 1, 2}));
    }

    /**
     * Eleven factors in twelve runs. Each main effect carries a third of every interaction of two others, with either
     * sign.
     *
     * @return the design
     */
    public static TwoLevelDesign plackettBurman12() {
        int n = GENERATOR_12.length;
        int[][] runs = new int[n + 1][n];
        for (int f = 0; f < n; f++) {
            for (int r = 0; r < n; r++) {
                runs[r][f] = GENERATOR_12[Math.floorMod(f - r, n)];
            }
            runs[n][f] = -1;
        }
        return new TwoLevelDesign(runs);
    }

    /** All combinations of basic factors, and further ones as products of these. */
    private static TwoLevelDesign fraction(int basic, List<int[]> products) {
        if (basic < 1 || basic > MOST_FACTORS) {
            throw new IllegalArgumentException(
                    "%d free factors; there must be from 1 to %d".formatted(basic, MOST_FACTORS));
        }
        int[][] runs = new int[1 << basic][basic + products.size()];
        for (int r = 0; r < runs.length; r++) {
            for (int f = 0; f < basic; f++) {
                runs[r][f] = (r >> f & 1) == 1 ? 1 : -1;
            }
            for (int p = 0; p < products.size(); p++) {
                runs[r][basic + p] = product(runs[r], products.get(p));
            }
        }
        return new TwoLevelDesign(runs);
    }

    /**
     * The runs followed by the same runs with some factors in the other state. With all factors switched, main effects
     * come free of interactions of two; with one, this factor and its interactions do.
     *
     * @param factors which factors to switch
     * @return a design with twice as many runs
     */
    public TwoLevelDesign foldedOver(int... factors) {
        int[][] both = new int[2 * runs.length][];
        for (int r = 0; r < runs.length; r++) {
            both[r] = runs[r];
            both[runs.length + r] = runs[r].clone();
            for (int f : factors) {
                both[runs.length + r][f] = -runs[r][f];
            }
        }
        return new TwoLevelDesign(both);
    }

    /**
     * Number of runs.
     *
     * @return the number
     */
    public int runs() {
        return runs.length;
    }

    /**
     * Number of factors.
     *
     * @return the number
     */
    public int factors() {
        return runs[0].length;
    }

    /**
     * The state of a factor in a run.
     *
     * @param run the run
     * @param factor the factor
     * @return -1 or +1
     */
    public int state(int run, int factor) {
        return runs[run][factor];
    }

    /**
     * The effect of a factor, or of an interaction: mean of the runs where the product of the states is +1 less mean of
     * the others.
     *
     * @param y one result for each run
     * @param factors the factor, or several for their interaction
     * @return the effect, in the unit of the results
     * @throws IllegalArgumentException if there are more or fewer results than runs, one is not finite, or the product
     *     keeps one state so that the effect cannot be told from the mean
     */
    public double effect(double[] y, int... factors) {
        if (y.length != runs.length) {
            throw new IllegalArgumentException(
                    "%d results for %d runs; they must be as many".formatted(y.length, runs.length));
        }
        Samples.require(y, 1, "results");
        double high = 0;
        double low = 0;
        int count = 0;
        for (int r = 0; r < runs.length; r++) {
            if (product(runs[r], factors) > 0) {
                high += y[r];
                count++;
            } else {
                low += y[r];
            }
        }
        if (count == 0 || count == runs.length) {
            throw new IllegalArgumentException("the product of these factors keeps one state in this design");
        }
        return high / count - low / (runs.length - count);
    }

    /**
     * The effects of all factors.
     *
     * @param y one result for each run
     * @return one effect for each factor
     * @throws IllegalArgumentException if there are more or fewer results than runs or one is not finite
     */
    public double[] mainEffects(double[] y) {
        double[] effects = new double[factors()];
        for (int f = 0; f < effects.length; f++) {
            effects[f] = effect(y, f);
        }
        return effects;
    }

    /**
     * An interaction of two factors that shows in the effect of a third.
     *
     * @param first one factor of the interaction
     * @param second the other
     * @param share how much of the interaction shows, from -1 to 1, not 0
     */
    public record Alias(int first, int second, double share) {}

    /**
     * The interactions of two that show in the effect of a factor.
     *
     * @param factor the factor
     * @return the interactions, in order of their factors
     */
    public List<Alias> aliases(int factor) {
        List<Alias> aliases = new ArrayList<>();
        for (int a = 0; a < factors(); a++) {
            for (int b = a + 1; b < factors(); b++) {
                int sum = 0;
                for (int[] run : runs) {
                    sum += run[factor] * run[a] * run[b];
                }
                if (a != factor && b != factor && sum != 0) {
                    aliases.add(new Alias(a, b, (double) sum / runs.length));
                }
            }
        }
        return List.copyOf(aliases);
    }

    private static int product(int[] run, int[] factors) {
        int product = 1;
        for (int f : factors) {
            product *= run[f];
        }
        return product;
    }
}
