package org.lapwright.core.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Lane;

/**
 * Simulated owners whose cars are known: the intervals must hold the truth as often as they say, and the truth must lie anywhere among
 * the draws alike (simulation-based calibration: Talts, Betancourt, Simpson, Vehtari and Gelman 2018).
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class FitCoverageTest {
    private static final int OWNERS = 200;
    private static final int BINS = 10;

    private final List<String> names = new ArrayList<>();
    private int[] inside = {};
    private int lapInside;
    private int sound;
    private final int[] gripRanks = new int[BINS];

    @BeforeAll
    void fitAll() {
        SplittableRandom chance = new SplittableRandom(2026);
        for (int i = 0; i < OWNERS; i++) {
            SimulatedOwner owner = SimulatedOwner.draw(List.of(SimulatedOwner.car()), 2, 20, chance);
            Learned learned = CarFit.learn(owner.laps, List.of(), CarFit.USUAL_DRIVER, CarFit.Settings.USUAL);
            count(owner, learned);
        }
    }

    private void count(SimulatedOwner owner, Learned learned) {
        if (names.isEmpty()) {
            learned.numbers().forEach(number -> names.add(number.name()));
            inside = new int[names.size()];
        }
        for (int k = 0; k < inside.length; k++) {
            double truth = k == 0 ? owner.share : owner.truth[k - 1];
            inside[k] += learned.numbers().get(k).interval().contains(truth) ? 1 : 0;
        }
        lapInside += learned.lap().intervalS().contains(lapS(owner.trueCar())) ? 1 : 0;
        sound += learned.diagnosis().isSound() ? 1 : 0;
        double grip = owner.truth[names.indexOf("grip") - 1];
        long below = learned.draws().stream()
                .filter(car -> car.rearTyre().grip().value() < grip)
                .count();
        gripRanks[(int) (below * BINS / (learned.draws().size() + 1))]++;
    }

    private static double lapS(SetUp car) {
        double sum = 0;
        for (Lane lane : SimulatedOwner.TRACK.lanes()) {
            sum += new LapSolver(SimulatedOwner.TRACK.cells(lane))
                    .solve(ResolvedCar.of(car, SimulatedOwner.TRACK.surface()))
                    .lapS();
        }
        return sum / SimulatedOwner.TRACK.lanes().size();
    }

    @Test
    void ninetyPercentBandsHoldTheTruthNineTimesInTen() {
        for (int k = 0; k < inside.length; k++) {
            assertThat(inside[k] / (double) OWNERS).as(names.get(k)).isBetween(0.85, 0.95);
        }
        assertThat(lapInside / (double) OWNERS).as("best lap").isBetween(0.85, 0.95);
    }

    @Test
    void theTruthLiesAnywhereAmongTheDraws() {
        double expected = OWNERS / (double) BINS;
        double chi = 0;
        for (int count : gripRanks) {
            chi += (count - expected) * (count - expected) / expected;
        }
        assertThat(chi).isLessThan(new ChiSquaredDistribution(BINS - 1).inverseCumulativeProbability(0.99));
    }

    @Test
    void theDrawsCanBeBelieved() {
        assertThat(sound).isGreaterThan(OWNERS * 95 / 100);
    }
}
