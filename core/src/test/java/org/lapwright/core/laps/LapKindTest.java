package org.lapwright.core.laps;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LapKindTest {
    private static List<LapKind> kinds(double... seconds) {
        return Sorting.sort(List.of(TimedRun.of(seconds))).get(0).stream()
                .map(Lap::kind)
                .toList();
    }

    @Test
    void eachFaultHasItsName() {
        assertThat(kinds(7.9, 7.1, 7.0, 14.1, 7.05, 8.6, 7.07, 0.3, 6.75, 7.0, 7.05, 7.06, 7.04, 7.55))
                .containsExactly(
                        LapKind.FIRST,
                        LapKind.CLEAN,
                        LapKind.CLEAN,
                        LapKind.MISSED,
                        LapKind.CLEAN,
                        LapKind.OFF,
                        LapKind.CLEAN,
                        LapKind.DOUBLE,
                        LapKind.DOUBLE,
                        LapKind.CLEAN,
                        LapKind.CLEAN,
                        LapKind.CLEAN,
                        LapKind.CLEAN,
                        LapKind.SLOW);
    }

    @Test
    void anOrdinaryFirstLapIsClean() {
        assertThat(kinds(7.1, 7.05, 7.0, 7.02, 7.04, 6.99)).containsOnly(LapKind.CLEAN);
    }

    @Test
    void twiceThePaceRightAfterAnOffCouldBeEither() {
        assertThat(kinds(7.1, 7.0, 7.05, 9.0, 14.1, 7.0, 7.02, 7.04)).element(4).isEqualTo(LapKind.OFF_OR_MISSED);
        assertThat(kinds(7.1, 7.0, 7.05, 7.0, 13.3, 7.0, 7.02, 7.04)).element(4).isEqualTo(LapKind.OFF_OR_MISSED);
    }

    @Test
    void aBounceTakesFromTheRowAfterIt() {
        assertThat(kinds(7.0, 7.02, 6.98, 0.12, 6.88, 7.01, 6.99))
                .containsExactly(
                        LapKind.CLEAN,
                        LapKind.CLEAN,
                        LapKind.CLEAN,
                        LapKind.DOUBLE,
                        LapKind.DOUBLE,
                        LapKind.CLEAN,
                        LapKind.CLEAN);
        assertThat(kinds(7.0, 7.02, 6.98, 4.2, 2.8, 7.01, 6.99)).element(4).isEqualTo(LapKind.DOUBLE);
    }

    @Test
    void underSixLapsOnlyTheImpossibleIsMarked() {
        assertThat(kinds(7.9, 7.0, 7.1)).containsOnly(LapKind.CLEAN);
        assertThat(kinds(7.0, 7.1, 0.2, 7.0)).element(2).isEqualTo(LapKind.DOUBLE);
        assertThat(kinds(7.0, 7.1, 70, 7.0)).element(2).isEqualTo(LapKind.OFF);
        assertThat(kinds(7.0)).containsExactly(LapKind.CLEAN);
        assertThat(kinds()).isEmpty();
    }

    @Test
    void slowFirstLapsDoNotMoveThePace() {
        assertThat(kinds(9.0, 8.8, 7.0, 7.1, 7.05, 7.02, 6.98, 7.03))
                .startsWith(LapKind.FIRST, LapKind.OFF, LapKind.CLEAN, LapKind.CLEAN);
    }

    @Test
    void theRacersWordStandsAndTheRuleIsRemembered() {
        TimedRun run = new TimedRun(
                TimedRun.of(7.0, 7.1, 8.6, 7.05, 7.0, 7.1, 7.02).laps(),
                List.of(new Overrule(3, LapKind.CLEAN, "that was me"), new Overrule(1, LapKind.SLOW, "cat")));
        List<Lap> laps = Sorting.sort(List.of(run)).get(0);
        assertThat(laps.get(2).kind()).isEqualTo(LapKind.CLEAN);
        assertThat(laps.get(2).ruledKind()).isEqualTo(LapKind.OFF);
        assertThat(laps.get(0).counts()).isFalse();
        assertThat(laps.get(0).seconds()).isEqualTo(7.0);
    }
}
