package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.app.usecase.GarageStore.SetUpRun;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.ladder.LaneRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** The ladder and the example in every garage, and what it takes to try one; part of {@link GarageStoreContract}. */
abstract class GarageLadderContract {
    static final Instant AT = Instant.parse("2026-03-01T20:15:30.123456Z");

    GarageStore store;
    private int keys;

    /** A new, empty store. */
    abstract GarageStore open() throws Exception;

    @BeforeEach
    void openStore() throws Exception {
        store = open();
    }

    @AfterEach
    void closeStore() {
        store.close();
    }

    SavedComparison keep(KeptComparison comparison) {
        return keepAt(comparison, AT.plusSeconds(keys));
    }

    SavedComparison keepAt(KeptComparison comparison, Instant at) {
        return store.keep(comparison, Sample.full(), "key " + keys++, at);
    }

    List<Double> onLadder(String car) {
        return onLadder("Shed loop", car);
    }

    /** All lap times that the car has on the ladder of a track, oldest first. */
    List<Double> onLadder(String track, String car) {
        return store.lapsOnTrack(track).stream()
                .filter(laps -> laps.car().equals(car))
                .flatMap(laps -> laps.runs().stream())
                .flatMap(run -> run.run().laps().stream())
                .map(TimedLap::seconds)
                .toList();
    }

    List<String> carsOnLadder() {
        return store.lapsOnTrack("Shed loop").stream().map(CarLaps::car).toList();
    }

    /** The ladder of an evening ago: without what was kept since, and with the set-ups that the cars had then. */
    @Test
    void aLadderAsItStoodHasTheLapsAndSetUpsOfThen() {
        keepAt(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1), AT);
        keepAt(Sample.of("Whimbrel", Side.BEFORE, 6.4, 6.3), AT.plusSeconds(10));
        keepAt(Sample.of("Dunlin", Side.AFTER, 6.05, 6.0), AT.plusSeconds(20));
        keepAt(Sample.of("Heron", Side.AFTER, 5.9, 5.8), AT.plusSeconds(30));
        List<CarLaps> then = store.lapsOnTrack("Shed loop", AT.plusSeconds(10));
        assertThat(then).extracting(CarLaps::car).containsExactly("Dunlin", "Whimbrel");
        assertThat(then.get(0).runs().get(0).lane()).isEqualTo("red");
        assertThat(then.get(0).runs().get(0).run().laps())
                .extracting(TimedLap::seconds)
                .containsExactly(6.1);
        assertThat(store.lapsOnTrack("Shed loop", AT.minusSeconds(1))).isEmpty();
        assertThat(store.lapsOnTrack("Shed loop", AT.plusSeconds(99))).isEqualTo(store.lapsOnTrack("Shed loop"));
    }

    @Test
    void theLadderTakesTheSetUpThatStaysOnTheCar() {
        keep(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1));
        assertThat(onLadder("Dunlin")).containsExactly(6.1);
        keep(Sample.of("Dunlin", Side.BEFORE, 6.11, 6.5));
        assertThat(onLadder("Dunlin")).as("the change was taken back").containsExactly(6.1, 6.11);
        keep(Sample.of("Dunlin", Side.AFTER, 6.12, 6.0));
        assertThat(onLadder("Dunlin")).containsExactly(6.0);
        keep(Sample.of("Dunlin", Side.BEFORE, 6.01, 5.9));
        assertThat(onLadder("Dunlin")).containsExactly(6.0, 6.01);
    }

    @Test
    void archivingTheLastComparisonPutsTheCarBackToWhereItWas() {
        keep(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1));
        SavedComparison last = keep(Sample.of("Dunlin", Side.AFTER, 6.12, 6.0));
        store.archive(last.id(), AT);
        assertThat(onLadder("Dunlin")).containsExactly(6.1);
        keep(Sample.of("Dunlin", Side.BEFORE, 6.13, 6.3));
        assertThat(onLadder("Dunlin")).containsExactly(6.1, 6.13);
        store.restore(last.id());
        assertThat(onLadder("Dunlin"))
                .as("the newest word on the set-up stands")
                .containsExactly(6.1, 6.12, 6.13);
    }

    @Test
    void theLadderKeepsTracksApartAndTakesAllLanes() {
        keep(Sample.on("Shed loop", "Dunlin", Side.BEFORE, 6.2, 6.3));
        keep(Sample.on("Attic oval", "Dunlin", Side.BEFORE, 4.2, 4.3));
        Session session = Session.of(TimedRun.of(6.9), TimedRun.of(7.0));
        keep(new KeptComparison(
                "Dunlin", "Shed loop", "blue", "", "", "", Side.BEFORE, session, TrialSettings.DEFAULT, false));
        assertThat(onLadder("Dunlin")).containsExactly(6.2, 6.9);
        assertThat(onLadder("attic OVAL", "Dunlin")).containsExactly(4.2);
    }

    @Test
    void aCarWithoutLapsInItsPresentSetUpIsNotOnTheLadder() {
        keep(Sample.on("Shed loop", "Dunlin", Side.AFTER, 6.2, 6.1));
        keep(Sample.on("Attic oval", "Dunlin", Side.AFTER, 4.2, 4.1));
        assertThat(store.lapsOnTrack("Shed loop")).isEmpty();
        assertThat(onLadder("Attic oval", "Dunlin")).containsExactly(4.1);
    }

    @Test
    void runsOnTheLadderCarryTheRacersWord() {
        TimedRun run = new TimedRun(List.of(new TimedLap(1, 6.2)), List.of(new Overrule(1, LapKind.SLOW, "dust")));
        Session session = new Session(List.of(new DrivenRun(Side.AFTER, run)));
        keep(new KeptComparison(
                "Dunlin", "Shed loop", "", "", "", "", Side.AFTER, session, TrialSettings.DEFAULT, false));
        assertThat(store.lapsOnTrack("Shed loop"))
                .containsExactly(new CarLaps("Dunlin", List.of(new LaneRun("", run))));
    }

    @Test
    void theRunsOfACarKnowTheirSetUpsAndLanes() {
        SavedComparison first = keepAt(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1), AT);
        keepAt(Sample.of("Knot", Side.AFTER, 6.5, 6.4), AT.plusSeconds(10));
        keepAt(Sample.of("dunlin", Side.AFTER, 6.15, 6.0), AT.plusSeconds(20));
        List<SetUpRun> runs = store.runsOf("DUNLIN");
        assertThat(runs).extracting(run -> run.run().laps().get(0).seconds()).containsExactly(6.2, 6.1, 6.15, 6.0);
        assertThat(runs).extracting(SetUpRun::lane).containsOnly("red");
        assertThat(runs).extracting(SetUpRun::track).containsOnly("Shed loop");
        assertThat(runs).extracting(SetUpRun::at).containsExactly(AT, AT, AT.plusSeconds(20), AT.plusSeconds(20));
        assertThat(runs.get(1).setUp()).isEqualTo(runs.get(2).setUp());
        assertThat(runs.stream().map(SetUpRun::setUp).distinct()).hasSize(3);
        store.archive(first.id(), AT.plusSeconds(30));
        assertThat(store.runsOf("Dunlin")).hasSize(2);
        assertThat(store.runsOf("nobody")).isEmpty();
    }

    @Test
    void tracksComeByTheLastDrive() {
        keepAt(Sample.on("Shed loop", "Dunlin", Side.AFTER, 6, 6), AT.plusSeconds(10));
        SavedComparison attic = keepAt(Sample.on("Attic oval", "Dunlin", Side.AFTER, 4, 4), AT.plusSeconds(20));
        keepAt(Sample.on("Shed loop", "Dunlin", Side.AFTER, 6, 6), AT);
        assertThat(store.tracks()).containsExactly("Attic oval", "Shed loop");
        store.archive(attic.id(), AT);
        assertThat(store.tracks()).containsExactly("Shed loop");
    }

    @Test
    void theExampleGoesAndComesBack() {
        keep(Sample.example(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1)));
        SavedComparison own = keep(Sample.of("Robin", Side.AFTER, 6.6, 6.5));
        SavedComparison other = keep(Sample.example(Sample.of("Whimbrel", Side.AFTER, 6.4, 6.3)));
        assertThat(store.exampleState()).isEqualTo(ExampleState.SHOWN);
        assertThat(store.isExample("dunlin")).isTrue();
        assertThat(store.isExample("Robin")).isFalse();
        store.archive(other.id(), AT);
        assertThat(store.exampleState()).isEqualTo(ExampleState.SHOWN);

        store.archiveExample(AT);
        assertThat(store.exampleState()).isEqualTo(ExampleState.REMOVED);
        assertThat(store.comparisons()).containsExactly(own);
        assertThat(carsOnLadder()).containsExactly("Robin");

        store.restoreExample();
        assertThat(store.exampleState()).isEqualTo(ExampleState.SHOWN);
        store.archive(own.id(), AT);
        assertThat(carsOnLadder()).containsExactly("Dunlin", "Whimbrel");
    }

    @Test
    void aLadderOfTheRacersOwnHasNoInventedCars() {
        keep(Sample.example(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1)));
        keep(Sample.example(Sample.on("Attic oval", "Dunlin", Side.AFTER, 6.1, 6.0)));
        KeptComparison noLaps = new KeptComparison(
                "Robin",
                "Attic oval",
                "",
                "",
                "",
                "",
                Side.AFTER,
                Session.of(TimedRun.of(), TimedRun.of()),
                TrialSettings.DEFAULT,
                false);
        keep(noLaps);
        assertThat(store.lapsOnTrack("Attic oval")).extracting(CarLaps::car).containsExactly("Dunlin");
        keep(Sample.on("ATTIC oval", "Ruff", Side.AFTER, 4.2, 4.1));
        keep(Sample.on("Attic Oval", "Knot", Side.AFTER, 4.3, 4.2));
        assertThat(store.lapsOnTrack("Attic oval"))
                .extracting(CarLaps::car)
                .contains("Knot", "Ruff")
                .doesNotContain("Dunlin");
        assertThat(store.tracks()).containsExactly("Attic oval", "Shed loop");
    }

    @Test
    void removingAnAbsentExampleIsHarmless() {
        store.archiveExample(AT);
        store.restoreExample();
        assertThat(store.exampleState()).isEqualTo(ExampleState.ABSENT);
    }

    @Test
    void theRacersOwnCarOfOneNameIsAnotherCar() {
        keep(Sample.example(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1)));
        SavedComparison own = keep(Sample.of("dunlin", Side.BEFORE, 7.2, 7.1));
        assertThat(own.kept().car()).isEqualTo("dunlin");
        assertThat(store.isExample("Dunlin")).isFalse();
        assertThat(onLadder("dunlin"))
                .as("no invented laps among the racer's own")
                .containsExactly(7.2);
        assertThat(carsOnLadder()).containsExactly("dunlin");
        store.archive(own.id(), AT);
        assertThat(store.isExample("Dunlin")).isTrue();
        assertThat(onLadder("Dunlin")).containsExactly(6.1);
    }
}
