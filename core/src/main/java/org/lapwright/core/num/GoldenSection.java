package org.lapwright.core.num;

import java.util.function.DoubleUnaryOperator;

/** Search for the top of a function that rises and then falls (Press and others, Numerical Recipes, 3rd ed., §10.2). */
public final class GoldenSection {
    private static final double SHARE = (Math.sqrt(5) - 1) / 2;

    /** As near as one can tell where a smooth top is, and nearer. */
    private static final double CLOSE = 1e-13;

    /** Between numbers that hardly differ the wanted width may be finer than a double can tell. */
    private static final int MOST = 100;

    private GoldenSection() {}

    /**
     * Where the function is greatest.
     *
     * @param peaked the function
     * @param from one end
     * @param to the other, not less
     * @param within how near, above 0
     */
    public static double greatest(DoubleUnaryOperator peaked, double from, double to, double within) {
        double a = from;
        double b = to;
        double p = b - SHARE * (b - a);
        double q = a + SHARE * (b - a);
        double atP = peaked.applyAsDouble(p);
        double atQ = peaked.applyAsDouble(q);
        for (int k = 0; k < MOST && b - a > within; k++) {
            if (atP >= atQ) {
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

    /** Where the function is greatest, as near as doubles let it be told. */
    public static double greatest(DoubleUnaryOperator peaked, double from, double to) {
        return greatest(peaked, from, to, CLOSE * (to - from));
    }

    /** How great the function gets; its top may be at an end. */
    public static double highest(DoubleUnaryOperator peaked, double from, double to) {
        double atEnds = Math.max(peaked.applyAsDouble(from), peaked.applyAsDouble(to));
        return Math.max(atEnds, peaked.applyAsDouble(greatest(peaked, from, to)));
    }
}
