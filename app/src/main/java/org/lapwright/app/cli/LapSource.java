package org.lapwright.app.cli;

import java.io.PrintWriter;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.Answers;
import org.lapwright.app.files.LapReading;
import org.lapwright.app.files.LapText;
import org.lapwright.app.files.Problem;
import org.lapwright.app.files.Question;
import picocli.CommandLine.Option;

/** Opens lap files for a command: problems go to standard error, open questions and empty files end the command. */
final class LapSource {
    @Option(
            names = "--comma",
            paramLabel = "MEANING",
            description = "What the comma is in a list such as 6,214,6,301: decimal (6.214 s, 6.301 s) or separates"
                    + " (6 s, 214 s, …). You are asked when it matters.")
    private @Nullable String comma;

    @Option(
            names = "--unit",
            paramLabel = "UNIT",
            description = "What a whole number such as 6214 is: ms (6.214 s) or s. You are asked when it matters.")
    private @Nullable String unit;

    @Option(
            names = "--column",
            paramLabel = "NAME",
            description = "Which column of a table holds the lap times, if it is not called lap_s.")
    private @Nullable String column;

    /**
     * Reads a file; {@code -} is standard input.
     *
     * @throws BadInput if there is no such file, no lap in it, or something in it that only the racer can say
     */
    LapReading read(String file, PrintWriter err) {
        LapReading reading = open(file);
        String where = named(file);
        if (reading.laps() == 0
                && reading.problemCount() == 1
                && reading.problems().get(0).line() == 0) {
            throw new BadInput(where + ": " + reading.problems().get(0).sentence());
        }
        for (Problem problem : reading.problems()) {
            err.println(where + ": " + problem.sentence());
        }
        int unlisted = reading.problemCount() - reading.problems().size();
        if (unlisted > 0) {
            err.println(where + ": and " + unlisted + " more problems like these.");
        }
        if (reading.problemCount() > 0 && reading.laps() > 0) {
            err.println(where + ": the other " + reading.laps() + " laps are used.");
        }
        if (reading.laps() == 0) {
            throw new BadInput(
                    where + ": no laps in it. It should hold lap times in seconds, one a line, or a table with"
                            + " a column lap_s.");
        }
        for (Question question : reading.questions()) {
            throw new BadInput(where + ": " + question.text() + " Say which: " + answers(question));
        }
        return reading;
    }

    private static String answers(Question question) {
        String option = "--" + question.topic().name().toLowerCase(Locale.ROOT) + "=";
        return question.choices().stream()
                .map(choice -> option + choice.code() + " (" + choice.label() + ")")
                .collect(Collectors.joining(" or "));
    }

    private LapReading open(String file) {
        return InputFile.read(
                file,
                "lap times",
                path -> file.equals("-") ? LapText.read(System.in, given()) : LapText.read(path, given()));
    }

    private Answers given() {
        Map<Question.Topic, String> answers = new EnumMap<>(Question.Topic.class);
        put(answers, Question.Topic.COMMA, oneOf(comma, "--comma", Answers.COMMA_DECIMAL, Answers.COMMA_SEPARATES));
        put(answers, Question.Topic.UNIT, oneOf(unit, "--unit", Answers.SECONDS, Answers.MILLISECONDS));
        put(answers, Question.Topic.COLUMN, column);
        return new Answers(answers);
    }

    private static @Nullable String oneOf(@Nullable String given, String option, String one, String other) {
        if (given != null
                && !given.strip().equalsIgnoreCase(one)
                && !given.strip().equalsIgnoreCase(other)) {
            throw new BadInput(option + " is '" + given + "'; it must be " + one + " or " + other + ".");
        }
        return given;
    }

    /** A file as a message names it. */
    static String named(String file) {
        return file.equals("-") ? "standard input" : file;
    }

    private static void put(Map<Question.Topic, String> answers, Question.Topic topic, @Nullable String answer) {
        if (answer != null) {
            answers.put(topic, answer.strip().toLowerCase(Locale.ROOT));
        }
    }
}
