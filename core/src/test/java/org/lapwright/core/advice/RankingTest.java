package org.lapwright.core.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.Balance;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.car.change.BallastChange;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChangeKind;
import org.lapwright.core.car.change.DriveChange;
import org.lapwright.core.car.change.NoseChange;
import org.lapwright.core.car.change.SampleCar;
import org.lapwright.core.car.change.TyreChange;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.car.rules.ClassNumber;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.Limit;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

/** The ranking against brute force, and rules of thumb of the trade as sanity checks (common practice, no source). */
final class RankingTest {
    private static final int DRAWS = 40;
    private static final Track TRACK = SampleTrack.OVAL;
    private static final Lane LEFT = TRACK.lanes().get(0);

    /** Grip known to 5 %, weight to half a gram; no magnet. */
    private static Build car() {
        SetUp sample = SampleCar.setUp();
        return Build.of(sample.withMagnet(Optional.empty())
                .withRearTyre(new RearTyre(new Reading(20, 0.1), new Reading(1.05, 0.05))));
    }

    private static List<Suggestion> ranked(Build car, List<Candidate> candidates) {
        return new Ranking(TRACK, List.of(LEFT), DRAWS, 1).rank(car, candidates);
    }

    private static double lapS(SetUp car) {
        return new LapSolver(TRACK.cells(LEFT))
                .solve(ResolvedCar.of(car, TRACK.surface()))
                .lapS();
    }

    /** Every single candidate driven one by one, as the car is written. */
    @Test
    void theBestOfAFewHundredIsTheBestByBruteForce() {
        Build car = withoutDoubt();
        List<Candidate> candidates = Candidates.of(car, List.of(), ClassLimits.NONE);
        assertThat(candidates).hasSizeGreaterThan(1000);
        double before = lapS(car.setUp());
        List<Double> gains = new ArrayList<>();
        for (Candidate candidate : candidates) {
            gains.add(before - lapS(candidate.apply(car).setUp()));
        }
        double most = gains.stream().max(Comparator.naturalOrder()).orElseThrow();
        double found = ranked(car, candidates).stream()
                .filter(suggestion -> suggestion.candidate().changes().size() == 1)
                .mapToDouble(Suggestion::gainS)
                .max()
                .orElseThrow();
        assertThat(found).isCloseTo(most, within(1e-9));
        assertThat(most).isPositive();
    }

    @Test
    void aGainWithoutDoubtIsExactlyTheDifferenceOfTheLaps() {
        Change change = new DriveChange.GearsFitted(Reading.exact(12), Reading.exact(28));
        Suggestion alone = ranked(withoutDoubt(), List.of(Candidate.of(change))).get(0);
        double expected =
                lapS(withoutDoubt().setUp()) - lapS(change.apply(withoutDoubt()).setUp());
        assertThat(alone.gainS()).isCloseTo(expected, within(1e-9));
        assertThat(alone.chance()).isIn(0.0, 1.0);
    }

    private static Build withoutDoubt() {
        SetUp sample = SampleCar.setUp();
        return Build.of(sample.withMass(new WeighedCar(
                Reading.exact(80),
                new Balance.AsLength(Reading.exact(40)),
                Reading.exact(0),
                Reading.exact(14),
                Optional.empty())));
    }

    @Test
    void theIntervalIsFarNarrowerThanThatOfTheLapItself() {
        Change change = new BallastChange.Added(
                new Ballast("a", Reading.exact(5), Reading.exact(10), Reading.exact(0), Reading.exact(3)));
        Suggestion suggestion = ranked(car(), List.of(Candidate.of(change))).get(0);
        double width = suggestion.intervalS().high() - suggestion.intervalS().low();
        double lapWidth = lapS(grip(0.97)) - lapS(grip(1.13));
        assertThat(width).isLessThan(0.5 * lapWidth);
        assertThat(suggestion.intervalS().contains(suggestion.gainS())).isTrue();
    }

    private static SetUp grip(double grip) {
        return car().setUp().withRearTyre(new RearTyre(Reading.exact(20), Reading.exact(grip)));
    }

    /** Common practice, no source: a tyre with more grip is worth more than grams. */
    @Test
    void gripBeatsGrams() {
        Change grippy = new TyreChange.Fitted(
                "grippy", new RearTyre(new Reading(20, 0.1), new Reading(1.4, 0.05)), Optional.empty());
        List<Suggestion> all = ranked(car(), Candidates.of(car(), List.of(grippy), ClassLimits.NONE));
        Suggestion best = all.stream()
                .filter(suggestion -> suggestion.candidate().changes().size() == 1)
                .max(Comparator.comparingDouble(Suggestion::gainS))
                .orElseThrow();
        assertThat(best.candidate().changes().get(0)).isEqualTo(grippy);
        assertThat(best.chance()).isGreaterThan(0.99);
    }

    /** Common practice, no source: weight low helps a car that tips. */
    @Test
    void aLowerWeightHelpsACarThatTips() {
        SetUp tall = SampleCar.setUp()
                .withMagnet(Optional.empty())
                .withChassis(new Chassis(
                        Reading.exact(100),
                        Reading.exact(80),
                        Reading.exact(34),
                        Reading.exact(34),
                        FrontWheels.CLEAR));
        Build car = Build.of(tall);
        Change low = new BallastChange.Moved("pod", Reading.exact(20), Reading.exact(0), Reading.exact(1));
        Change high = new BallastChange.Moved("pod", Reading.exact(20), Reading.exact(0), Reading.exact(40));
        double lower = ranked(car, List.of(Candidate.of(low))).get(0).gainS();
        double higher = ranked(car, List.of(Candidate.of(high))).get(0).gainS();
        assertThat(lower).isGreaterThan(higher);
    }

    @Test
    void lanesDrivenAtOnceGiveTheSame() {
        List<Candidate> candidates =
                Candidates.of(car(), List.of(), ClassLimits.NONE).subList(0, 60);
        List<Suggestion> inTurn = new Ranking(TRACK, TRACK.lanes(), DRAWS, 1).rank(car(), candidates);
        List<Suggestion> atOnce = new Ranking(
                        TRACK,
                        TRACK.lanes(),
                        DRAWS,
                        1,
                        tasks -> tasks.parallelStream().forEach(Runnable::run))
                .rank(car(), candidates);
        assertThat(atOnce).isEqualTo(inTurn);
    }

    @Test
    void boundsOfTheClassAreNeverBroken() {
        ClassLimits bounds = new ClassLimits(
                Map.of(ClassNumber.LEAST_MASS, 84.0, ClassNumber.MOST_MASS, 88.0, ClassNumber.MOST_WIDTH, 50.0),
                false,
                Map.of());
        Build car = car();
        List<Candidate> allowed = Candidates.of(car, List.of(), bounds);
        assertThat(allowed)
                .isNotEmpty()
                .allSatisfy(candidate ->
                        assertThat(bounds.allow(candidate.apply(car))).isTrue());
        assertThat(allowed)
                .noneMatch(candidate -> candidate.changes().get(0).kind() == ChangeKind.BALLAST_REMOVED
                        && candidate.apply(car).setUp().massProperties().totalG() < 84);
    }

    @Test
    void shimsAreOfferedOnlyWhereTheGapIsKnown() {
        assertThat(Candidates.of(car(), List.of(), ClassLimits.NONE))
                .noneMatch(candidate -> candidate.changes().get(0) instanceof NoseChange);
        Build gapped = new NoseChange.FrontGapMeasured(Reading.exact(-0.3)).apply(car());
        assertThat(Candidates.of(gapped, List.of(), ClassLimits.NONE))
                .anyMatch(candidate -> candidate.changes().get(0) instanceof NoseChange.ShimAdded);
    }

    /** The parts of the gain add up to the difference of the laps. */
    @Test
    void theReasonsAddUp() {
        SetUp after = grip(1.3);
        Reason reason = Reason.of(car().setUp(), after, TRACK, LEFT).orElseThrow();
        double sum = reason.gainS().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        assertThat(sum).isCloseTo(lapS(car().setUp()) - lapS(after), within(1e-9));
        assertThat(reason.most()).contains(Limit.SLIDE);
    }

    @Test
    void aCarThatDoesNotGetRoundIsSaid() {
        SetUp lifted =
                withoutDoubt().setUp().withMagnet(Optional.of(new Magnet(Reading.exact(300), Reading.exact(-60))));
        assertThatThrownBy(() -> ranked(Build.of(lifted), List.of())).hasMessageContaining("does not get round");
    }

    /** δ = 2 %, σ = 1 %, φ = 0, no run scatter, 10 laps a run: (1.96 + 0.84)² · 2 · 0.01²/10 / 0.02² = 0.39 runs, so 2 a side. */
    @Test
    void lapsToProveFollowTheUsualFormula() {
        Proof proof = new Proof(0.01, 0, 0, 10);
        assertThat(proof.laps(0.12, 6)).isEqualTo(OptionalInt.of(40));
        double runs = Math.pow((1.959964 + 0.841621) * 0.01 / 0.002, 2) * 2 / 10;
        assertThat(proof.laps(0.012, 6)).isEqualTo(OptionalInt.of((int) (2 * Math.ceil(runs) * 10)));
        assertThat(proof.laps(0.00001, 6)).isEmpty();
        assertThat(proof.laps(-0.1, 6)).isEmpty();
    }
}
