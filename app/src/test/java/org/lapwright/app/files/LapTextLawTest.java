package org.lapwright.app.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.lapwright.core.laps.TimedLap;

/** What has to hold for every list of laps, however it is written down. */
class LapTextLawTest {
    private static final List<String> SEPARATORS = List.of("\n", "\r\n", ";", "\t", " ", " ; ", "\n\n");

    @Provide
    Arbitrary<List<Integer>> milliseconds() {
        return Arbitraries.integers().between(1_001, 99_999).list().ofMinSize(1).ofMaxSize(80);
    }

    private static List<Double> seconds(String text) {
        return LapText.read(text, Answers.NONE).runs().stream()
                .flatMap(run -> run.laps().stream())
                .map(TimedLap::seconds)
                .toList();
    }

    private static String written(int milliseconds, String mark) {
        return milliseconds / 1000 + mark + String.format(Locale.ROOT, "%03d", milliseconds % 1000);
    }

    private static List<Double> expected(List<Integer> laps) {
        return laps.stream().map(lap -> Double.parseDouble(written(lap, "."))).toList();
    }

    @Property
    void markSeparatorAndLocaleNeverChangeANumber(
            @ForAll("milliseconds") List<Integer> laps,
            @ForAll boolean comma,
            @ForAll @IntRange(max = 6) int separator) {
        String text = laps.stream()
                .map(lap -> written(lap, comma ? "," : "."))
                .collect(Collectors.joining(SEPARATORS.get(separator)));
        Locale before = Locale.getDefault();
        try {
            for (Locale locale : List.of(Locale.ROOT, Locale.GERMANY, Locale.forLanguageTag("ar-EG-u-nu-arab"))) {
                Locale.setDefault(locale);
                assertThat(seconds(text)).isEqualTo(expected(laps));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Property
    void theOrderOfLinesDoesNotMatterToWhatIsUnderstood(
            @ForAll("milliseconds") List<Integer> laps, @ForAll boolean comma, @ForAll long seed) {
        List<String> lines = new ArrayList<>();
        for (int lap : laps) {
            lines.add(written(lap, comma ? "," : "."));
        }
        lines.add("rubbish");
        List<String> shuffled = new ArrayList<>(lines);
        Collections.shuffle(shuffled, new Random(seed));
        LapReading straight = LapText.read(String.join("\n", lines), Answers.NONE);
        LapReading mixed = LapText.read(String.join("\n", shuffled), Answers.NONE);
        assertThat(mixed.understoodAs()).isEqualTo(straight.understoodAs());
        assertThat(mixed.problemCount()).isEqualTo(1);
        assertThat(seconds(String.join("\n", shuffled)))
                .containsExactlyInAnyOrderElementsOf(seconds(String.join("\n", lines)));
    }

    @Property
    void numberedLinesMayComeInAnyOrder(@ForAll("milliseconds") List<Integer> laps, @ForAll long seed) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < laps.size(); i++) {
            lines.add((i + 1) + "\t" + written(laps.get(i), "."));
        }
        Collections.shuffle(lines, new Random(seed));
        if (laps.size() > 1) {
            assertThat(seconds(String.join("\n", lines))).isEqualTo(expected(laps));
        }
    }

    @Property
    void noTextBreaksTheReader(@ForAll String text) {
        LapReading reading = LapText.read(text, Answers.NONE);
        assertThat(reading.runs())
                .allSatisfy(run -> assertThat(run.laps())
                        .allSatisfy(
                                lap -> assertThat(lap.seconds()).isBetween(TimedLap.SHORTEST_S, TimedLap.LONGEST_S)));
    }

    @Property
    void noTableBreaksTheReader(@ForAll String rows) {
        LapReading reading = LapText.read("run,side,lap_s,lap,at,session\n" + rows, Answers.NONE);
        assertThat(reading.problems())
                .allSatisfy(problem -> assertThat(problem.sentence()).isNotBlank());
    }
}
