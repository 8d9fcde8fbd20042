package org.lapwright.core.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.lapwright.core.advice.EvenRace.Answer;
import org.lapwright.core.advice.EvenRace.By;
import org.lapwright.core.advice.EvenRace.Rival;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.BallastChange;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.SampleCar;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.car.rules.ClassNumber;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/** What levels a race is driven here once more by itself. */
class EvenRaceTest {
    /** Long straights and wide turns: the motor decides, so weight costs time. */
    private static Track track(double volts) {
        return new Track(
                "long",
                new Surface(1, true),
                List.of(new Lane("left", 50), new Lane("right", -50)),
                new Power(volts, 0.6, 0.08, List.of(0.0), OptionalDouble.of(0.2)),
                new PieceLayout(List.of(
                        new Piece.Straight(4000, 0),
                        new Piece.Turn(900, 180, true, 0, 0),
                        new Piece.Straight(4000, 0),
                        new Piece.Turn(900, 180, true, 0, 0))));
    }

    private static final Track TRACK = track(12);

    private static Build car(boolean magnet) {
        SetUp sample = SampleCar.setUp();
        return Build.of(magnet ? sample : sample.withMagnet(Optional.empty()));
    }

    private static Rival rival(Build car, int lane, double held) {
        return new Rival(car, new Course(TRACK, TRACK.lanes().get(lane)), held, ClassLimits.NONE);
    }

    private static double lapS(SetUp car, Track track, int lane) {
        return new LapSolver(track.cells(track.lanes().get(lane)))
                .solve(ResolvedCar.of(car, track.surface()))
                .lapS();
    }

    @Test
    void theVoltageItTellsMakesThemLevel() {
        Answer answer = EvenRace.of(rival(car(false), 0, 1), rival(car(false), 1, 1));
        assertThat(answer.firstIsFaster())
                .as("the inner lane is the shorter one")
                .isTrue();
        assertThat(answer.isLevel()).isFalse();
        EvenRace.Way way = answer.ways().stream()
                .filter(each -> each.by() == By.VOLTAGE)
                .findFirst()
                .orElseThrow();
        assertThat(lapS(car(false).setUp(), track(way.amount()), 0)).isCloseTo(answer.secondS(), within(0.003));
        assertThat(way.lapS()).isCloseTo(answer.secondS(), within(0.003));
    }

    /** What the driver of the first must hold to be this much faster than the second. */
    private static double held(Build car, double faster) {
        return lapS(car.setUp(), TRACK, 0) / ((1 - faster) * lapS(car.setUp(), TRACK, 1));
    }

    /** A magnet presses without weighing, so with one weight costs time even under the centre of gravity. */
    @Test
    void theWeightItTellsMakesThemLevelAndKeepsTheBalance() {
        double held = held(car(true), 0.002);
        Answer answer = EvenRace.of(rival(car(true), 0, held), rival(car(true), 1, 1));
        SetUp after = weighted(answer, car(true));
        assertThat(lapS(after, TRACK, 0) / held).isCloseTo(answer.secondS(), within(0.003));
        assertThat(after.massProperties().aheadMm())
                .isCloseTo(car(true).setUp().massProperties().aheadMm(), within(0.5));
    }

    /** Without a magnet weight under the centre of gravity changes little (common practice, no source): it goes on the nose. */
    @Test
    void whereBalancedWeightIsNotEnoughItGoesOnTheNose() {
        double held = held(car(false), 0.01);
        Answer answer = EvenRace.of(rival(car(false), 0, held), rival(car(false), 1, 1));
        SetUp after = weighted(answer, car(false));
        assertThat(lapS(after, TRACK, 0) / held).isCloseTo(answer.secondS(), within(0.003));
        assertThat(after.massProperties().aheadMm())
                .isGreaterThan(car(false).setUp().massProperties().aheadMm());
    }

    private static SetUp weighted(Answer answer, Build car) {
        EvenRace.Way way = answer.ways().stream()
                .filter(each -> each.by() == By.BALLAST)
                .findFirst()
                .orElseThrow();
        return new BallastChange.Added(way.ballast().orElseThrow()).apply(car).setUp();
    }

    @Test
    void rulesHoldForTheWeight() {
        double mass = car(true).setUp().massProperties().totalG();
        ClassLimits light = new ClassLimits(Map.of(ClassNumber.MOST_MASS, mass), true, Map.of());
        double held = held(car(true), 0.002);
        Answer answer = EvenRace.of(
                new Rival(car(true), new Course(TRACK, TRACK.lanes().get(0)), held, light), rival(car(true), 1, 1));
        assertThat(answer.ways()).extracting(EvenRace.Way::by).containsExactly(By.VOLTAGE);
    }

    @Test
    void likeCarsOnOneLaneAreLevel() {
        Answer answer = EvenRace.of(rival(car(true), 0, 0.9), rival(car(true), 0, 0.9));
        assertThat(answer.isLevel()).isTrue();
        assertThat(answer.ways()).isEmpty();
    }

    @Test
    void aShareThatCannotBeIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> rival(car(true), 0, 1.1))
                .withMessageContaining("from 0.5 to 1");
    }
}
