package org.lapwright.core.stats.design;

import java.util.Arrays;
import org.lapwright.core.stats.NormalTail;
import org.lapwright.core.stats.RobustLocation;
import org.lapwright.core.stats.Samples;
import org.lapwright.core.stats.StudentTail;

/**
 * How large an effect has to be to stand out, judged by the other effects, because no run was repeated: if few effects
 * are real, the rest show the noise.
 *
 * @see <a href="https://doi.org/10.1080/00401706.1989.10488595">Lenth 1989, Technometrics 31</a>
 * @param firstScale 1.5 times the median size of the effects
 * @param pseudoStandardError 1.5 times the median size of those below 2.5 first scales
 * @param df degrees of freedom, a third of the number of effects
 * @param margin an effect beyond it is likely real, at 95 % for one effect
 * @param simultaneousMargin the same for all effects together
 */
public record LenthMargins(
        double firstScale, double pseudoStandardError, double df, double margin, double simultaneousMargin) {
    private static final double LEVEL = 0.95;

    /**
     * Judges effects.
     *
     * @param effects all effects that the runs give, at least three
     * @return the margins; all 0 if more than half of the effects are 0
     * @throws IllegalArgumentException if there are fewer than three effects or one is not finite
     */
    public static LenthMargins of(double[] effects) {
        double[] sizes = Arrays.stream(Samples.require(effects, 3, "effects"))
                .map(Math::abs)
                .toArray();
        double first = 1.5 * RobustLocation.median(sizes);
        double[] small = Arrays.stream(sizes).filter(c -> c < 2.5 * first).toArray();
        double pse = small.length == 0 ? 0 : 1.5 * RobustLocation.median(small);
        double df = sizes.length / 3.0;
        double together = Math.pow(LEVEL, 1.0 / sizes.length);
        return new LenthMargins(
                first,
                pse,
                df,
                StudentTail.quantile((1 - LEVEL) / 2, df) * pse,
                StudentTail.quantile((1 - together) / 2, df) * pse);
    }

    /**
     * Where the sizes of effects, ascending, would lie if all were noise: the scores of a half-normal plot.
     *
     * @param effects number of effects, at least 1
     * @return one score for each, ascending
     * @throws IllegalArgumentException if the number is below 1
     * @see <a href="https://doi.org/10.1080/00401706.1959.10489866">Daniel 1959, Technometrics 1</a>
     */
    public static double[] halfNormalScores(int effects) {
        if (effects < 1) {
            throw new IllegalArgumentException("%d effects; at least one is needed".formatted(effects));
        }
        double[] scores = new double[effects];
        for (int i = 0; i < effects; i++) {
            scores[i] = NormalTail.quantile((1 - (i + 0.5) / effects) / 2);
        }
        return scores;
    }
}
