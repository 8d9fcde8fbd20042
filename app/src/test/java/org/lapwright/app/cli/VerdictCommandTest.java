package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictCommandTest {
    @TempDir
    Path folder;

    private LapFiles files;

    @BeforeEach
    void prepare() {
        files = new LapFiles(folder);
    }

    private Spoken verdict(String... words) {
        List<String> all = new ArrayList<>(List.of("verdict", "--before", files.before(), "--after", files.after()));
        all.addAll(List.of(words));
        return Spoken.of(all.toArray(String[]::new));
    }

    @Test
    void theFieldsAreThoseThatStayFixedInTheirOrder() {
        Spoken spoken = verdict("--json");
        assertThat(spoken.status()).isZero();
        assertThat(spoken.err()).isEmpty();
        JsonNode json = spoken.json();
        assertThat(json.fieldNames())
                .toIterable()
                .containsExactly(
                        "verdict",
                        "difference_s",
                        "interval_s",
                        "confidence",
                        "spread_ratio",
                        "spread_interval",
                        "laps_needed",
                        "decided_at_lap",
                        "before",
                        "after",
                        "difference_percent",
                        "consistency",
                        "needed_afresh",
                        "offs",
                        "plan",
                        "caveats",
                        "session");
        assertThat(json.get("verdict").asText()).isEqualTo("faster");
        assertThat(json.get("difference_s").asDouble()).isCloseTo(-0.2, within(0.05));
        assertThat(json.get("interval_s").get(0).asDouble()).isLessThan(-0.2);
        assertThat(json.get("interval_s").get(1).asDouble()).isBetween(-0.2, 0.0);
        assertThat(json.get("confidence").asDouble()).isEqualTo(0.95);
        assertThat(json.get("laps_needed").asInt(-1)).isZero();
        assertThat(json.get("decided_at_lap").asInt()).isBetween(17, 24);
        assertThat(json.get("difference_percent").asDouble())
                .isCloseTo(
                        100
                                * json.get("difference_s").asDouble()
                                / json.get("before").get("pace_s").asDouble(),
                        within(1e-9));
        assertThat(json.get("consistency").asText()).isEqualTo("more-laps");
        assertThat(json.get("needed_afresh").asBoolean(true)).isFalse();
        assertThat(json.get("plan").isNull()).isTrue();
        assertThat(json.get("caveats"))
                .extracting(JsonNode::asText)
                .containsExactly("one-run-a-side", "plan-as-driven");
        assertThat(json.get("before").fieldNames())
                .toIterable()
                .containsExactly("laps", "pace_s", "spread_s", "best_s", "drift_s_per_lap");
        assertThat(json.get("before").get("laps")).hasSize(12);
        assertThat(json.get("after").get("laps").get(0).toString())
                .isEqualTo("{\"lap\":1,\"lap_s\":6.21,\"kind\":\"clean\"}");
    }

    /** With no event in n trials the Wilson interval ends at z² / (n + z²); Wilson 1927, z = 1.959964 for 95 %. */
    @Test
    void offsComeWithTheirInterval() {
        JsonNode offs = verdict("--json").json().get("offs");
        assertThat(offs.get("before").get("offs").asInt(-1)).isZero();
        assertThat(offs.get("before").get("laps").asInt()).isEqualTo(12);
        double z2 = 1.959964 * 1.959964;
        assertThat(offs.get("before").get("interval").get(1).asDouble()).isCloseTo(z2 / (12 + z2), within(1e-6));
        assertThat(offs.get("fisher_p").asDouble()).isCloseTo(1, within(1e-9));
    }

    @Test
    void whatCannotBeToldIsNull() {
        String few = files.write("few.txt", "6.2 6.3");
        JsonNode json = Spoken.of("verdict", "--before", few, "--after", files.after(), "--json")
                .json();
        assertThat(json.get("verdict").asText()).isEqualTo("more-laps");
        for (String field : List.of(
                "difference_s",
                "interval_s",
                "spread_ratio",
                "spread_interval",
                "decided_at_lap",
                "difference_percent",
                "consistency",
                "offs",
                "session")) {
            assertThat(json.get(field).isNull()).as(field).isTrue();
        }
        assertThat(json.get("laps_needed").asInt()).isEqualTo(3);
        assertThat(json.get("caveats")).extracting(JsonNode::asText).containsExactly("too-few-laps");
        assertThat(json.get("before").get("drift_s_per_lap").isNull()).isTrue();
    }

    @Test
    void peopleReadTheVerdictAndHowTheFilesWereRead() {
        Spoken spoken = verdict();
        assertThat(spoken.status()).isZero();
        assertThat(spoken.out())
                .startsWith("After is 0.18 s a lap faster, somewhere between ")
                .contains("\n  before      12      12     6.400 s")
                .contains("- One run a side:")
                .endsWith("Read " + folder.resolve("before.txt") + " as 12 laps, decimal point.\nRead "
                        + folder.resolve("after.txt") + " as 12 laps, decimal point.\n");
    }

    @Test
    void aPlanIsNamedAndNoLongerGuessed() {
        JsonNode json = verdict("--json", "--plan", "ab x 12").json();
        assertThat(json.get("plan").asText()).isEqualTo("AB x 12");
        assertThat(json.get("caveats")).extracting(JsonNode::asText).containsExactly("one-run-a-side");
    }

    @Test
    void aPlanThatDoesNotFitIsSaid() {
        String sentence = "The runs driven do not follow the plan: A B driven, A A B B planned.";
        assertThat(verdict("--plan", "AABB x 6").out()).contains("- " + sentence);
        Spoken json = verdict("--plan", "AABB x 6", "--json");
        assertThat(json.err()).contains(sentence);
        assertThat(json.json().get("verdict").asText()).isNotEmpty();
        assertThat(verdict("--plan", "ABBA x 6").out()).doesNotContain("do not follow the plan");
    }

    @Test
    void aWiderMarginAndLessConfidenceAreTaken() {
        assertThat(verdict("--confidence", "0,9", "--json")
                        .json()
                        .get("confidence")
                        .asDouble())
                .isEqualTo(0.9);
        assertThat(verdict("--hand-timed", "--json").json().get("caveats"))
                .extracting(JsonNode::asText)
                .contains("hand-timed");
        String same = files.write("same.txt", LapFiles.BEFORE);
        Spoken level = Spoken.of("verdict", "--before", files.before(), "--after", same, "--margin", "9", "--json");
        assertThat(level.json().get("verdict").asText()).isEqualTo("level");
    }

    @Test
    void severalFilesAreTakenInMirroredOrderAndThatIsSaid() {
        String[] words = {
            "verdict",
            "--before",
            files.write("b1.txt", LapFiles.BEFORE),
            files.write("b2.txt", LapFiles.BEFORE + " 6.4"),
            "--after",
            files.write("a1.txt", LapFiles.AFTER),
            files.write("a2.txt", LapFiles.AFTER + " 6.2"),
            "",
            ""
        };
        words[7] = "--margin";
        words[8] = "0.3";
        assertThat(Spoken.of(words).out()).contains("taken to have been driven in the order A B B A;");
        words[7] = "--plan";
        words[8] = "ABABAB x 12";
        assertThat(Spoken.of(words).out()).doesNotContain("taken to have been").doesNotContain("do not follow");
        words[8] = "AABBB x 12";
        assertThat(Spoken.of(words).out()).doesNotContain("taken to have been");
        words[8] = "BBBA x 12";
        assertThat(Spoken.of(words).out())
                .contains("in the order A B B A;")
                .contains("A B B A driven, B B B A planned.");
    }

    @Test
    void timeStampsDecideTheOrder() {
        String before = files.table("b.csv", "2026-05-17T20:15:00+02:00", LapFiles.BEFORE);
        String after = files.table("a.csv", "2026-05-17T18:10:00Z", LapFiles.AFTER);
        JsonNode json = Spoken.of("verdict", "--before", before, "--after", after, "--json")
                .json();
        assertThat(json.get("caveats")).extracting(JsonNode::asText).contains("after-first");
    }

    @Test
    void equalRunsOfBothSidesStayApart() {
        String one = files.table("one.csv", "2026-05-17T20:15:00Z", LapFiles.BEFORE);
        String other = files.table("other.csv", "2026-05-17T20:15:00Z", LapFiles.BEFORE);
        JsonNode json = Spoken.of("verdict", "--before", one, "--after", other, "--json")
                .json();
        assertThat(json.get("before").get("laps")).hasSize(12);
        assertThat(json.get("after").get("laps")).hasSize(12);
    }

    @Test
    void aTableIsJudgedByItsOwnRuns() {
        String table = files.write(
                "session.csv",
                "run,side,lap_s\n"
                        + (LapFiles.rows("x", 2, "after", LapFiles.AFTER)
                                        + LapFiles.rows("x", 1, "before", LapFiles.BEFORE))
                                .replace("x,", ""));
        JsonNode json = Spoken.of("verdict", "--session", table, "--json").json();
        assertThat(json.isObject()).isTrue();
        assertThat(json.get("verdict").asText()).isEqualTo("faster");
        assertThat(json.get("caveats")).extracting(JsonNode::asText).doesNotContain("after-first");
        assertThat(Spoken.of("verdict", "--session", table).out())
                .startsWith("After is 0.18 s a lap faster")
                .endsWith("as 24 laps in 2 runs, table with the column lap_s.\n");
    }

    @Test
    void aColumnOfSessionsMakesAList() {
        String two = files.sessions(
                "two.csv",
                LapFiles.rows("may", 1, "before", LapFiles.BEFORE),
                LapFiles.rows("may", 2, "after", LapFiles.AFTER),
                LapFiles.rows("june", 1, "before", LapFiles.AFTER),
                LapFiles.rows("june", 2, "after", LapFiles.BEFORE));
        JsonNode json = Spoken.of("verdict", "--session", two, "--json").json();
        assertThat(json).extracting(verdict -> verdict.get("session").asText()).containsExactly("may", "june");
        assertThat(json).extracting(verdict -> verdict.get("verdict").asText()).containsExactly("faster", "slower");
        assertThat(Spoken.of("verdict", "--session", two).out())
                .startsWith("Session may\n")
                .contains("\n\nSession june\n");

        String one = files.sessions(
                "one.csv",
                LapFiles.rows("may", 1, "before", LapFiles.BEFORE),
                LapFiles.rows("may", 2, "after", LapFiles.AFTER));
        assertThat(Spoken.of("verdict", "--session", one, "--json").json()).hasSize(1);
    }

    @Test
    void aSessionOfOneSideAsksForTheOther() {
        String table = files.sessions("one-side.csv", LapFiles.rows("may", 1, "before", LapFiles.BEFORE));
        Spoken spoken = Spoken.of("verdict", "--session", table);
        assertThat(spoken.status()).isZero();
        assertThat(spoken.out()).contains("it takes 5 clean laps a side").contains("12 before, 0 after");
    }

    @Test
    void nothingIsPrintedWhenALaterSessionCannotBeJudged() {
        String table = files.sessions(
                "broken.csv",
                LapFiles.rows("may", 1, "before", LapFiles.BEFORE),
                LapFiles.rows("june", 1, "", LapFiles.AFTER));
        Spoken spoken = Spoken.of("verdict", "--session", table);
        assertThat(spoken.status()).isEqualTo(2);
        assertThat(spoken.out()).isEmpty();
        assertThat(spoken.err()).contains(table + ", session june: a run has no side.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    --margin abc | Invalid value for option '--margin': 'abc' is not a number; write one such as 0.3.
                    --margin NaN | 'NaN' is not a number
                    --margin 11 | --margin is 11 %; it must be from 0 to 10 %.
                    --margin -1 | --margin is −1 %; it must be from 0 to 10 %.
                    --confidence 95 | --confidence is 95; it must be from 0.7 to 0.999, so 95 % is 0.95.
                    --confidence 0.5 | --confidence is 0.5; it must be from 0.7 to 0.999.
                    --plan ABBA | 'ABBA' is not a run plan; write the order and the laps a run, such as ABBA x 10
                    --plan ABBAx99999999999 | is not a run plan
                    --plan ABBAx100000 | laps per run in the plan is 100000; it must be from 3 to 500.
                    --plan AAAAx10 | the plan has runs of one side only
                    --comma maybe | --comma is 'maybe'; it must be decimal or separates.
                    --unit hours | --unit is 'hours'; it must be s or ms.
                    --session x.csv | Give either --session, or --before and --after; not both.
                    --befor x.csv | there is no option '--befor' here. Did you mean '--before'?
                    --jsn | there is no option '--jsn' here. Did you mean '--json'?
                    """)
    void impossibleOptionsSayWhatWouldBeRight(String words, String sentence) {
        Spoken spoken = verdict(words.split(" "));
        assertThat(spoken.status()).isEqualTo(2);
        assertThat(spoken.out()).isEmpty();
        assertThat(spoken.err()).startsWith("lapwright: ").contains(sentence);
    }

    @Test
    void bothSidesAreAskedFor() {
        String sentence = "Give laps of both sides: --before FILE --after FILE, or one table with --session FILE.";
        assertThat(Spoken.of("verdict").err()).contains(sentence);
        assertThat(Spoken.of("verdict", "--before", files.before()).err()).contains(sentence);
        assertThat(Spoken.of("verdict", "--before").err()).contains("--before needs FILE.");
        assertThat(Spoken.of("verdict", "--session", files.before()).err()).contains("a run has no side");
    }

    @Test
    void lapsAreNotCountedTwice() {
        Spoken twice = Spoken.of("verdict", "--before", files.before(), files.before(), "--after", files.after());
        assertThat(twice.status()).isEqualTo(2);
        assertThat(twice.err()).contains("before.txt is given twice");
        assertThat(Spoken.of("verdict", "--before", "-", "--after", "-").err())
                .contains("standard input is given twice");
    }

    @Test
    void aTableThatContradictsItsOptionIsRefused() {
        String table = files.sessions(
                "both.csv",
                LapFiles.rows("may", 1, "before", LapFiles.BEFORE),
                LapFiles.rows("may", 2, "after", LapFiles.AFTER));
        Spoken spoken = Spoken.of("verdict", "--before", table, "--after", files.after());
        assertThat(spoken.status()).isEqualTo(2);
        assertThat(spoken.err())
                .contains("both.csv was given with --before, but")
                .contains("Give such a table with --session.");
    }

    @Test
    void moreLapsThanAnyoneDrivesAreRefused() {
        String many = files.write("many.txt", "6.4\n".repeat(VerdictCommand.MOST_LAPS));
        Spoken spoken = Spoken.of("verdict", "--before", many, "--after", files.after());
        assertThat(spoken.status()).isEqualTo(2);
        assertThat(spoken.err()).contains("That is 10,012 laps in one session; a verdict takes up to 10,000 laps.");
        StringBuilder runs = new StringBuilder("run,side,lap_s\n");
        for (int run = 1; run <= VerdictCommand.MOST_RUNS + 1; run++) {
            runs.append(run).append(run % 2 == 0 ? ",before,6.4\n" : ",after,6.3\n");
        }
        assertThat(Spoken.of("verdict", "--session", files.write("runs.csv", runs.toString()))
                        .err())
                .contains("That is 1001 runs in one session; a verdict takes up to 1000.");
    }
}
