package org.lapwright.app.usecase.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.core.car.change.TyreChange;
import org.lapwright.core.fit.CarFit;
import org.lapwright.core.fit.Learned;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.units.Reading;

class OwnLapsTest {
    private final TwoCarGarage own = new TwoCarGarage();
    private final OwnLaps ownLaps = new OwnLaps(
            own.garage,
            own.driver,
            new LearnCar(new CarFit.Settings(2, 500, 100, 0.9, 1)),
            new OwnLaps.Reader(
                    text -> CarFile.read(text).accepted().map(CarFile::setUp),
                    text -> TrackFile.read(text).accepted().map(TrackFile::track)));

    private static TimedRun laps(double pace) {
        double[] seconds = new double[20];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = pace * (1 + 0.01 * Math.sin(2.4 * i));
        }
        return TimedRun.of(seconds);
    }

    private void keep(String car, String by, String change, Side stays) {
        own.keep(car, by, change, stays, Session.of(laps(6.4), laps(6.3)));
    }

    private Optional<OwnLaps.Answer> learn() {
        return ownLaps.learn(
                "Dunlin",
                CarFile.read(TwoCarGarage.CAR).accepted().orElseThrow().setUp(),
                own.track);
    }

    @Test
    void withoutLapsNothingIsLearned() {
        assertThat(learn()).isEmpty();
    }

    /** Of a change that was never logged only the side that stayed is known. */
    @Test
    void theSideThatStayedIsTheCarAsItIs() {
        keep("Dunlin", "me", "something", Side.AFTER);
        Learned learned = learn().orElseThrow().learned();
        assertThat(learned.diagnosis().paces()).isEqualTo(1);
        assertThat(learned.lanes().get(0).measuredS().orElseThrow()).isBetween(6.25, 6.35);
    }

    @Test
    void ofALoggedChangeBothSidesAreKnown() {
        String words = own.log(new TyreChange.Trued(Reading.exact(19.6)), TwoCarGarage.MORNING);
        keep("Dunlin", "me", words, Side.AFTER);
        assertThat(learn().orElseThrow().learned().diagnosis().paces()).isEqualTo(2);
    }

    /** What was logged later was not on the car when it was driven. */
    @Test
    void lapsBeforeAllChangesAreThoseOfTheFirstSetUp() {
        keep("Dunlin", "me", "something", Side.BEFORE);
        own.log(new TyreChange.Trued(Reading.exact(19.6)), TwoCarGarage.EVENING);
        Learned learned = learn().orElseThrow().learned();
        assertThat(learned.diagnosis().paces()).isEqualTo(1);
        assertThat(learned.lanes().get(0).measuredS().orElseThrow()).isBetween(6.35, 6.45);
    }

    /** The same hand on another car tells of the driver; another hand does not. */
    @Test
    void otherCarsOfTheSameDriverTellOfTheDriver() {
        keep("Dunlin", "me", "something", Side.AFTER);
        keep("Knot", "my daughter", "something", Side.AFTER);
        assertThat(learn().orElseThrow().others()).isEmpty();
        keep("Knot", "me", "something else", Side.AFTER);
        assertThat(learn().orElseThrow().others()).isEqualTo(List.of("Knot"));
    }
}
