package org.lapwright.core.num;

/**
 * A closed curve through given values: the cubic that is twice continuously differentiable all the way round.
 *
 * <p>The second derivatives at the knots solve a cyclic tridiagonal system, done here with the Sherman–Morrison step of
 * Press, Teukolsky, Vetterling and Flannery, Numerical Recipes, 3rd ed., §2.7.2 (Hipparchus has natural and Akima splines
 * only).
 */
public final class PeriodicSpline {
    private final double[] knots;
    private final double[] values;
    private final double[] seconds;

    /**
     * Builds the spline.
     *
     * @param knots n + 1 strictly increasing parameters, n at least 3; the last closes the period
     * @param values n values at the first n knots; the value at the last knot is the first again
     * @throws IllegalArgumentException if the lengths do not fit or the knots do not increase
     */
    public PeriodicSpline(double[] knots, double[] values) {
        if (values.length < 3 || knots.length != values.length + 1) {
            throw new IllegalArgumentException(
                    "a periodic spline needs at least 3 values and one knot more than values");
        }
        for (int i = 0; i < values.length; i++) {
            if (!(knots[i + 1] > knots[i])) {
                throw new IllegalArgumentException("knots must increase; they do not at " + i);
            }
        }
        this.knots = knots.clone();
        this.values = values.clone();
        this.seconds = secondDerivatives(knots, values);
    }

    /** The period. */
    public double period() {
        return knots[knots.length - 1] - knots[0];
    }

    /** Value at any parameter. */
    public double value(double t) {
        return evaluate(t, 0);
    }

    /** First derivative at any parameter. */
    public double derivative(double t) {
        return evaluate(t, 1);
    }

    /** Second derivative at any parameter. */
    public double secondDerivative(double t) {
        return evaluate(t, 2);
    }

    private double evaluate(double t, int order) {
        double inside = wrapped(t);
        int i = span(inside);
        int n = values.length;
        double h = knots[i + 1] - knots[i];
        double b = (inside - knots[i]) / h;
        double a = 1 - b;
        double y0 = values[i];
        double y1 = values[(i + 1) % n];
        double m0 = seconds[i];
        double m1 = seconds[(i + 1) % n];
        return switch (order) {
            case 0 -> a * y0 + b * y1 + ((a * a * a - a) * m0 + (b * b * b - b) * m1) * h * h / 6;
            case 1 -> (y1 - y0) / h - (3 * a * a - 1) * h * m0 / 6 + (3 * b * b - 1) * h * m1 / 6;
            default -> a * m0 + b * m1;
        };
    }

    private double wrapped(double t) {
        double turns = (t - knots[0]) / period();
        double inside = knots[0] + (turns - Math.floor(turns)) * period();
        return Math.min(inside, knots[knots.length - 1]);
    }

    private int span(double t) {
        int low = 0;
        int high = values.length;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (knots[middle] <= t) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double[] secondDerivatives(double[] knots, double[] values) {
        int n = values.length;
        double[] below = new double[n];
        double[] diagonal = new double[n];
        double[] above = new double[n];
        double[] right = new double[n];
        for (int i = 0; i < n; i++) {
            int previous = (i + n - 1) % n;
            double before = knots[previous + 1] - knots[previous];
            double after = knots[i + 1] - knots[i];
            below[i] = before / 6;
            diagonal[i] = (before + after) / 3;
            above[i] = after / 6;
            right[i] = (values[(i + 1) % n] - values[i]) / after - (values[i] - values[previous]) / before;
        }
        return cyclic(below, diagonal, above, right);
    }

    /** Solves the tridiagonal system whose first row also holds {@code below[0]} in its last column, and the last row {@code above[n-1]} in its first. */
    private static double[] cyclic(double[] below, double[] diagonal, double[] above, double[] right) {
        int n = right.length;
        double gamma = -diagonal[0];
        double corner = above[n - 1];
        double[] changed = diagonal.clone();
        changed[0] -= gamma;
        changed[n - 1] -= corner * below[0] / gamma;
        double[] x = tridiagonal(below, changed, above, right);
        double[] u = new double[n];
        u[0] = gamma;
        u[n - 1] = corner;
        double[] z = tridiagonal(below, changed, above, u);
        double ratio = below[0] / gamma;
        double factor = (x[0] + ratio * x[n - 1]) / (1 + z[0] + ratio * z[n - 1]);
        for (int i = 0; i < n; i++) {
            x[i] -= factor * z[i];
        }
        return x;
    }

    private static double[] tridiagonal(double[] below, double[] diagonal, double[] above, double[] right) {
        int n = right.length;
        double[] x = new double[n];
        double[] scaled = new double[n];
        double pivot = diagonal[0];
        x[0] = right[0] / pivot;
        for (int i = 1; i < n; i++) {
            scaled[i] = above[i - 1] / pivot;
            pivot = diagonal[i] - below[i] * scaled[i];
            x[i] = (right[i] - below[i] * x[i - 1]) / pivot;
        }
        for (int i = n - 2; i >= 0; i--) {
            x[i] -= scaled[i + 1] * x[i + 1];
        }
        return x;
    }
}
