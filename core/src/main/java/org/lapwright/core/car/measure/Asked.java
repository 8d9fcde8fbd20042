package org.lapwright.core.car.measure;

import java.util.List;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;

/**
 * One quantity that a measurement asks for.
 *
 * @param code its name in forms
 * @param label what people call it, with its unit
 * @param key its range and unit
 * @param instrument standard deviation that the usual instrument leaves, as an amount
 * @param share the same as a share of the reading; both add up as squares
 */
public record Asked(String code, String label, NumberKey key, double instrument, double share) {
    /** One with a doubt that does not grow with it. */
    static Asked of(String code, String label, NumberKey key, double instrument) {
        return new Asked(code, label, key, instrument, 0);
    }

    /** The doubt of the instrument about a value. */
    public double doubt(double value) {
        return Math.hypot(instrument, share * value);
    }

    /** Takes readings together. */
    public Reading together(List<Double> values) {
        double mean = values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        return Repeated.of(values, doubt(Math.abs(mean)));
    }
}
