package org.lapwright.app.usecase.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.ChangeJson;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.change.BallastChange;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.units.Reading;

class ScoreForecastsTest {
    private static final BallastChange.Added TAIL = new BallastChange.Added(
            new Ballast("tail", Reading.exact(10), Reading.exact(0), Reading.exact(0), Reading.exact(4)));

    private static ScoreForecasts.Score score(TwoCarGarage own) {
        return new ScoreForecasts(
                        own.garage,
                        new JudgeChange(),
                        new LapForecaster.Settings(0.9, 40, 1),
                        new ScoreForecasts.Reader(
                                text -> CarFile.read(text).accepted().map(CarFile::build),
                                text -> TrackFile.read(text).accepted().map(TrackFile::track),
                                text -> ChangeJson.read(text).accepted().map(ChangeJson.Noted::change)))
                .score();
    }

    /** Laps about a pace; how they scatter is the same on both sides. */
    private static TimedRun laps(double pace, int run) {
        double[] seconds = new double[15];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = pace * (1 + 0.006 * Math.sin(2.4 * i + run));
        }
        return TimedRun.of(seconds);
    }

    private static void drive(TwoCarGarage own, String change, double share) {
        double pace = 6.4;
        List<DrivenRun> runs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            Side side = i == 0 || i == 3 ? Side.BEFORE : Side.AFTER;
            runs.add(new DrivenRun(side, laps(side == Side.AFTER ? pace * (1 + share) : pace, i)));
        }
        own.keep("Dunlin", "me", change, Side.AFTER, new Session(runs));
    }

    /** A garage in which 10 g over the rear axle were logged and then changed the laps by so much. */
    private static TwoCarGarage driven(double share) {
        TwoCarGarage own = new TwoCarGarage();
        drive(own, own.log(TAIL, TwoCarGarage.MORNING), share);
        return own;
    }

    @Test
    void withoutADrivenChangeThereIsNothingToScore() {
        TwoCarGarage own = new TwoCarGarage();
        own.log(TAIL, TwoCarGarage.MORNING);
        drive(own, "something that nobody logged", -0.01);
        assertThat(score(own).rows()).isEmpty();
        assertThat(score(own).kinds()).isEmpty();
    }

    /** The model says what it says; laps that agree are a hit, laps far off are none. */
    @Test
    void lapsThatAgreeAreAHitAndLapsFarOffAreNot() {
        double expected =
                score(driven(0)).rows().get(0).forecast().orElseThrow().middle();
        assertThat(expected).isBetween(-0.05, 0.05);
        assertThat(score(driven(expected)).hits()).isEqualTo(1);
        ScoreForecasts.Score missed = score(driven(expected + 0.06));
        assertThat(missed.forecasts()).isEqualTo(1);
        assertThat(missed.hits()).isZero();
        ScoreForecasts.OfKind kind = missed.kinds().get(0);
        assertThat(kind.count()).isEqualTo(1);
        assertThat(kind.bias().orElseThrow().middle()).isCloseTo(0.06, within(0.005));
        assertThat(kind.given().middle()).isCloseTo(expected + 0.06, within(0.005));
    }
}
