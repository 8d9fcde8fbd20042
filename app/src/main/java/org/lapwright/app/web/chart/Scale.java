package org.lapwright.app.web.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Turns values into places on a drawing.
 *
 * <p>Along the page, places are percentages of the drawing's width, so that one drawing fits a phone and a desk without
 * a script and its text never shrinks. Up the page they are pixels.
 *
 * @param low value at the start
 * @param high value at the end, above {@code low}
 * @param start place of {@code low}
 * @param end place of {@code high}
 */
public record Scale(double low, double high, double start, double end) {

    /** Place of a value. */
    public double at(double value) {
        return start + (value - low) / (high - low) * (end - start);
    }

    /** Place of a value, on the nearer end if it lies outside. */
    public double clamped(double value) {
        return at(Math.min(high, Math.max(low, value)));
    }

    /** Whether a value lies on the scale. */
    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    /** The step of about {@code count} round ticks: 1, 2 or 5 times a power of ten. */
    public double step(int count) {
        double raw = (high - low) / count;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double lead = raw / power;
        return power * (lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10);
    }

    /** About {@code count} round values inside. */
    public List<Double> ticks(int count) {
        double step = step(count);
        List<Double> ticks = new ArrayList<>();
        long first = (long) Math.ceil(low / step - 1e-9);
        for (long i = first; i * step <= high + 1e-9 * step && ticks.size() <= 2 * count; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    /** Decimals that ticks of this step need. */
    public static int decimals(double step) {
        return (int) Math.max(0, Math.min(6, Math.ceil(-Math.log10(step) - 1e-9)));
    }

    /** A place along the page. */
    public static String percent(double place) {
        return trimmed(place) + "%";
    }

    /** A place up the page. */
    public static String pixels(double place) {
        return trimmed(place);
    }

    private static String trimmed(double place) {
        String text = String.format(Locale.ROOT, "%.2f", place);
        return text.replaceAll("\\.?0+$", "");
    }
}
