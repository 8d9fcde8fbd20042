package org.lapwright.app.web.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.app.web.chart.LadderChart;
import org.lapwright.core.trial.ladder.LadderEntry;
import org.lapwright.core.units.Interval;

/** What a row of the ladder says of the month before. */
class LadderPageTest {
    private static LadderEntry entry(String car, int place, double paceS) {
        return new LadderEntry(car, place, 40, paceS, paceS, new Interval(paceS - 0.02, paceS + 0.02), 0.8);
    }

    private static List<String> since(List<LadderEntry> now, List<LadderEntry> then) {
        return LadderPage.rows(now, then, "28 October", LadderChart.of(now), false).stream()
                .map(LadderPage.Row::since)
                .toList();
    }

    @Test
    void tellsWhatMovedAndWhatIsNew() {
        List<LadderEntry> now = List.of(
                entry("Dunlin", 1, 6.00), entry("Heron", 2, 6.10), entry("Knot", 2, 6.11), entry("Ruff", 4, 6.20));
        List<LadderEntry> then = List.of(entry("Heron", 1, 6.11), entry("Ruff", 2, 6.14), entry("Dunlin", 3, 6.25));
        assertThat(since(now, then))
                .containsExactly(
                        "up 2 since 28 October, 0.250 s faster",
                        "down 1 since 28 October",
                        "new since 28 October",
                        "down 2 since 28 October, 0.060 s slower");
        assertThat(since(now.subList(0, 1), now.subList(0, 1))).containsExactly("same place as on 28 October");
    }

    @Test
    void saysNothingWhereThereWasNoLadder() {
        assertThat(since(List.of(entry("Dunlin", 1, 6)), List.of())).containsExactly("");
    }
}
