package org.lapwright.app.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapwright.app.usecase.LapBoxReader;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.Side;

/**
 * A reader that knows just enough to try the pages: one lap a line or parted by blanks, "before:" and "after:" to name
 * sides, and a question when a number such as 1,234 may be either thing.
 */
final class PlainReader implements LapBoxReader {
    @Override
    public Reading read(String text, Map<String, String> answers) {
        List<List<TimedLap>> runs = new ArrayList<>(List.of(new ArrayList<>()));
        List<Side> sides = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        boolean ambiguous = text.contains("1,234") && !answers.containsKey("mark");
        int line = 0;
        for (String row : text.split("\\R", -1)) {
            line++;
            for (String word : row.strip().split("[\\s;]+", -1)) {
                if (word.equals("before:") || word.equals("after:")) {
                    sides.add(word.equals("before:") ? Side.BEFORE : Side.AFTER);
                    runs.add(new ArrayList<>());
                } else if (!word.isEmpty()) {
                    List<TimedLap> run = runs.get(runs.size() - 1);
                    try {
                        run.add(new TimedLap(run.size() + 1, Double.parseDouble(word.replace(',', '.'))));
                    } catch (IllegalArgumentException notATime) {
                        problems.add(new Problem(line, word, "is not a time", "Write it as 6.214 or leave it out"));
                    }
                }
            }
        }
        List<TimedRun> read = runs.stream()
                .filter(run -> !run.isEmpty())
                .map(run -> new TimedRun(run, List.of()))
                .toList();
        String understood =
                read.isEmpty() ? "" : (text.contains(",") ? "decimal comma" : "decimal point") + ", in seconds";
        List<Question> questions = ambiguous
                ? List.of(new Question(
                        "mark",
                        "Is 1,234 a lap of 1.234 s, or a list of two numbers?",
                        List.of(new Choice("decimal", "1.234 s"), new Choice("list", "Two numbers"))))
                : List.of();
        return new Reading(read, sides.size() == read.size() ? sides : List.of(), understood, problems, questions);
    }
}
