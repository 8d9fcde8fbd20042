package org.lapwright.core.stats;

import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * NIST/ITL Statistical Reference Datasets, univariate: certified mean, standard deviation and lag-1 autocorrelation
 * (US Government work). Mean and deviation are those of Hipparchus, as the rest of the code uses them.
 */
class NistUnivariateReferenceTest {
    @ParameterizedTest
    @ValueSource(
            strings = {"michelso", "mavro", "lew", "lottery", "pidigits", "numacc1", "numacc2", "numacc3", "numacc4"})
    void certifiedValues(String id) {
        ReferenceCase c = ReferenceCase.load("nist-univ-" + id);
        double[] x = c.inputs("x");
        c.check(x.length, "n");
        c.check(StatUtils.mean(x), "mean");
        c.check(Math.sqrt(StatUtils.variance(x)), "sd");
        c.check(Autocorrelation.lag1(x), "lag1_autocorrelation");
    }
}
