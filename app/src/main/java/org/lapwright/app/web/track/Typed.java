package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/** Turns what somebody typed into numbers, and gathers what could not be understood. */
public final class Typed {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,9}([.,]\\d{0,25})?|[.,]\\d{1,25})");

    /** One mark before three digits may be a decimal mark or set thousands apart. */
    private static final Pattern AMBIGUOUS = Pattern.compile("[+-]?[1-9]\\d{0,2}[.,]\\d{3}");

    private final List<Fault> faults = new ArrayList<>();
    private String field = "";

    /**
     * What could not be understood.
     *
     * @param field where it stands in the form; empty for the whole of it
     * @param sentence what is wrong and what would be right
     */
    public record Fault(String field, String sentence) {
        /** What is wrong with a field, or nothing. */
        public static @Nullable String about(String field, List<Fault> faults) {
            return faults.stream()
                    .filter(fault -> fault.field.equals(field))
                    .map(Fault::sentence)
                    .findFirst()
                    .orElse(null);
        }
    }

    /** From now on it is about this field. */
    public Typed at(String otherField) {
        field = otherField;
        return this;
    }

    /** What could not be understood, with its fields. */
    public List<Fault> faults() {
        return faults;
    }

    /** What could not be understood, in words. */
    public List<String> problems() {
        return faults.stream().map(fault -> fault.sentence()).toList();
    }

    /** Something could not be understood. */
    public void problem(String sentence) {
        faults.add(new Fault(field, sentence));
    }

    /** Takes what makes sense only with the rest; else its message becomes a problem of {@code about}. */
    public <T> java.util.Optional<T> build(String about, java.util.function.Supplier<T> maker) {
        try {
            return java.util.Optional.of(maker.get());
        } catch (IllegalArgumentException senseless) {
            problem(about + senseless.getMessage() + ".");
            return java.util.Optional.empty();
        }
    }

    /** An optional number; empty means {@code otherwise}. */
    public double number(String text, NumberKey key, String label, double otherwise) {
        return text.isBlank() ? otherwise : number(text, key, label);
    }

    /** A number in the range of its key; NaN, with a problem noted, if it is none. */
    public double number(String text, NumberKey key, String label) {
        String typed = text.strip().replace('\u2212', '-');
        if (typed.isEmpty()) {
            problem("%s is empty; give a number %s.".formatted(label, key.range()));
            return Double.NaN;
        }
        if (!NUMBER.matcher(typed).matches()) {
            problem("%s: '%s' is not a number; give one %s.".formatted(label, shortened(typed), key.range()));
            return Double.NaN;
        }
        double value = Double.parseDouble(typed.replace(',', '.'));
        double thousands = Double.parseDouble(typed.replaceAll("[.,]", ""));
        if (AMBIGUOUS.matcher(typed).matches() && holds(key, value) && holds(key, thousands)) {
            problem("%s: '%s' may be %s or %s; write it without the mark, or with fewer decimals."
                    .formatted(label, typed, Check.number(thousands), Check.number(value)));
            return Double.NaN;
        }
        if (!holds(key, value)) {
            problem("%s is %s; it must be %s.".formatted(label, Check.number(value), key.range()));
            return Double.NaN;
        }
        return value + 0.0;
    }

    private static boolean holds(NumberKey key, double value) {
        return value >= key.min() && value <= key.max();
    }

    private static String shortened(String text) {
        return text.length() > 20 ? text.substring(0, 20) + "…" : text;
    }
}
