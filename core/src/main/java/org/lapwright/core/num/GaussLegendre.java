package org.lapwright.core.num;

import java.util.function.DoubleUnaryOperator;

/** Integrals by the five-point rule of Gauss and Legendre: Abramowitz and Stegun, table 25.4. */
public final class GaussLegendre {
    private static final double[] ABSCISSA = {
        0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640
    };

    private static final double[] WEIGHT = {
        0.5688888888888889, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891
    };

    private GaussLegendre() {}

    /** The integral of a smooth function between two bounds, in one panel. */
    public static double integral(DoubleUnaryOperator function, double from, double to) {
        double half = (to - from) / 2;
        double middle = (to + from) / 2;
        double sum = 0;
        for (int k = 0; k < ABSCISSA.length; k++) {
            sum += WEIGHT[k] * function.applyAsDouble(middle + half * ABSCISSA[k]);
        }
        return sum * half;
    }

    /** The same in several panels of equal width. */
    public static double integral(DoubleUnaryOperator function, double from, double to, int panels) {
        double sum = 0;
        for (int k = 0; k < panels; k++) {
            double width = (to - from) / panels;
            sum += integral(function, from + k * width, from + (k + 1) * width);
        }
        return sum;
    }
}
