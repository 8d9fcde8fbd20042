package org.lapwright.core.car.measure;

import java.util.List;
import org.lapwright.core.units.Reading;

/** One quantity read several times. */
public final class Repeated {
    private Repeated() {}

    /**
     * Its mean, with the standard deviation of the mean and the instrument's own doubt added as squares.
     *
     * @param values as read, at least one
     * @param instrument standard deviation that the instrument leaves however often it is read
     * @throws IllegalArgumentException if there is no value
     */
    public static Reading of(List<Double> values, double instrument) {
        if (values.isEmpty()) {
            throw new IllegalArgumentException("nothing was read; give at least one reading");
        }
        double mean = values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        int n = values.size();
        double ofMean = n < 2 ? 0 : Math.sqrt(squares / (n - 1) / n);
        return new Reading(mean, Math.hypot(ofMean, instrument));
    }
}
