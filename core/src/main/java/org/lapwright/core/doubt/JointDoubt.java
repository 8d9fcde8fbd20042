package org.lapwright.core.doubt;

import java.util.List;
import org.hipparchus.linear.RealMatrix;

/**
 * Several numbers computed from the same inputs.
 *
 * @param outputs each by itself
 * @param covariance how they move together, one row and column for each output (GUM H.2, eq. H.9)
 */
public record JointDoubt(List<LinearDoubt> outputs, RealMatrix covariance) {
    /** Copies list and matrix. */
    public JointDoubt {
        outputs = List.copyOf(outputs);
        covariance = covariance.copy();
    }

    /** Correlation of two outputs, −1 to 1; 0 when one of them is sure. */
    public double correlation(int first, int second) {
        double scale = Math.sqrt(covariance.getEntry(first, first) * covariance.getEntry(second, second));
        return scale > 0 ? covariance.getEntry(first, second) / scale : 0;
    }
}
