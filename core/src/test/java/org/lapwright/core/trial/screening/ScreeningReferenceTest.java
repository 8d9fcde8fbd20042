package org.lapwright.core.trial.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.stats.design.TwoLevelDesign;
import org.lapwright.core.trial.screening.Screening.Effect;
import org.lapwright.core.trial.screening.Screening.Findings;
import org.lapwright.core.trial.screening.Screening.Telling;

/**
 * Box, Hunter and Hunter, "Statistics for Experimenters" (1978), p. 391: seconds that it took to ride up a hill with seat, dynamo,
 * handlebars, gear, raincoat, breakfast and tyres each in two states, as a screening of runs driven in any order.
 */
class ScreeningReferenceTest {
    private static final List<String> BICYCLE =
            List.of("seat", "dynamo", "handlebars", "gear", "raincoat", "breakfast", "tyres");
    private static final double[] SECONDS = {69, 52, 60, 83, 71, 50, 59, 88};
    private static final double[] EFFECTS = {3.5, 12, 1, 22.5, 0.5, 1, 2.5};

    private static TimedRun steady(double seconds) {
        return TimedRun.of(seconds, seconds, seconds);
    }

    /** The runs as the plan's order wants them, each known by which of the first three tweaks is on. */
    private static List<TimedRun> driven(Screening screening, double[] seconds) {
        List<TimedRun> driven = new ArrayList<>();
        for (int run = 0; run < screening.runs(); run++) {
            int row = (screening.isOn(run, 0) ? 1 : 0)
                    + (screening.isOn(run, 1) ? 2 : 0)
                    + (screening.isOn(run, 2) ? 4 : 0);
            driven.add(steady(seconds[row]));
        }
        return driven;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 77, -5})
    void aBicycleUpAHillWhateverTheOrder(long seed) {
        Screening screening = new Screening(BICYCLE, 8, 3, seed);
        Findings found = screening.judge(driven(screening, SECONDS));
        assertThat(found.effects()).extracting(Effect::tweak).containsExactlyElementsOf(BICYCLE);
        for (int i = 0; i < EFFECTS.length; i++) {
            assertThat(found.effects().get(i).seconds()).isEqualTo(EFFECTS[i], within(1e-9));
        }
        // By Lenth 1989: s0 = 3.75, PSE = 1.5 (median of 0.5, 1, 1, 2.5, 3.5), 7/3 degrees of freedom; R's qt(0.975,
        // 7/3) = 3.764.
        assertThat(found.margins().pseudoStandardError()).isEqualTo(1.5, within(1e-9));
        assertThat(found.margins().margin()).isEqualTo(5.65, within(0.01));
        assertThat(found.effects().stream()
                        .filter(effect -> effect.telling() != Telling.UNTOLD)
                        .map(Effect::tweak))
                .containsExactly("dynamo", "gear");
        assertThat(found.points()).extracting(Screening.Point::seconds).isSorted();
        assertThat(found.points().get(6).tweak()).isEqualTo("gear");
    }

    @ParameterizedTest
    @CsvSource({"3,8", "4,8", "5,8", "6,8", "7,8", "3,12", "4,12", "5,12", "6,12", "7,12"})
    void eachTweakIsOnInHalfOfTheRunsAndApartFromTheOthers(int tweaks, int runs) {
        Screening screening = new Screening(BICYCLE.subList(0, tweaks), runs, 5, 3);
        for (int one = 0; one < tweaks; one++) {
            int first = one;
            assertThat(IntStream.range(0, runs).filter(run -> screening.isOn(run, first)))
                    .hasSize(runs / 2);
            for (int other = 0; other < one; other++) {
                int second = other;
                assertThat(IntStream.range(0, runs)
                                .filter(run -> screening.isOn(run, first) == screening.isOn(run, second)))
                        .hasSize(runs / 2);
            }
        }
        assertThat(IntStream.range(0, runs).mapToObj(screening::on).distinct().count())
                .as("no run is driven twice in a plan of eight")
                .isGreaterThanOrEqualTo(runs == 8 ? 8 : 6);
    }

    /** With four tweaks no pair of others hides behind any of them: resolution IV (same book, p. 385). */
    @Test
    void fourTweaksAreApartFromPairs() {
        Screening screening = new Screening(BICYCLE.subList(0, 4), 8, 5, 9);
        int[][] states = new int[8][4];
        for (int run = 0; run < 8; run++) {
            for (int tweak = 0; tweak < 4; tweak++) {
                states[run][tweak] = screening.isOn(run, tweak) ? 1 : -1;
            }
        }
        TwoLevelDesign design = TwoLevelDesign.of(states);
        assertThat(IntStream.range(0, 4).mapToObj(design::aliases)).allMatch(List::isEmpty);
    }

    /** One tweak that is worth 0.3 s, under noise of 0.02 s a run, stands out of a plan of twelve. */
    @Test
    void oneThatMattersStandsOut() {
        Screening screening = new Screening(BICYCLE.subList(0, 5), 12, 3, 4);
        double[] noise = {3, -5, 1, 7, -2, 4, -6, 2, -3, 5, -1, -5};
        List<TimedRun> driven = new ArrayList<>();
        for (int run = 0; run < 12; run++) {
            driven.add(steady(6.3 + 0.004 * noise[run] - (screening.isOn(run, 2) ? 0.3 : 0)));
        }
        Findings found = screening.judge(driven);
        assertThat(found.effects().get(2).telling()).isEqualTo(Telling.LIKELY);
        assertThat(found.effects().get(2).seconds()).isEqualTo(-0.3, within(0.03));
        assertThat(found.points()).hasSize(11);
    }

    @Test
    void whatCannotBePlannedIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Screening(List.of("a", "b"), 8, 5, 1))
                .withMessage("there are 2 tweaks; a screening takes from 3 to 7");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Screening(List.of("a", "b", "a"), 8, 5, 1))
                .withMessageContaining("two tweaks have one name");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Screening(BICYCLE, 9, 5, 1))
                .withMessageContaining("plans of 8 and of 12");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Screening(BICYCLE, 8, 5, 1).judge(List.of(steady(6))))
                .withMessage("1 of 8 runs are driven");
    }
}
