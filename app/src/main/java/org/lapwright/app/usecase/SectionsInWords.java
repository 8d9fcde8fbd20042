package org.lapwright.app.usecase;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Difference;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.section.JudgedSection;
import org.lapwright.core.units.Interval;

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
     */
    public record Row(String name, String before, String after, String difference) {}

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
                    Figures.fixed(verdict.before().paceS(), 3),
                    Figures.fixed(verdict.after().paceS(), 3),
                    verdict.difference().map(SectionsInWords::difference).orElse(Figures.NONE)));
            if (verdict.decision() == Decision.FASTER) {
                told.add("faster in " + name);
            } else if (verdict.decision() == Decision.SLOWER) {
                told.add("slower in " + name);
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

    private static String difference(Difference difference) {
        Interval interval = difference.intervalS();
        String estimate = Figures.signed(difference.seconds(), 3);
        return interval.isBounded()
                ? "%s (%s to %s)"
                        .formatted(estimate, Figures.signed(interval.low(), 3), Figures.signed(interval.high(), 3))
                : estimate;
    }
}
