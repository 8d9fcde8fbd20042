package org.lapwright.core.trial.ladder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.NoisePrior;

/** The numbers behind the ladder are held to published ones in the tests of ShrunkMeans; here, what a racer sees. */
class LadderTest {
    private static CarLaps car(String name, double pace, int laps, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] seconds = new double[laps];
        for (int i = 0; i < laps; i++) {
            seconds[i] = Math.rint(1000 * pace * (1 + 0.01 * random.nextGaussian())) / 1000;
        }
        return new CarLaps(name, List.of(TimedRun.of(seconds)));
    }

    @Test
    void carsFarApartHavePlacesOfTheirOwn() {
        List<LadderEntry> ladder =
                Ladder.rank(List.of(car("b", 8, 40, 1), car("a", 7, 40, 2), car("c", 9, 40, 3)), NoisePrior.DEFAULT);
        assertThat(ladder).extracting(LadderEntry::car).containsExactly("a", "b", "c");
        assertThat(ladder).extracting(LadderEntry::place).containsExactly(1, 2, 3);
        assertThat(ladder.get(0).chanceAheadOfNext()).isGreaterThan(0.99);
    }

    @Test
    void carsThatCannotBeToldApartShareAPlace() {
        List<LadderEntry> ladder = Ladder.rank(
                List.of(car("a", 7.0, 20, 1), car("b", 7.01, 20, 2), car("c", 9, 20, 3)), NoisePrior.DEFAULT);
        assertThat(ladder).extracting(LadderEntry::place).containsExactly(1, 1, 3);
    }

    @Test
    void eightLuckyLapsAreDrawnTowardsTheOthers() {
        List<LadderEntry> ladder = Ladder.rank(
                List.of(car("lucky", 6.95, 8, 1), car("b", 7.1, 80, 2), car("c", 7.15, 80, 3), car("d", 7.2, 80, 4)),
                NoisePrior.DEFAULT);
        LadderEntry lucky =
                ladder.stream().filter(e -> e.car().equals("lucky")).findFirst().orElseThrow();
        assertThat(lucky.paceS()).isGreaterThan(lucky.measuredS());
        assertThat(lucky.intervalS().contains(lucky.paceS())).isTrue();
    }

    @Test
    void emptyShedsAndSingleCarsAreFine() {
        assertThat(Ladder.rank(List.of(), NoisePrior.DEFAULT)).isEmpty();
        assertThat(Ladder.rank(List.of(car("a", 7, 1, 1)), NoisePrior.DEFAULT)).isEmpty();
        List<LadderEntry> one = Ladder.rank(List.of(car("a", 7, 10, 1)), NoisePrior.DEFAULT);
        assertThat(one).hasSize(1);
        assertThat(one.get(0).chanceAheadOfNext()).isEqualTo(1);
    }

    @Test
    void aCarWithoutAnyScatterStillHasAnInterval() {
        List<LadderEntry> ladder =
                Ladder.rank(List.of(new CarLaps("same", List.of(TimedRun.of(7, 7, 7, 7)))), NoisePrior.DEFAULT);
        assertThat(ladder.get(0).intervalS().low()).isLessThan(7).isPositive();
    }
}
