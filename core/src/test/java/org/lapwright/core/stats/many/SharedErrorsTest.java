package org.lapwright.core.stats.many;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Errors that means share, against many draws of them. */
class SharedErrorsTest {
    private static final double[] Y = {1.0, 1.4, 2.1, 1.2};
    private static final double[] SE = {0.1, 0.3, 0.2, 0.15};
    private static final double[][] LOADINGS = {{0.3, 0}, {0.3, 0.1}, {-0.2, 0.4}, {0, 0}};
    private static final double TAU2 = 0.2;

    /** Moving the means by the shared errors moves the shrunk means; their covariance is what is added. */
    @Test
    void sharedErrorsMoveShrunkMeansAsTheyMoveMeans() {
        ShrunkMeans own = ShrunkMeans.of(Y, SE, TAU2);
        ShrunkMeans shared = own.withShared(LOADINGS, SE);
        SplittableRandom chance = new SplittableRandom(4);
        int draws = 40_000;
        double[][] sum = new double[4][4];
        for (int draw = 0; draw < draws; draw++) {
            double a = chance.nextGaussian();
            double b = chance.nextGaussian();
            double[] moved = Y.clone();
            for (int i = 0; i < moved.length; i++) {
                moved[i] += LOADINGS[i][0] * a + LOADINGS[i][1] * b;
            }
            ShrunkMeans there = ShrunkMeans.of(moved, SE, TAU2);
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    sum[i][j] += (there.mean(i) - own.mean(i)) * (there.mean(j) - own.mean(j)) / draws;
                }
            }
        }
        for (int i = 0; i < 4; i++) {
            assertThat(shared.mean(i)).isEqualTo(own.mean(i));
            for (int j = 0; j < 4; j++) {
                assertThat(shared.covariance(i, j) - own.covariance(i, j)).isCloseTo(sum[i][j], within(0.003));
            }
        }
    }

    @Test
    void anErrorThatAllShareTakesNothingFromTheOrder() {
        ShrunkMeans own = ShrunkMeans.of(Y, SE, TAU2);
        ShrunkMeans shared = own.withShared(new double[][] {{0.5}, {0.5}, {0.5}, {0.5}}, SE);
        assertThat(shared.chanceLower(0, 1)).isCloseTo(own.chanceLower(0, 1), within(1e-12));
        assertThat(shared.se(0)).isCloseTo(Math.hypot(own.se(0), 0.5), within(1e-12));
    }

    @Test
    void thereAreLoadingsForEachMean() {
        ShrunkMeans own = ShrunkMeans.of(Y, SE, TAU2);
        assertThatThrownBy(() -> own.withShared(new double[3][1], SE)).hasMessageContaining("they must be as many");
    }
}
