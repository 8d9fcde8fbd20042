package org.lapwright.app.files;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapwright.core.laps.TimedLap;

/**
 * A list of laps as people keep it on a scrap or paste it from elsewhere: one run, times split by line ends, {@code ;},
 * tabs or blanks, lap numbers or labels in front, decimal point or comma.
 *
 * <p>What a comma means is decided once for the whole text, so the order of the lines never matters:
 *
 * <ul>
 *   <li>a point elsewhere in the same word ({@code 6.214,6.301}) or a comma before a blank: it separates;
 *   <li>one comma a word and nothing else that separates inside words: it is the decimal mark;
 *   <li>several commas a word and no point anywhere ({@code 6,214,6,301}): only the racer knows, so it is asked.
 * </ul>
 */
final class LapList {
    private static final Pattern LABEL = Pattern.compile("^\\s*(?:[\\p{L}#]+\\s*)?(\\d{1,7})\\s*[:.)=]\\s+(\\S.*)$");
    private static final Pattern WORD_LABEL = Pattern.compile("^\\s*[\\p{L}#]+\\s*(\\d{1,7})\\s+(\\S.*)$");
    private static final Pattern SPLIT = Pattern.compile("[\\s;|]+");
    private static final Pattern UNIT_WORD = Pattern.compile("(?i)s|sec|secs|seconds|ms|msec");
    private static final Pattern LINE_END = Pattern.compile("\\R");

    /** More times than this are refused as a whole: a list is held in memory, a table need not be. */
    static final int MOST_TIMES = 250_000;

    private final Answers answers;
    private final ProblemList problems = new ProblemList();
    private final List<Question> questions = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();
    private final List<Timed> times = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private int words;

    private record Line(int number, Optional<Integer> lap, List<String> words) {}

    private record Timed(int line, Optional<Integer> lap, String text, double seconds) {}

    private LapList(Answers answers) {
        this.answers = answers;
    }

    static LapReading read(String text, Answers answers) {
        LapList list = new LapList(answers);
        list.split(text);
        if (list.isTooLong()) {
            return LapText.refused(
                    "This list has more than " + MOST_TIMES + " times; none of it was taken",
                    "Keep each stint in a file of its own");
        }
        list.readTimes();
        return list.reading();
    }

    private boolean isTooLong() {
        return words > MOST_TIMES;
    }

    private void split(String text) {
        int number = 0;
        Iterator<String> raw = LINE_END.splitAsStream(text).iterator();
        while (raw.hasNext() && !isTooLong()) {
            number++;
            String line = raw.next()
                    .replace('\u2212', '-')
                    .replace('\u00a0', ' ')
                    .replace('\u202f', ' ')
                    .replace('"', ' ')
                    .strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            lines.add(line(number, line));
        }
        takeLapNumberColumn();
    }

    private Line line(int number, String text) {
        // A label ends at a blank; most lines are one time and need not be tried.
        if (text.chars().anyMatch(Character::isWhitespace)) {
            for (Pattern label : List.of(LABEL, WORD_LABEL)) {
                Matcher labelled = label.matcher(text);
                if (labelled.matches()) {
                    return new Line(number, Optional.of(Integer.parseInt(labelled.group(1))), words(labelled.group(2)));
                }
            }
        }
        return new Line(number, Optional.empty(), words(text));
    }

    /** Splits at blanks and puts a lone unit back to its number. */
    private List<String> words(String line) {
        List<String> found = new ArrayList<>();
        Iterator<String> all = SPLIT.splitAsStream(line).iterator();
        while (all.hasNext() && !isTooLong()) {
            String word = all.next();
            words += 1 + (int) word.chars().filter(c -> c == ',').count();
            String bare = stripped(word);
            if (bare.isEmpty()) {
                continue;
            }
            if (UNIT_WORD.matcher(bare).matches() && !found.isEmpty()) {
                int last = found.size() - 1;
                found.set(last, stripped(found.get(last)) + bare.toLowerCase(Locale.ROOT));
            } else {
                found.add(word);
            }
        }
        return found;
    }

    private static String stripped(String word) {
        int from = 0;
        int to = word.length();
        while (from < to && word.charAt(from) == ',') {
            from++;
        }
        while (to > from && word.charAt(to - 1) == ',') {
            to--;
        }
        return word.substring(from, to);
    }

    /** Two words a line, the first ones a run of whole numbers: those are lap numbers. */
    private void takeLapNumberColumn() {
        boolean pairs = lines.size() > 1
                && lines.stream()
                        .allMatch(line -> line.lap().isEmpty()
                                && line.words().size() == 2
                                && LapTime.isWhole(stripped(line.words().get(0)))
                                && line.words().get(0).length() <= 7);
        if (!pairs) {
            return;
        }
        List<Integer> numbers = lines.stream()
                .map(line -> Integer.parseInt(stripped(line.words().get(0))))
                .toList();
        int first = numbers.stream().min(Integer::compare).orElseThrow();
        int last = numbers.stream().max(Integer::compare).orElseThrow();
        if (numbers.stream().distinct().count() == numbers.size() && last - first == numbers.size() - 1) {
            lines.replaceAll(line -> new Line(
                    line.number(),
                    Optional.of(Integer.parseInt(stripped(line.words().get(0)))),
                    line.words().subList(1, 2)));
        }
    }

    private void readTimes() {
        boolean commaSeparates = commaSeparates();
        for (Line line : lines) {
            for (String word : line.words()) {
                String[] parts = commaSeparates ? word.split(",") : new String[] {stripped(word)};
                for (String part : parts) {
                    if (!part.isEmpty()) {
                        readTime(line, part, parts.length == 1 && line.words().size() == 1);
                    }
                }
            }
        }
    }

    private void readTime(Line line, String text, boolean alone) {
        OptionalDouble seconds = LapTime.parse(text);
        if (seconds.isPresent()) {
            times.add(new Timed(line.number(), alone ? line.lap() : Optional.empty(), text, seconds.getAsDouble()));
        } else {
            problems.add(notATime(line.number(), text));
        }
    }

    /** Why a text is no lap time, and what would be right. */
    static Problem notATime(int line, String text) {
        if (text.startsWith("-") && LapTime.parse(text.substring(1)).isPresent()) {
            return new Problem(line, text, "is negative", "A lap time is more than 0 s");
        }
        String digits =
                text.replace('o', '0').replace('O', '0').replace('l', '1').replace('I', '1');
        if (!digits.equals(text) && LapTime.parse(digits).isPresent()) {
            return new Problem(line, text, "is not a time", "Did you mean " + digits.replace(',', '.') + "?");
        }
        return new Problem(line, text, "is not a time", "Write seconds such as 6.214, or minutes such as 0:06.214");
    }

    private boolean commaSeparates() {
        boolean point = false;
        boolean pointBesideComma = false;
        boolean single = false;
        boolean several = false;
        for (Line line : lines) {
            for (String raw : line.words()) {
                String word = stripped(raw);
                boolean hasComma = word.indexOf(',') >= 0;
                boolean hasPoint = word.indexOf('.') >= 0;
                point |= hasPoint;
                pointBesideComma |= hasPoint && hasComma;
                single |= hasComma && word.indexOf(',') == word.lastIndexOf(',');
                several |= hasComma && word.indexOf(',') != word.lastIndexOf(',');
            }
        }
        if (pointBesideComma) {
            notes.add("commas between laps");
            return true;
        }
        if (several) {
            return askAboutComma(point);
        }
        if (single) {
            notes.add(point ? "decimal comma and decimal point mixed" : "decimal comma");
        } else if (point) {
            notes.add("decimal point");
        }
        return false;
    }

    private boolean askAboutComma(boolean point) {
        String sample = lines.stream()
                .flatMap(line -> line.words().stream())
                .map(LapList::stripped)
                .filter(word -> word.indexOf(',') != word.lastIndexOf(','))
                .findFirst()
                .orElseThrow();
        Optional<String> answer = answers.find(Question.Topic.COMMA);
        String[] parts = sample.split(",", -1);
        boolean pairsUp = parts.length % 2 == 0 && Arrays.stream(parts).allMatch(LapTime::isWhole);
        if (answer.isPresent() ? answer.get().equals(Answers.COMMA_DECIMAL) : pairsUp && !point) {
            rejoinDecimalPairs();
            if (answer.isEmpty()) {
                ask(sample);
            }
            notes.add("every second comma as the decimal mark");
            return false;
        }
        if (answer.isEmpty() && pairsUp) {
            ask(sample);
        }
        notes.add("commas between laps");
        return true;
    }

    private void ask(String sample) {
        String[] parts = sample.split(",");
        String shown = sample.length() > 24 ? sample.substring(0, 24) + "…" : sample;
        questions.add(new Question(
                Question.Topic.COMMA,
                "In '" + shown + "', is the comma a decimal mark or does it stand between laps?",
                List.of(
                        new Question.Choice(
                                Answers.COMMA_DECIMAL,
                                "Decimal mark: the first lap is " + parts[0] + "." + parts[1] + " s"),
                        new Question.Choice(
                                Answers.COMMA_SEPARATES,
                                "Between laps: the first two are " + parts[0] + " s and " + parts[1] + " s"))));
    }

    /** 6,214,6,301 becomes the words 6,214 and 6,301; what does not pair up is left for the error message. */
    private void rejoinDecimalPairs() {
        lines.replaceAll(line -> {
            List<String> words = new ArrayList<>();
            for (String word : line.words()) {
                String[] parts = stripped(word).split(",");
                if (parts.length > 2 && parts.length % 2 == 0) {
                    for (int i = 0; i < parts.length; i += 2) {
                        words.add(parts[i] + "," + parts[i + 1]);
                    }
                } else {
                    words.add(word);
                }
            }
            return new Line(line.number(), line.lap(), words);
        });
    }

    private LapReading reading() {
        double unit = unit();
        List<Timed> ordered = new ArrayList<>(times);
        boolean numbered = !ordered.isEmpty()
                && ordered.stream().allMatch(time -> time.lap().isPresent())
                && ordered.stream()
                                .map(time -> time.lap().orElseThrow())
                                .distinct()
                                .count()
                        == ordered.size();
        if (numbered) {
            ordered.sort(
                    (a, b) -> Integer.compare(a.lap().orElseThrow(), b.lap().orElseThrow()));
            notes.add("lap numbers in front");
        }
        List<TimedLap> laps = new ArrayList<>();
        for (Timed time : ordered) {
            double seconds = time.seconds() / unit;
            if (seconds < TimedLap.SHORTEST_S || seconds > TimedLap.LONGEST_S) {
                problems.add(impossible(time.line(), time.text(), seconds));
            } else {
                int number = numbered ? Math.max(1, time.lap().orElseThrow()) : laps.size() + 1;
                laps.add(new TimedLap(number, seconds));
            }
        }
        return readingOf(laps);
    }

    static Problem impossible(int line, String text, double seconds) {
        return seconds < TimedLap.SHORTEST_S
                ? new Problem(line, text, "is no lap time", "A lap time is more than 0 s")
                : new Problem(line, text, "is longer than an hour", "A lap time is in seconds, up to 3600");
    }

    private LapReading readingOf(List<TimedLap> laps) {
        String count = laps.size() == 1 ? "1 lap" : laps.size() + " laps";
        String understood =
                laps.isEmpty() ? "no laps" : count + (notes.isEmpty() ? "" : ", " + String.join(", ", notes));
        List<ReadSession> sessions = laps.isEmpty()
                ? List.of()
                : List.of(new ReadSession("", List.of(new ReadRun(Optional.empty(), laps, Optional.empty(), ""))));
        return new LapReading(sessions, understood, problems.listed(), problems.count(), questions);
    }

    /** Whole numbers of 1000 and more, all of them: milliseconds, unless the racer says otherwise. */
    private double unit() {
        boolean large = !times.isEmpty()
                && times.stream().allMatch(time -> LapTime.isWhole(time.text()) && time.seconds() >= 1000);
        if (!large) {
            return 1;
        }
        Optional<String> answer = answers.find(Question.Topic.UNIT);
        if (answer.isEmpty()) {
            String sample = times.get(0).text();
            questions.add(new Question(
                    Question.Topic.UNIT,
                    "Is " + sample + " a lap in milliseconds or in seconds?",
                    List.of(
                            new Question.Choice(
                                    Answers.MILLISECONDS,
                                    "Milliseconds: the first lap is "
                                            + times.get(0).seconds() / 1000 + " s"),
                            new Question.Choice(Answers.SECONDS, "Seconds: the first lap is " + sample + " s"))));
        }
        boolean milliseconds = !answer.orElse(Answers.MILLISECONDS).equals(Answers.SECONDS);
        notes.add(milliseconds ? "whole numbers as milliseconds" : "whole seconds");
        return milliseconds ? 1000 : 1;
    }
}
