package org.lapwright.core.num;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The periodic spline against Hipparchus' natural one and against the error that theory allows. */
class PeriodicSplineReferenceTest {
    /**
     * A natural spline over many periods of the same data is periodic in the middle: what its ends do wrong shrinks by
     * 2 − √3 or so with every knot.
     */
    @ParameterizedTest
    @ValueSource(ints = {3, 4, 7, 30})
    void theMiddleOfALongNaturalSplineIsThisOne(int count) {
        Random random = new Random(count);
        double[] knots = new double[count + 1];
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            knots[i + 1] = knots[i] + 0.3 + random.nextDouble();
            values[i] = random.nextGaussian();
        }
        PeriodicSpline spline = new PeriodicSpline(knots, values);
        int periods = 2 * (60 / count + 1) + 1;
        double[] longKnots = new double[periods * count + 1];
        double[] longValues = new double[longKnots.length];
        for (int i = 0; i < longKnots.length; i++) {
            longKnots[i] = knots[i % count] + (double) (i / count) * spline.period();
            longValues[i] = values[i % count];
        }
        PolynomialSplineFunction natural = new SplineInterpolator().interpolate(longKnots, longValues);
        double middle = (periods / 2) * spline.period();
        for (int k = 0; k < 500; k++) {
            double t = spline.period() * k / 500;
            assertThat(spline.value(t)).isCloseTo(natural.value(middle + t), within(1e-12));
            assertThat(spline.derivative(t))
                    .isCloseTo(natural.polynomialSplineDerivative().value(middle + t), within(1e-11));
            assertThat(spline.secondDerivative(t))
                    .isCloseTo(
                            natural.polynomialSplineDerivative()
                                    .polynomialSplineDerivative()
                                    .value(middle + t),
                            within(1e-10));
        }
    }

    /** On equal steps h the error is at most 5/384 h⁴ max|f''''| (Hall and Meyer 1976, Journal of Approximation Theory 16). */
    @Test
    void theErrorOfASineIsWithinTheory() {
        double before = Double.NaN;
        for (int count = 8; count <= 128; count *= 2) {
            double[] knots = new double[count + 1];
            double[] values = new double[count];
            for (int i = 0; i <= count; i++) {
                knots[i] = 2 * Math.PI * i / count;
            }
            for (int i = 0; i < count; i++) {
                values[i] = Math.sin(knots[i]);
            }
            PeriodicSpline spline = new PeriodicSpline(knots, values);
            double worst = 0;
            for (int k = -1000; k < 3000; k++) {
                double t = 2 * Math.PI * k / 1000;
                worst = Math.max(worst, Math.abs(spline.value(t) - Math.sin(t)));
            }
            double h = 2 * Math.PI / count;
            assertThat(worst).isLessThan(5.0 / 384 * Math.pow(h, 4)).isGreaterThan(1e-4 * Math.pow(h, 4));
            if (count > 16) {
                assertThat(before / worst).as("fourth order").isCloseTo(16, within(1.0));
            }
            before = worst;
        }
    }

    @Test
    void whatIsNoPeriodIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PeriodicSpline(new double[] {0, 1, 1, 2}, new double[] {0, 1, 2}))
                .withMessageContaining("knots must increase");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PeriodicSpline(new double[] {0, 1, 2}, new double[] {0, 1}))
                .withMessageContaining("at least 3 values");
    }
}
