package org.lapwright.core.car.measure;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.lapwright.core.units.Reading;

/** A number worked out from others, with the doubt that they leave (JCGM 100:2008, equation 10; slopes by central differences). */
final class Derived {
    private static final double STEP = 1e-4;

    private Derived() {}

    static Reading of(List<Reading> inputs, ToDoubleFunction<double[]> formula) {
        double[] at = inputs.stream().mapToDouble(Reading::value).toArray();
        double variance = 0;
        for (int i = 0; i < at.length; i++) {
            double doubt = inputs.get(i).plusMinus();
            double step = doubt > 0 ? STEP * doubt : 0;
            if (step > 0) {
                double[] up = at.clone();
                double[] down = at.clone();
                up[i] += step;
                down[i] -= step;
                double slope = (formula.applyAsDouble(up) - formula.applyAsDouble(down)) / (2 * step);
                variance += slope * slope * doubt * doubt;
            }
        }
        return new Reading(formula.applyAsDouble(at), Math.sqrt(variance));
    }
}
