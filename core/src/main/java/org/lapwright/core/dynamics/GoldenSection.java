package org.lapwright.core.dynamics;

import java.util.function.DoubleUnaryOperator;

/** Search for the top of a function that rises and then falls (Press and others, Numerical Recipes, 3rd ed., §10.2). */
final class GoldenSection {
    private static final double SHARE = (Math.sqrt(5) - 1) / 2;
    private static final int NARROWINGS = 64;

    private GoldenSection() {}

    /** Where the function is greatest. */
    static double greatest(DoubleUnaryOperator peaked, double from, double to) {
        double a = from;
        double b = to;
        double p = b - SHARE * (b - a);
        double q = a + SHARE * (b - a);
        double atP = peaked.applyAsDouble(p);
        double atQ = peaked.applyAsDouble(q);
        for (int k = 0; k < NARROWINGS; k++) {
            if (atP > atQ) {
                b = q;
                q = p;
                atQ = atP;
                p = b - SHARE * (b - a);
                atP = peaked.applyAsDouble(p);
            } else {
                a = p;
                p = q;
                atP = atQ;
                q = a + SHARE * (b - a);
                atQ = peaked.applyAsDouble(q);
            }
        }
        return (a + b) / 2;
    }

    /** How great the function gets; its top may be at an end. */
    static double highest(DoubleUnaryOperator peaked, double from, double to) {
        double atEnds = Math.max(peaked.applyAsDouble(from), peaked.applyAsDouble(to));
        return Math.max(atEnds, peaked.applyAsDouble(greatest(peaked, from, to)));
    }
}
