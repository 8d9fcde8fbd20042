package org.lapwright.app.files;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.trial.session.Side;

/**
 * A table of laps with a header (RFC 4180; {@code ,}, {@code ;} or tab between the columns): {@code lap_s}, optional
 * {@code lap}, {@code at}, {@code lane}, {@code run}, {@code side}, {@code session}. Other columns are passed over.
 */
final class LapTable {
    private static final String TIME = "lap_s";
    private static final Set<String> KNOWN = Set.of(TIME, "lap", "at", "lane", "run", "side", "session");
    private static final int LONGEST_FIELD = 1 << 20;

    private final Header header;
    private final ProblemList problems = new ProblemList();
    private final Map<String, Map<Integer, RunSoFar>> sessions = new LinkedHashMap<>();
    private int laps;

    private record Header(
            Map<String, Integer> columns, int width, int time, String understoodAs, List<Question> questions) {
        Optional<String> field(CsvRecord row, String column) {
            Integer at = columns.get(column);
            if (at == null || at >= row.getFieldCount()) {
                return Optional.empty();
            }
            String text = row.getField(at).strip();
            return text.isEmpty() ? Optional.empty() : Optional.of(text);
        }
    }

    private static final class RunSoFar {
        private final List<TimedLap> laps = new ArrayList<>();
        private Optional<Side> side = Optional.empty();
        private Optional<Instant> startedAt = Optional.empty();
        private String lane = "";
    }

    private LapTable(Header header) {
        this.header = header;
    }

    /** Whether the first line names columns and the second fills them, a lap time among them. */
    static boolean looksLikeTable(String head) {
        String[] rows = head.strip().split("\\R", 3);
        List<String> names = names(rows[0], separator(rows[0]));
        if (names.contains(TIME)) {
            return true;
        }
        boolean words = names.stream().noneMatch(name -> LapTime.parse(name).isPresent());
        boolean filled = rows.length > 1 && names(rows[1], separator(rows[0])).size() == names.size();
        return words
                && names.size() > 1
                && filled
                && !columnsWithDecimals(head, separator(rows[0])).isEmpty();
    }

    static LapReading read(Reader source, String head, Answers answers) {
        String first = firstLine(head);
        char separator = separator(first);
        CsvReader<CsvRecord> csv = CsvReader.builder()
                .fieldSeparator(separator)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true)
                .skipEmptyLines(true)
                .maxBufferSize(LONGEST_FIELD)
                .ofCsvRecord(source);
        LapTable[] table = new LapTable[1];
        try {
            return readRows(csv.iterator(), head, separator, answers, table);
        } catch (CsvParseException | UncheckedIOException e) {
            if (table[0] == null) {
                return LapText.refused(
                        "This table cannot be read", "Its first line should name the columns, such as lap_s");
            }
            table[0].problems.add(Problem.ofWhole(
                    "After lap " + table[0].laps + " the table cannot be read: a quote is open or a field is too long",
                    "The laps before it are ready"));
            return table[0].reading();
        }
    }

    private static LapReading readRows(
            Iterator<CsvRecord> rows, String head, char separator, Answers answers, LapTable[] table) {
        List<String> names =
                rows.next().getFields().stream().map(LapTable::name).toList();
        Optional<String> twice = twice(names, answers);
        if (twice.isPresent()) {
            return LapText.refused(
                    "Two columns are called " + twice.get() + "; none of the laps was taken",
                    "Give each column a name of its own");
        }
        Optional<Header> header = header(names, head, separator, answers);
        if (header.isEmpty()) {
            return LapText.refused(
                    "None of the columns " + String.join(", ", names) + " is a lap time",
                    "Name the column with the lap times lap_s");
        }
        table[0] = new LapTable(header.get());
        while (rows.hasNext()) {
            if (table[0].laps >= LapReading.MOST_LAPS) {
                return LapText.refused(
                        "This table has more than " + LapReading.MOST_LAPS + " laps; none of it was taken",
                        "Keep each session in a file of its own");
            }
            table[0].add(rows.next());
        }
        return table[0].reading();
    }

    private void add(CsvRecord row) {
        int line = (int) Math.min(Integer.MAX_VALUE, row.getStartingLineNumber());
        String text = header.time() < row.getFieldCount()
                ? row.getField(header.time()).strip()
                : "";
        if (text.isEmpty()) {
            problems.add(new Problem(line, "", "No lap time in this line", "Fill in the column of lap times"));
            return;
        }
        if (row.getFieldCount() > header.width()
                && !row.getField(header.width()).isBlank()) {
            problems.add(new Problem(
                    line,
                    String.join(",", row.getFields()),
                    "has more columns than the first line",
                    "With a decimal comma, separate the columns by ; or put the time in quotes"));
            return;
        }
        OptionalDouble seconds = LapTime.parse(text);
        if (seconds.isEmpty()) {
            problems.add(LapList.notATime(line, text));
        } else if (seconds.getAsDouble() < TimedLap.SHORTEST_S || seconds.getAsDouble() > TimedLap.LONGEST_S) {
            problems.add(LapList.impossible(line, text, seconds.getAsDouble()));
        } else {
            Optional<RunSoFar> run = run(row, line);
            if (run.isPresent()) {
                addLap(run.get(), row, line, seconds.getAsDouble());
            }
        }
    }

    private Optional<RunSoFar> run(CsvRecord row, int line) {
        Optional<String> run = header.field(row, "run");
        Optional<Integer> number = run.isEmpty() ? Optional.of(1) : wholeNumber(run.get());
        if (number.isEmpty()) {
            problems.add(
                    new Problem(line, run.orElse(""), "is not a run number", "Runs are numbered 1, 2, 3 as driven"));
            return Optional.empty();
        }
        Optional<String> sideText = header.field(row, "side").map(side -> side.toLowerCase(Locale.ROOT));
        Optional<Side> side = sideText.flatMap(Side::find);
        if (sideText.isPresent() && side.isEmpty()) {
            problems.add(new Problem(line, sideText.get(), "is not a side", "Write before or after"));
            return Optional.empty();
        }
        RunSoFar soFar = sessions.computeIfAbsent(header.field(row, "session").orElse(""), name -> new TreeMap<>())
                .computeIfAbsent(number.get(), r -> new RunSoFar());
        if (soFar.laps.isEmpty()) {
            soFar.side = side;
        } else if (!soFar.side.equals(side)) {
            problems.add(new Problem(
                    line,
                    sideText.orElse("no side"),
                    "disagrees with the earlier laps of run " + number.get(),
                    "A run is driven with one set-up: give the other side a run number of its own"));
            return Optional.empty();
        }
        return Optional.of(soFar);
    }

    private void addLap(RunSoFar run, CsvRecord row, int line, double seconds) {
        Optional<Integer> number = header.columns().getOrDefault("lap", -1) == header.time()
                ? Optional.empty()
                : header.field(row, "lap").flatMap(LapTable::wholeNumber);
        if (run.startedAt.isEmpty()) {
            run.startedAt = header.field(row, "at").flatMap(at -> timeStamp(at, line));
        }
        if (run.lane.isEmpty()) {
            run.lane = header.field(row, "lane").orElse("");
        }
        run.laps.add(new TimedLap(number.orElse(run.laps.size() + 1), seconds));
        laps++;
    }

    private Optional<Instant> timeStamp(String text, int line) {
        try {
            return Optional.of(OffsetDateTime.parse(text.replace(' ', 'T')).toInstant());
        } catch (DateTimeParseException e) {
            problems.add(new Problem(line, text, "is not a time stamp", "Write it as 2026-05-17T20:15:00+02:00"));
            return Optional.empty();
        }
    }

    private LapReading reading() {
        List<ReadSession> read = new ArrayList<>();
        sessions.forEach((name, runs) -> read.add(new ReadSession(
                name,
                runs.values().stream()
                        .filter(run -> !run.laps.isEmpty())
                        .map(run -> new ReadRun(run.side, run.laps, run.startedAt, run.lane))
                        .toList())));
        read.removeIf(session -> session.runs().isEmpty());
        int runs = read.stream().mapToInt(session -> session.runs().size()).sum();
        String understood = laps == 0
                ? "no laps"
                : (laps == 1 ? "1 lap" : laps + " laps")
                        + (runs > 1 ? " in " + runs + " runs" : "")
                        + (read.size() > 1 ? " of " + read.size() + " sessions" : "")
                        + ", " + header.understoodAs();
        return new LapReading(read, understood, problems.listed(), problems.count(), header.questions());
    }

    /** A column that this reads and that is there twice: which one is meant cannot be told. */
    private static Optional<String> twice(List<String> names, Answers answers) {
        String wanted = answers.find(Question.Topic.COLUMN).orElse(TIME);
        return names.stream()
                .filter(name -> KNOWN.contains(name) || name.equals(wanted))
                .filter(name -> names.indexOf(name) != names.lastIndexOf(name))
                .findFirst();
    }

    private static Optional<Header> header(List<String> names, String head, char separator, Answers answers) {
        Map<String, Integer> columns = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            columns.putIfAbsent(names.get(i), i);
        }
        List<Integer> withDecimals = columnsWithDecimals(head, separator);
        String answer = answers.find(Question.Topic.COLUMN).orElse(TIME);
        List<Question> askedAgain = names.contains(answer) || answer.equals(TIME)
                ? List.of()
                : List.of(whichColumn("There is no column " + answer + ". ", names, allColumns(names)));
        for (String wanted : List.of(answer, TIME)) {
            int column = names.indexOf(wanted);
            if (column >= 0) {
                return Optional.of(
                        new Header(columns, names.size(), column, "table with the column " + wanted, askedAgain));
            }
        }
        if (withDecimals.isEmpty()) {
            return Optional.empty();
        }
        int lap = names.indexOf("lap");
        int column = withDecimals.contains(lap) ? lap : withDecimals.get(0);
        List<Question> questions = askedAgain.isEmpty() && withDecimals.size() > 1
                ? List.of(whichColumn("", names, withDecimals))
                : askedAgain;
        return Optional.of(new Header(
                columns,
                names.size(),
                column,
                "table; no column lap_s, so the decimals in the column " + names.get(column) + " are the times",
                questions));
    }

    private static List<Integer> allColumns(List<String> names) {
        return IntStream.range(0, names.size()).boxed().toList();
    }

    private static Question whichColumn(String opening, List<String> names, List<Integer> columns) {
        return new Question(
                Question.Topic.COLUMN,
                opening + "Which column holds the lap times?",
                columns.stream()
                        .map(column -> new Question.Choice(names.get(column), names.get(column)))
                        .toList());
    }

    /** The columns with decimals in the first row below the header: no lap number, no driver's name. */
    private static List<Integer> columnsWithDecimals(String head, char separator) {
        String[] rows = head.strip().split("\\R", 3);
        List<Integer> columns = new ArrayList<>();
        List<String> fields = rows.length < 2 ? List.of() : names(rows[1], separator);
        for (int i = 0; i < fields.size(); i++) {
            if (LapTime.parse(fields.get(i)).isPresent() && !LapTime.isWhole(fields.get(i))) {
                columns.add(i);
            }
        }
        return columns;
    }

    private static Optional<Integer> wholeNumber(String text) {
        return LapTime.isWhole(text) && text.length() <= 9 && Integer.parseInt(text) > 0
                ? Optional.of(Integer.parseInt(text))
                : Optional.empty();
    }

    private static String firstLine(String head) {
        return head.strip().split("\\R", 2)[0];
    }

    private static char separator(String line) {
        long semicolons = line.chars().filter(c -> c == ';').count();
        long tabs = line.chars().filter(c -> c == '\t').count();
        long commas = line.chars().filter(c -> c == ',').count();
        if (tabs >= semicolons && tabs >= commas) {
            // One column alone comes here too: a comma in it is a decimal mark.
            return '\t';
        }
        return semicolons > commas ? ';' : ',';
    }

    private static List<String> names(String line, char separator) {
        List<String> names = new ArrayList<>();
        for (String field : line.split(Pattern.quote(String.valueOf(separator)), -1)) {
            names.add(name(field));
        }
        return names;
    }

    private static String name(String field) {
        return field.strip().replace("\"", "").toLowerCase(Locale.ROOT);
    }
}
