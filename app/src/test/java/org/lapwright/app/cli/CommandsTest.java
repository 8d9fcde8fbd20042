package org.lapwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.store.MemoryGarage;
import org.lapwright.app.usecase.ExampleGarage;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.StoreException;

/** Everything but the laps: the words of the command line, the ladder, the glossary. */
class CommandsTest {
    private static GarageStore exampleGarage() {
        MemoryGarage garage = new MemoryGarage();
        Clock clock = Clock.fixed(Instant.parse("2026-06-01T18:00:00Z"), ZoneOffset.UTC);
        new ExampleGarage(garage, new JudgeChange(), clock).putInAtFirstStart();
        return garage;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    lapps a.txt | there is no command 'lapps'. Did you mean 'laps'?
                    verdikt | there is no command 'verdikt'. Did you mean 'verdict'?
                    xyzzy | there is no command 'xyzzy'.
                    --nosuch | there is no option '--nosuch' here.
                    laps --jsn a.txt | there is no option '--jsn' here. Did you mean '--json'?
                    laps a.txt b.txt | 'b.txt' is one word too many for laps.
                    laps | laps needs FILE. A file of lap times
                    laps --unit | --unit needs UNIT.
                    ladder --track | --track needs NAME.
                    """)
    void aSlipOfThePenGetsTheNearestWord(String words, String sentence) {
        Spoken spoken = Spoken.of(words.split(" "));
        assertThat(spoken.status()).isEqualTo(2);
        assertThat(spoken.out()).isEmpty();
        assertThat(spoken.err()).startsWith("lapwright: " + sentence).contains("Try 'lapwright");
    }

    @ParameterizedTest
    @ValueSource(strings = {"laps", "verdict", "ladder", "explain"})
    void everyCommandHasItsHelp(String command) {
        Spoken help = Spoken.of(command, "--help");
        assertThat(help.status()).isZero();
        assertThat(help.out())
                .startsWith("Usage: lapwright " + command)
                .contains("--json")
                .doesNotContain("${");
        assertThat(Spoken.of("--help").out()).contains("\n  " + command);
    }

    @Test
    void theVersionIsShown() {
        assertThat(Spoken.of("--version").out()).isEqualTo("Lapwright 1.2.3\n");
    }

    @Test
    void aFileWhoseNameStartsWithAtIsAFile() {
        assertThat(Spoken.of("laps", "@laps.txt").err()).contains("@laps.txt: there is no such file.");
    }

    @Test
    void oneWordIsExplained() {
        Spoken spoken = Spoken.of("explain", "missed", "GATE");
        assertThat(spoken.status()).isZero();
        assertThat(spoken.out()).startsWith("missed gate: ");
        JsonNode json = Spoken.of("explain", "braid", "--json").json();
        assertThat(json.fieldNames()).toIterable().containsExactly("word", "meaning", "see");
        assertThat(json.get("word").asText()).isEqualTo("braid");
    }

    @Test
    void withoutAWordAllAreListed() {
        assertThat(Spoken.of("explain").out()).startsWith("ballast, ").contains(", verdict");
        assertThat(Spoken.of("explain", "--json").json()).hasSizeGreaterThan(20);
    }

    @Test
    void anUnknownWordGetsTheNearestOne() {
        Spoken near = Spoken.of("explain", "briad");
        assertThat(Spoken.of("explain", "brad").err())
                .isEqualTo("lapwright: 'brad' is not explained here. Did you mean 'braid'?" + System.lineSeparator());
        assertThat(near.status()).isEqualTo(2);
        assertThat(Spoken.of("explain", "xyzzyxyzzy").err()).contains("Without a word, explain lists those there are.");
        assertThat(Spoken.of("explain", "").status()).isEqualTo(2);
    }

    @Test
    void theLadderOfAnEmptyStoreSaysHowACarGetsOnIt() {
        Spoken spoken = Spoken.of("ladder");
        assertThat(spoken.status()).isZero();
        assertThat(spoken.out()).startsWith("No cars yet.");
        assertThat(Spoken.of("ladder", "--json").json()).isEmpty();
        assertThat(Spoken.of("ladder", "--track", "x").status()).isEqualTo(2);
    }

    @Test
    void theLadderRanksTheCars() {
        JsonNode json =
                Spoken.with(CommandsTest::exampleGarage, "ladder", "--json").json();
        assertThat(json).hasSizeGreaterThan(2);
        for (JsonNode car : json) {
            assertThat(car.fieldNames())
                    .toIterable()
                    .containsExactly("car", "pace_s", "interval_s", "laps", "chance_ahead_of_next", "place");
            assertThat(car.get("pace_s").asDouble())
                    .isBetween(
                            car.get("interval_s").get(0).asDouble(),
                            car.get("interval_s").get(1).asDouble());
        }
        List<Double> paces =
                json.findValues("pace_s").stream().map(JsonNode::asDouble).toList();
        assertThat(paces).isSorted();
        JsonNode last = json.get(json.size() - 1);
        assertThat(last.get("chance_ahead_of_next").isNull()).isTrue();
        assertThat(json.get(0).get("chance_ahead_of_next").asDouble()).isBetween(0.5, 1.0);

        Spoken table = Spoken.with(CommandsTest::exampleGarage, "ladder", "--track", "shed LOOP");
        assertThat(table.status()).isZero();
        assertThat(table.out()).contains(json.get(0).get("car").asText()).doesNotContain(" 100 %");
        Spoken red = Spoken.with(CommandsTest::exampleGarage, "ladder", "--lane", "RED");
        assertThat(red.status()).isZero();
        assertThat(red.out()).contains("Dunlin").doesNotContain("Greenshank");
        Spoken noLane = Spoken.with(CommandsTest::exampleGarage, "ladder", "--lane", "green");
        assertThat(noLane.err()).contains("--lane: there are no laps on 'green' of Shed loop. Lanes with laps:");
        Spoken elsewhere = Spoken.with(CommandsTest::exampleGarage, "ladder", "--track", "Attic");
        assertThat(elsewhere.err()).contains("there are no laps on 'Attic'. Tracks with laps: Shed loop.");
    }

    @Test
    void theStoreIsClosedAgain() {
        GarageStore garage = exampleGarage();
        Spoken.with(() -> garage, "ladder");
        assertThat(Spoken.with(() -> garage, "ladder").status()).isEqualTo(3);
    }

    @Test
    void aFailingStoreAndAFaultOfTheProgramAreToldApart() {
        Spoken store = Spoken.with(
                () -> {
                    throw new StoreException("the disk is full; nothing was lost");
                },
                "ladder");
        assertThat(store.status()).isEqualTo(3);
        assertThat(store.err()).isEqualTo("lapwright: the disk is full; nothing was lost" + System.lineSeparator());
        Spoken fault = Spoken.with(
                () -> {
                    throw new IllegalStateException("impossible");
                },
                "ladder");
        assertThat(fault.status()).isEqualTo(3);
        assertThat(fault.err()).contains("this is a fault of the program").contains("impossible");
    }

    @Test
    void runningOutOfMemoryIsASentence() {
        Spoken spoken = Spoken.with(
                () -> {
                    throw new OutOfMemoryError("pretended");
                },
                "ladder");
        assertThat(spoken.status()).isEqualTo(3);
        assertThat(spoken.err()).contains("more than fits into the memory").doesNotContain("\tat ");
    }
}
