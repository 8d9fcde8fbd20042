package org.lapwright.core.stats.resampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.api.Test;
import org.lapwright.core.stats.ReferenceCase;
import org.lapwright.core.stats.RobustLocation;
import org.lapwright.core.units.Interval;

/** Shuffling and redrawing against enumeration and 200 000 redraws in R 4.2.2. */
class ResamplingReferenceTest {
    /** All 70 labellings of four and four runs. */
    @Test
    void permutationOfRuns() {
        ReferenceCase c = ReferenceCase.load("permutation-runs");
        RunPermutation test =
                RunPermutation.of(c.inputs("a_run_medians"), c.inputs("b_run_medians"), new SplittableRandom(1));
        c.check(test.difference(), "observed");
        c.check((double) test.labellings(), "labellings");
        c.check(test.twoSided(), "p_two_sided");
        c.check(test.lower(), "p_b_smaller");
        c.check(test.leastTwoSided(), "smallest_possible_two_sided_p");
    }

    /** Michelson's first experiment; runs of one value make it the ordinary bootstrap. Ends within 3 units, as noted. */
    @Test
    void bootstrapOfTheHodgesLehmannEstimate() {
        ReferenceCase c = ReferenceCase.load("bootstrap-hl-morley");
        double[] x = c.inputs("x");
        RunSample sample =
                RunSample.of(Arrays.stream(x).mapToObj(v -> new double[] {v}).toArray(double[][]::new));
        RunBootstrap bootstrap = new RunBootstrap(40_000, 0.95);
        double[] redrawn = bootstrap.redraw(sample, RobustLocation::hodgesLehmannOfSorted, new SplittableRandom(42));
        c.check(RobustLocation.hodgesLehmann(x), "estimate");
        c.check(Math.sqrt(StatUtils.variance(redrawn)), "bootstrap_sd");
        Interval interval = bootstrap.interval(redrawn);
        assertThat(interval.low()).isCloseTo(c.expected("ci95_low"), within(3.0));
        assertThat(interval.high()).isCloseTo(c.expected("ci95_high"), within(3.0));
    }
}
