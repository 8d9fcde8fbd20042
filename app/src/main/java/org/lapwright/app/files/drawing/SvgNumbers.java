package org.lapwright.app.files.drawing;

import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Lengths, lists of numbers and transforms as SVG 1.1 writes them. */
final class SvgNumbers {
    /** Of CSS: an inch has 96 pixels and 72 points. */
    static final double MM_PER_PX = 25.4 / 96;

    private static final Map<String, Double> PX = Map.of(
            "",
            1.0,
            "px",
            1.0,
            "in",
            96.0,
            "mm",
            96 / 25.4,
            "cm",
            960 / 25.4,
            "pt",
            96 / 72.0,
            "pc",
            16.0,
            "q",
            24 / 25.4);
    private static final Pattern STEP = Pattern.compile("[\\s,]*([a-zA-Z]{1,10})\\s*\\(([^()]*)\\)");

    /** A little more than a drawing may have points; whoever draws them says that they are too many. */
    private static final int MOST_NUMBERS = 2 * Budget.MOST + 2;

    private SvgNumbers() {}

    /** A length in pixels; empty if it is none, or relative to something else (percent, em). */
    static OptionalDouble length(String text) {
        String typed = text.strip();
        NumberScanner in = new NumberScanner(typed);
        try {
            double number = in.number();
            Double scale = PX.get(typed.substring(in.place()).toLowerCase(Locale.ROOT));
            return scale == null ? OptionalDouble.empty() : OptionalDouble.of(Budget.checked(number * scale));
        } catch (NumberScanner.NoNumber none) {
            return OptionalDouble.empty();
        }
    }

    /** Whether a length names a unit that can be held against a ruler. */
    static boolean isPhysical(String text) {
        return text.strip().toLowerCase(Locale.ROOT).matches(".*(mm|cm|in|pt|pc|q)");
    }

    /** All numbers of a list, as far as they can be read. */
    static List<Double> list(String text) {
        List<Double> numbers = new ArrayList<>();
        NumberScanner in = new NumberScanner(text);
        while (numbers.size() <= MOST_NUMBERS && in.hasMore()) {
            try {
                numbers.add(Budget.checked(in.number()));
            } catch (NumberScanner.NoNumber broken) {
                return numbers;
            }
        }
        return numbers;
    }

    /**
     * A transform: the steps in the order written, the first being the outermost.
     *
     * @return null if it cannot be read
     */
    static @org.jspecify.annotations.Nullable AffineTransform transform(String text, Budget budget) {
        AffineTransform whole = new AffineTransform();
        Matcher steps = STEP.matcher(text);
        int read = 0;
        while (steps.find() && steps.start() == read) {
            budget.take();
            AffineTransform step = step(steps.group(1), list(steps.group(2)));
            if (step == null) {
                return null;
            }
            whole.concatenate(step);
            read = steps.end();
        }
        return text.substring(read).isBlank() ? whole : null;
    }

    private static @org.jspecify.annotations.Nullable AffineTransform step(String name, List<Double> a) {
        String call = name + a.size();
        return switch (call) {
            case "matrix6" -> new AffineTransform(a.get(0), a.get(1), a.get(2), a.get(3), a.get(4), a.get(5));
            case "translate1" -> AffineTransform.getTranslateInstance(a.get(0), 0);
            case "translate2" -> AffineTransform.getTranslateInstance(a.get(0), a.get(1));
            case "scale1" -> AffineTransform.getScaleInstance(a.get(0), a.get(0));
            case "scale2" -> AffineTransform.getScaleInstance(a.get(0), a.get(1));
            case "rotate1" -> AffineTransform.getRotateInstance(Math.toRadians(a.get(0)));
            case "rotate3" -> AffineTransform.getRotateInstance(Math.toRadians(a.get(0)), a.get(1), a.get(2));
            case "skewX1" -> AffineTransform.getShearInstance(Math.tan(Math.toRadians(a.get(0))), 0);
            case "skewY1" -> AffineTransform.getShearInstance(0, Math.tan(Math.toRadians(a.get(0))));
            default -> null;
        };
    }
}
