package org.lapwright.app.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Difference;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.section.JudgedSection;

/**
 * Where on the lap the change brings or costs time.
 *
 * @param sentence what can be said of it
 * @param rows a section each
 */
public record SectionsInWords(String sentence, List<Row> rows) {
    /** No sections. */
    public static final SectionsInWords NONE = new SectionsInWords("", List.of());

    /** Copies the list. */
    public SectionsInWords {
        rows = List.copyOf(rows);
    }

    /**
     * A section.
     *
     * @param name of it
     * @param before pace before, s
     * @param after pace after, s
     * @param difference after less before with its interval, s
     * @param told what is sure of that; empty while nothing is
     */
    public record Row(String name, String before, String after, String difference, String told) {}

    /** Sections in words; {@code gates} are the names of those that the track has on file, in their order. */
    public static SectionsInWords of(List<JudgedSection> sections, List<String> gates) {
        if (sections.isEmpty()) {
            return NONE;
        }
        List<Row> rows = new ArrayList<>();
        List<String> told = new ArrayList<>();
        for (JudgedSection section : sections) {
            String name = name(section.number(), sections.size(), gates);
            Verdict verdict = section.verdict();
            rows.add(new Row(
                    name,
                    seconds(verdict.before().paceS()),
                    seconds(verdict.after().paceS()),
                    verdict.difference().map(SectionsInWords::difference).orElse(Figures.NONE),
                    told(verdict.decision())));
            if (verdict.decision() == Decision.FASTER || verdict.decision() == Decision.SLOWER) {
                told.add("%s %s".formatted(told(verdict.decision()), name));
            }
        }
        String sentence =
                told.isEmpty() ? "No section stands out yet." : "With the change " + String.join(", ", told) + ".";
        return new SectionsInWords(sentence, rows);
    }

    private static String name(int number, int sections, List<String> gates) {
        if (gates.size() == sections - 1) {
            return number <= gates.size() ? gates.get(number - 1) : "to the line";
        }
        return "section " + number;
    }

    private static String told(Decision decision) {
        return switch (decision) {
            case FASTER -> "faster in";
            case SLOWER -> "slower in";
            case LEVEL -> "level";
            case MORE_LAPS -> "";
        };
    }

    private static String seconds(OptionalDouble seconds) {
        return seconds.isPresent() ? Figures.fixed(seconds.getAsDouble(), 3) : Figures.NONE;
    }

    private static String difference(Difference difference) {
        double low = difference.intervalS().low();
        double high = difference.intervalS().high();
        String estimate = Figures.signed(difference.seconds(), 3);
        return Double.isFinite(low) && Double.isFinite(high)
                ? "%s (%s to %s)".formatted(estimate, Figures.signed(low, 3), Figures.signed(high, 3))
                : estimate;
    }
}
