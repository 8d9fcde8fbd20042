package org.lapwright.core.doubt;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The law of propagation of uncertainty, JCGM 100:2008 (GUM): u² = Σ c_i² u_i² (eq. 10), and with correlated inputs
 * u² = Σ Σ c_i c_j u_i u_j r_ij (eq. 16, the same as eq. 13).
 *
 * <p>Slopes are central differences one standard uncertainty to either side, c = (f(x + u) − f(x − u)) / 2u (GUM 5.1.3, note
 * 2). A smaller step would give the slope at one point; where the computation has kinks that is the slope of one side only, and
 * this one is the mean slope over the width that matters. Where one side gives no finite number the other side serves alone;
 * where neither does, the sensitivity is infinite.
 */
public final class LinearPropagation {
    /** Step for an exact input, relative to its size: near the cube root of the rounding error, best for central differences. */
    private static final double FINE = 6e-6;

    private static final double ROUNDING = 1e-9;

    private final List<Input> inputs;
    private final RealMatrix correlation;
    private final boolean correlated;

    /** Independent inputs. */
    public LinearPropagation(List<Input> inputs) {
        this.inputs = List.copyOf(inputs);
        correlation = MatrixUtils.createRealIdentityMatrix(Math.max(1, inputs.size()));
        correlated = false;
    }

    /**
     * Correlated inputs.
     *
     * @param inputs the inputs
     * @param correlation r, a square with 1 in the diagonal; both halves are averaged, which may differ by rounding
     * @throws IllegalArgumentException if it is no correlation matrix of these inputs
     */
    public LinearPropagation(List<Input> inputs, double[][] correlation) {
        this.inputs = List.copyOf(inputs);
        this.correlation = checked(correlation, inputs.size());
        correlated = !this.correlation.equals(MatrixUtils.createRealIdentityMatrix(inputs.size()));
    }

    /**
     * The uncertainty of one number.
     *
     * @param measure computes it from the inputs' values; called twice for each input and once more. May give a number that
     *     is not finite away from the best estimates
     * @throws IllegalArgumentException if the number is not finite at the best estimates
     */
    public LinearDoubt through(ToDoubleFunction<double[]> measure) {
        return throughMany(values -> new double[] {measure.applyAsDouble(values)})
                .outputs()
                .get(0);
    }

    /**
     * The uncertainties of several numbers computed at once.
     *
     * @param measure computes them, always equally many
     * @throws IllegalArgumentException if one is not finite at the best estimates
     */
    public JointDoubt throughMany(UnaryOperator<double[]> measure) {
        double[] centre = measure.apply(values());
        for (double value : centre) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException(
                        "the computation gives " + value + " at the best estimates; it must be finite there");
            }
        }
        double[][] slopes = new double[centre.length][inputs.size()];
        for (int i = 0; i < inputs.size(); i++) {
            fillSlopes(measure, centre, i, slopes);
        }
        List<LinearDoubt> outputs = new ArrayList<>();
        RealMatrix covariance = new Array2DRowRealMatrix(centre.length, centre.length);
        for (int a = 0; a < centre.length; a++) {
            for (int b = 0; b <= a; b++) {
                double common = covariance(amounts(slopes[a]), amounts(slopes[b]), a == b);
                covariance.setEntry(a, b, common);
                covariance.setEntry(b, a, common);
            }
            outputs.add(doubt(centre[a], slopes[a], Math.sqrt(covariance.getEntry(a, a))));
        }
        return new JointDoubt(outputs, covariance);
    }

    private void fillSlopes(UnaryOperator<double[]> measure, double[] centre, int i, double[][] slopes) {
        Input input = inputs.get(i);
        double step = input.uncertainty() > 0 ? input.uncertainty() : FINE * Math.max(1, Math.abs(input.value()));
        double up = input.value() + step;
        double down = input.value() - step;
        double[] above = measure.apply(moved(i, up));
        double[] below = measure.apply(moved(i, down));
        for (int k = 0; k < centre.length; k++) {
            boolean hasAbove = Double.isFinite(above[k]);
            boolean hasBelow = Double.isFinite(below[k]);
            double rise = (hasAbove ? above[k] : centre[k]) - (hasBelow ? below[k] : centre[k]);
            double run = (hasAbove ? up : input.value()) - (hasBelow ? down : input.value());
            // Where the doubt drowns in the rounding of the value there is no step and no slope to be seen.
            slopes[k][i] = run > 0 ? rise / run : up > down ? Double.POSITIVE_INFINITY : 0;
        }
    }

    private LinearDoubt doubt(double value, double[] slopes, double uncertainty) {
        double[] amounts = amounts(slopes);
        List<LinearDoubt.Part> parts = new ArrayList<>();
        for (int i = 0; i < slopes.length; i++) {
            parts.add(new LinearDoubt.Part(slopes[i], amounts[i]));
        }
        return new LinearDoubt(value, uncertainty, degreesOfFreedom(uncertainty, amounts), parts);
    }

    /** Sum over all pairs; amounts that are infinite make a variance infinite and say nothing of a covariance. */
    private double covariance(double[] a, double[] b, boolean same) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            for (int j = 0; j < b.length; j++) {
                if (Double.isInfinite(a[i]) || Double.isInfinite(b[j])) {
                    return same ? Double.POSITIVE_INFINITY : 0;
                }
                sum += a[i] * b[j] * correlation.getEntry(i, j);
            }
        }
        return same ? Math.max(0, sum) : sum;
    }

    /** GUM eq. G.2b, with shares of the variance so that small numbers do not vanish. */
    private double degreesOfFreedom(double uncertainty, double[] amounts) {
        if (correlated || uncertainty == 0 || Double.isInfinite(uncertainty)) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = 0;
        for (int i = 0; i < amounts.length; i++) {
            double share = amounts[i] / uncertainty;
            sum += share * share * share * share / inputs.get(i).degreesOfFreedom();
        }
        return 1 / sum;
    }

    private double[] amounts(double[] slopes) {
        double[] amounts = new double[slopes.length];
        for (int i = 0; i < slopes.length; i++) {
            double u = inputs.get(i).uncertainty();
            amounts[i] = u > 0 ? slopes[i] * u : 0;
        }
        return amounts;
    }

    private double[] values() {
        return inputs.stream().mapToDouble(Input::value).toArray();
    }

    private double[] moved(int i, double value) {
        double[] values = values();
        values[i] = value;
        return values;
    }

    private static RealMatrix checked(double[][] rows, int size) {
        RealMatrix matrix = new Array2DRowRealMatrix(rows);
        if (size == 0 || matrix.getRowDimension() != size || matrix.getColumnDimension() != size) {
            throw new IllegalArgumentException("correlations of %d inputs come as %d rows of %d; give %d of %d"
                    .formatted(size, matrix.getRowDimension(), matrix.getColumnDimension(), size, size));
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                double r = rows[i][j];
                if (!(Math.abs(r) <= 1 && Math.abs(r - rows[j][i]) <= ROUNDING) || i == j && r != 1) {
                    throw new IllegalArgumentException(
                            ("correlation of inputs %d and %d is %s; it must be from -1 to 1, the same both ways, and 1 of"
                                            + " an input with itself")
                                    .formatted(i + 1, j + 1, r));
                }
            }
        }
        RealMatrix even = matrix.add(matrix.transpose()).scalarMultiply(0.5);
        checkPossible(even);
        return even;
    }

    /** A little of the identity lets through what is singular, as fully correlated inputs are. */
    private static void checkPossible(RealMatrix matrix) {
        RealMatrix padded = matrix.add(
                MatrixUtils.createRealIdentityMatrix(matrix.getRowDimension()).scalarMultiply(ROUNDING));
        try {
            new CholeskyDecomposition(padded, ROUNDING, 0);
        } catch (org.hipparchus.exception.MathIllegalArgumentException impossible) {
            throw new IllegalArgumentException(
                    "these correlations cannot hold together; no inputs can have all of them at once", impossible);
        }
    }
}
