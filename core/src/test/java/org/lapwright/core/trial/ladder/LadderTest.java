package org.lapwright.core.trial.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
        return new CarLaps(name, List.of(new LaneRun("", TimedRun.of(seconds))));
    }

    private static List<LadderEntry> rank(List<CarLaps> cars, NoisePrior prior) {
        return Ladder.rank(cars, prior).entries();
    }

    @Test
    void carsFarApartHavePlacesOfTheirOwn() {
        List<LadderEntry> ladder =
                rank(List.of(car("b", 8, 40, 1), car("a", 7, 40, 2), car("c", 9, 40, 3)), NoisePrior.DEFAULT);
        assertThat(ladder).extracting(LadderEntry::car).containsExactly("a", "b", "c");
        assertThat(ladder).extracting(LadderEntry::place).containsExactly(1, 2, 3);
        assertThat(ladder.get(0).chanceAheadOfNext()).isGreaterThan(0.99);
    }

    @Test
    void carsThatCannotBeToldApartShareAPlace() {
        List<LadderEntry> ladder =
                rank(List.of(car("a", 7.0, 20, 1), car("b", 7.01, 20, 2), car("c", 9, 20, 3)), NoisePrior.DEFAULT);
        assertThat(ladder).extracting(LadderEntry::place).containsExactly(1, 1, 3);
    }

    @Test
    void eightLuckyLapsAreDrawnTowardsTheOthers() {
        List<LadderEntry> ladder = rank(
                List.of(car("lucky", 6.95, 8, 1), car("b", 7.1, 80, 2), car("c", 7.15, 80, 3), car("d", 7.2, 80, 4)),
                NoisePrior.DEFAULT);
        LadderEntry lucky =
                ladder.stream().filter(e -> e.car().equals("lucky")).findFirst().orElseThrow();
        assertThat(lucky.paceS()).isGreaterThan(lucky.measuredS());
        assertThat(lucky.intervalS().contains(lucky.paceS())).isTrue();
    }

    @Test
    void emptyShedsAndSingleCarsAreFine() {
        assertThat(rank(List.of(), NoisePrior.DEFAULT)).isEmpty();
        assertThat(rank(List.of(car("a", 7, 1, 1)), NoisePrior.DEFAULT)).isEmpty();
        List<LadderEntry> one = rank(List.of(car("a", 7, 10, 1)), NoisePrior.DEFAULT);
        assertThat(one).hasSize(1);
        assertThat(one.get(0).chanceAheadOfNext()).isEqualTo(1);
    }

    @Test
    void aCarWithoutAnyScatterStillHasAnInterval() {
        List<LadderEntry> ladder = rank(
                List.of(new CarLaps("same", List.of(new LaneRun("", TimedRun.of(7, 7, 7, 7))))), NoisePrior.DEFAULT);
        assertThat(ladder.get(0).intervalS().low()).isLessThan(7).isPositive();
    }

    /** The slow car has the fast lane. Its laps there are faster than those of the fast car on the other lane. */
    @Test
    void aFastLaneIsNoMeritOfTheCar() {
        CarLaps slow = onLane("slow", "red", 6.90, 40, 1);
        CarLaps fast = onLane("fast", "blue", 7.00, 40, 2);
        CarLaps both = new CarLaps(
                "both",
                List.of(
                        onLane("both", "red", 6.80, 40, 3).runs().get(0),
                        onLane("both", "blue", 7.10, 40, 4).runs().get(0)));
        Ranking ranking = Ladder.rank(List.of(slow, fast, both), NoisePrior.DEFAULT);
        assertThat(ranking.entries()).extracting(LadderEntry::car).startsWith("fast");
        assertThat(ranking.lanes()).extracting(LaneEffect::lane).containsExactly("red", "blue");
        assertThat(ranking.lanes().get(1).log() - ranking.lanes().get(0).log())
                .isCloseTo(Math.log(7.10 / 6.80), within(0.01));
        assertThat(ranking.entries()).extracting(LadderEntry::laps).contains(80);
    }

    /** What nobody knows of the lanes is the same for both cars of a lane, and stands between cars of two. */
    @Test
    void carsOfOneLaneAreToldApartThoughLanesAreNot() {
        Ranking ranking = Ladder.rank(
                List.of(
                        onLane("a", "red", 7.00, 40, 1),
                        onLane("b", "red", 7.15, 40, 2),
                        onLane("c", "blue", 7.07, 40, 3)),
                NoisePrior.DEFAULT);
        assertThat(ranking.entries()).extracting(LadderEntry::car).containsExactly("a", "c", "b");
        assertThat(ranking.entries().get(0).chanceAheadOfNext()).isLessThan(0.75);
        Ranking red = Ladder.rank(
                List.of(onLane("a", "red", 7.00, 40, 1), onLane("b", "red", 7.15, 40, 2)), NoisePrior.DEFAULT);
        assertThat(red.entries().get(0).chanceAheadOfNext()).isGreaterThan(0.99);
        assertThat(ranking.entries()).extracting(LadderEntry::place).containsExactly(1, 1, 3);
    }

    private static CarLaps onLane(String name, String lane, double pace, int laps, long seed) {
        LaneRun run = car(name, pace, laps, seed).runs().get(0);
        return new CarLaps(name, List.of(new LaneRun(lane, run.run())));
    }
}
