package org.lapwright.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.trial.session.Side;

class LapTextTest {
    private static LapReading read(String text) {
        return LapText.read(text, Answers.NONE);
    }

    private static List<Double> seconds(LapReading reading) {
        return reading.runs().stream()
                .flatMap(run -> run.laps().stream())
                .map(TimedLap::seconds)
                .toList();
    }

    private static List<String> problems(LapReading reading) {
        return reading.problems().stream().map(Problem::sentence).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "6.214\n6.301\n6.299",
                "6.214 6.301 6.299",
                "6,214;6,301;6,299",
                "6,214\t6,301\t6,299",
                "6.214,6.301,6.299",
                "6.214, 6.301, 6.299",
                "6,214, 6,301, 6,299",
                "0:06.214\r\n0:06.301\r\n0:06.299",
                "6.214 s\n6.301 s\n6.299 s",
                "6.214s; 6.301s; 6.299s",
                "6214 ms\n6301 ms\n6299 ms",
                "1 6.214\n2 6.301\n3 6.299",
                "1\t6,214\n2\t6,301\n3\t6,299",
                "1) 6.214\n2) 6.301\n3) 6.299",
                "1. 6.214\n2. 6.301\n3. 6.299",
                "Lap 1: 6.214\nLap 2: 6.301\nLap 3: 6.299",
                "Lap 1 6.214\nLap 2 6.301\nLap 3 6.299",
                "\uFEFF6.214\n\n# red lane\n6.301\n6.299\n",
                "6.214\u00a0s\n6.301\u00a0s\n6.299\u00a0s",
                "lap_s\n6.214\n6.301\n6.299",
                "lap,lap_s,note\n1,6.214,\n2,6.301,\"a, b\"\n3,6.299,c\n",
                "lap;lap_s\n1;6,214\n2;6,301\n3;6,299\n",
                "n,lap\n1,6.214\n2,6.301\n3,6.299",
                "\uFEFFLap_S\r\n6.214\r\n6.301\r\n6.299\r\n",
            })
    void theSameThreeLapsInAnyShape(String text) {
        LapReading reading = read(text);
        assertThat(seconds(reading)).containsExactly(6.214, 6.301, 6.299);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.questions()).isEmpty();
        assertThat(reading.understoodAs()).startsWith("3 laps");
    }

    @Test
    void oneBadLineNeverSpoilsTheRest() {
        LapReading reading = read("7,101\n7,3o1\n-7,2\nNaN\n0\n9999999\n7,099\n1e3");
        assertThat(seconds(reading)).containsExactly(7.101, 7.099);
        assertThat(problems(reading))
                .containsExactlyInAnyOrder(
                        "Line 2: '7,3o1' is not a time. Did you mean 7.301?",
                        "Line 3: '-7,2' is negative. A lap time is more than 0 s.",
                        "Line 4: 'NaN' is not a time. Write seconds such as 6.214, or minutes such as 0:06.214.",
                        "Line 5: '0' is no lap time. A lap time is more than 0 s.",
                        "Line 6: '9999999' is longer than an hour. A lap time is in seconds, up to 3600.",
                        "Line 8: '1e3' is not a time. Write seconds such as 6.214, or minutes such as 0:06.214.");
    }

    @Test
    void aCommaThatCouldBeEitherIsAsked() {
        LapReading unsure = read("6,214,6,301");
        assertThat(unsure.questions()).extracting(Question::topic).containsExactly(Question.Topic.COMMA);
        assertThat(seconds(unsure)).containsExactly(6.214, 6.301);

        Answers separates = new Answers(Map.of(Question.Topic.COMMA, Answers.COMMA_SEPARATES));
        LapReading told = LapText.read("6,214,6,301", separates);
        assertThat(told.questions()).isEmpty();
        assertThat(seconds(told)).containsExactly(6.0, 214.0, 6.0, 301.0);
    }

    @Test
    void wholeThousandsAreAskedAbout() {
        LapReading unsure = read("6214\n6301");
        assertThat(unsure.questions()).extracting(Question::topic).containsExactly(Question.Topic.UNIT);
        assertThat(seconds(unsure)).containsExactly(6.214, 6.301);
        LapReading told = LapText.read("1214\n1301", new Answers(Map.of(Question.Topic.UNIT, Answers.SECONDS)));
        assertThat(seconds(told)).containsExactly(1214.0, 1301.0);
    }

    @Test
    void twoColumnsOfDecimalsAreAskedAbout() {
        String text = "zone;total\n3,1;6,214\n3,2;6,301\n";
        LapReading unsure = read(text);
        assertThat(unsure.questions()).extracting(Question::topic).containsExactly(Question.Topic.COLUMN);
        LapReading told = LapText.read(text, new Answers(Map.of(Question.Topic.COLUMN, "total")));
        assertThat(seconds(told)).containsExactly(6.214, 6.301);
        assertThat(told.questions()).isEmpty();
    }

    @Test
    void mixedDecimalMarksAreReadAndSaid() {
        LapReading reading = read("6.214\n6,301");
        assertThat(seconds(reading)).containsExactly(6.214, 6.301);
        assertThat(reading.understoodAs()).contains("decimal comma and decimal point mixed");
    }

    @Test
    void aWholeSessionNamesItsRunsAndSides() {
        LapReading reading = read(
                "run,side,lap_s,lane,at\n2,after,6.9,red,2026-05-17T20:15:00+02:00\n1,before,7.0,red,\n1,before,7.1,red,\n");
        assertThat(reading.runs())
                .extracting(ReadRun::side)
                .containsExactly(Optional.of(Side.BEFORE), Optional.of(Side.AFTER));
        assertThat(reading.runs().get(0).laps()).hasSize(2);
        assertThat(reading.runs().get(1).startedAt()).isPresent();
        assertThat(reading.hasSessions()).isFalse();
    }

    @Test
    void aRunCannotChangeSides() {
        LapReading reading = read("run,side,lap_s\n1,before,7.0\n1,after,6.9\n1,befor,6.9\nx,after,6.9\n");
        assertThat(seconds(reading)).containsExactly(7.0);
        assertThat(problems(reading))
                .containsExactly(
                        "Line 3: 'after' disagrees with the earlier laps of run 1. A run is driven with one set-up:"
                                + " give the other side a run number of its own.",
                        "Line 4: 'befor' is not a side. Write before or after.",
                        "Line 5: 'x' is not a run number. Runs are numbered 1, 2, 3 as driven.");
    }

    @Test
    void manySessionsInOneTable() {
        LapReading reading = read("session,run,side,lap_s\nmay,1,before,7\nmay,2,after,6.9\njune,1,before,7.1\n");
        assertThat(reading.hasSessions()).isTrue();
        assertThat(reading.sessions()).extracting(ReadSession::name).containsExactly("may", "june");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " \n\n\t", "#\n#"})
    void nothingIsNoLapsAndNoProblem(String text) {
        LapReading reading = read(text);
        assertThat(reading.laps()).isZero();
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.understoodAs()).isEqualTo("no laps");
    }

    @Test
    void binaryIsRefusedInASentence(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("photo.png");
        Files.write(file, new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1, 2, 3, 0, 0, 7});
        assertThat(problems(LapText.read(file, Answers.NONE)))
                .containsExactly(
                        "This is not text. Paste or open a list of lap times, or a CSV file with a lap_s column.");
    }

    @Test
    void spreadsheetTextInUtf16IsRead(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("laps.txt");
        Files.write(file, "\uFEFFlap_s\n6,214\n".getBytes(StandardCharsets.UTF_16LE));
        assertThat(seconds(LapText.read(file, Answers.NONE))).containsExactly(6.214);
    }

    @Test
    void aTableWithoutTimesSaysWhatItWants() {
        assertThat(problems(read("lap_s\n"))).isEmpty();
        assertThat(problems(read("lap_s,lane\n,red\n6.2,red\n")))
                .containsExactly("Line 2: No lap time in this line. Fill in the column of lap times.");
    }

    @Test
    void aDecimalCommaBetweenCommasIsNotCutInHalf() {
        LapReading reading = read("lap,lap_s\n1,6,214\n2,\"6,301\"\n");
        assertThat(seconds(reading)).containsExactly(6.301);
        assertThat(problems(reading))
                .containsExactly("Line 2: '1,6,214' has more columns than the first line. With a decimal comma,"
                        + " separate the columns by ; or put the time in quotes.");
    }

    @Test
    void anOpenQuoteLosesNothingBeforeIt() {
        LapReading reading = read("lap_s,note\n6.2,ok\n6.3,\"" + "x".repeat(2_000_000));
        assertThat(seconds(reading)).startsWith(6.2);
        assertThat(reading.problems()).isNotEmpty();
    }

    @Test
    void tenMillionLinesEndInASentenceAndLittleMemory() throws IOException {
        assertThat(problems(LapText.read(new Repeated("lap_s\n", "6.214\n", 10_000_000), Answers.NONE)))
                .containsExactly(
                        "This table has more than 1000000 laps; none of it was taken. Keep each session in a file of its own.");
        assertThat(problems(LapText.read(new Repeated("", "6.214\n", 10_000_000), Answers.NONE)))
                .containsExactly(
                        "This list is longer than 16000000 characters; none of it was taken. Keep each stint in a file of its own.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"6.2\n", "6 ", "6,214,6,301,"})
    void aListOfMoreTimesThanFitIsRefusedAsAWhole(String piece) {
        LapReading reading = read(piece.repeat(LapList.MOST_TIMES + 1));
        assertThat(reading.laps()).isZero();
        assertThat(problems(reading))
                .containsExactly(
                        "This list has more than 250000 times; none of it was taken. Keep each stint in a file of"
                                + " its own.");
    }

    /** A row this long once ran the matcher out of stack. */
    @Test
    void aLongRowOfDecimalCommasIsReadLikeAShortOne() {
        LapReading reading = read("6,214" + ",6,301".repeat(40_000));
        assertThat(reading.laps()).isEqualTo(40_001);
        assertThat(reading.questions()).extracting(Question::topic).containsExactly(Question.Topic.COMMA);
    }

    @Test
    void aRowThatDoesNotPairUpIsNotForcedIntoDecimals() {
        Answers decimal = new Answers(Map.of(Question.Topic.COMMA, Answers.COMMA_DECIMAL));
        assertThat(problems(LapText.read("6,214,6", decimal)))
                .containsExactly("Line 1: '6,214,6' is not a time. Write seconds such as 6.214, or minutes such as"
                        + " 0:06.214.");
    }

    @Test
    void aListInQuotesIsRead() {
        assertThat(seconds(read("\"6,214\"\n\"6,301\""))).containsExactly(6.214, 6.301);
        assertThat(seconds(read("\"6,214\",\"6,301\""))).containsExactly(6.214, 6.301);
    }

    @Test
    void aColumnThatIsThereTwiceIsRefused() {
        assertThat(problems(read("lap_s,lap_s\n6.2,3.1\n")))
                .containsExactly(
                        "Two columns are called lap_s; none of the laps was taken. Give each column a name of its"
                                + " own.");
        assertThat(seconds(read("lap_s,note,note\n6.2,a,b\n"))).containsExactly(6.2);
    }

    @Test
    void anAnswerThatNamesNoColumnIsAskedAgain() {
        Answers gone = new Answers(Map.of(Question.Topic.COLUMN, "total"));
        LapReading reading = LapText.read("lap,lap_s\n1,6.2\n", gone);
        assertThat(seconds(reading)).containsExactly(6.2);
        assertThat(reading.questions())
                .extracting(Question::text)
                .containsExactly("There is no column total. Which column holds the lap times?");
    }

    @Test
    void manyProblemsAreCountedNotListed() {
        LapReading reading = read("x1y\n".repeat(5000) + "6.2");
        assertThat(reading.problemCount()).isEqualTo(5000);
        assertThat(reading.problems()).hasSize(LapReading.MOST_PROBLEMS);
        assertThat(seconds(reading)).containsExactly(6.2);
    }

    /** A head and then the same line again and again, never held in memory. */
    private static final class Repeated extends Reader {
        private final String head;
        private final String line;
        private final long length;
        private long at;

        Repeated(String head, String line, long lines) {
            this.head = head;
            this.line = line;
            this.length = head.length() + line.length() * lines;
        }

        @Override
        public int read(char[] buffer, int offset, int count) {
            int n = 0;
            while (n < count && at < length) {
                long inLines = at - head.length();
                buffer[offset + n++] =
                        inLines < 0 ? head.charAt((int) at) : line.charAt((int) (inLines % line.length()));
                at++;
            }
            return n == 0 ? -1 : n;
        }

        @Override
        public void close() {}
    }
}
