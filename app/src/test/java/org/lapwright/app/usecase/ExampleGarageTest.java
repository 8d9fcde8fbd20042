package org.lapwright.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.lapwright.app.store.MemoryGarage;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Judge;
import org.lapwright.core.trial.SteadyDecision;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

class ExampleGarageTest {
    private static final Instant NOW = Instant.parse("2026-03-01T20:15:30Z");
    private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);
    private static final List<String> CARS = List.of("Dunlin", "Greenshank", "Sanderling", "Turnstone", "Whimbrel");

    private final GarageStore store = new MemoryGarage();
    private final ExampleGarage example = new ExampleGarage(store, new JudgeChange(), CLOCK);

    private List<String> cars() {
        return store.lapsOnTrack("Shed loop").stream().map(CarLaps::car).toList();
    }

    @Test
    void itIsPutInAtTheFirstStartAndStays() {
        assertThat(example.state()).isEqualTo(ExampleState.ABSENT);
        example.putInAtFirstStart();
        List<SavedComparison> first = store.comparisons();
        assertThat(example.state()).isEqualTo(ExampleState.SHOWN);
        assertThat(first)
                .extracting(SavedComparison::kept)
                .containsExactlyInAnyOrderElementsOf(ExampleGarage.comparisons());
        assertThat(cars()).isEqualTo(CARS);
        assertThat(CARS).allMatch(store::isExample);
        example.putInAtFirstStart();
        assertThat(store.comparisons()).isEqualTo(first);
    }

    @Test
    void whatTheRacerTookOutStaysOutUntilBroughtBack() {
        example.putInAtFirstStart();
        List<SavedComparison> first = store.comparisons();
        example.remove();
        example.putInAtFirstStart();
        assertThat(example.state()).isEqualTo(ExampleState.REMOVED);
        assertThat(store.comparisons()).isEmpty();
        assertThat(store.tracks()).isEmpty();
        example.bringBack();
        assertThat(store.comparisons()).isEqualTo(first);
    }

    @Test
    void bringingBackWhatNeverWasPutsItIn() {
        example.bringBack();
        assertThat(cars()).isEqualTo(CARS);
    }

    @Test
    void anInterruptedStartIsCompletedByTheNext() {
        AtomicInteger judged = new AtomicInteger();
        ExampleGarage interrupted = new ExampleGarage(
                store, new JudgeChange((session, settings) -> failAtFourth(judged, session, settings)), CLOCK);
        assertThatThrownBy(interrupted::putInAtFirstStart).hasMessage("the power went");
        assertThat(store.comparisons()).hasSize(3);
        example.putInAtFirstStart();
        assertThat(store.comparisons())
                .extracting(SavedComparison::kept)
                .containsExactlyInAnyOrderElementsOf(ExampleGarage.comparisons());
    }

    private static Verdict failAtFourth(AtomicInteger judged, Session session, TrialSettings settings) {
        if (judged.incrementAndGet() == 4) {
            throw new StoreException("the power went");
        }
        return Judge.judge(session, settings);
    }

    @Test
    void aRacersOwnCarOfTheLastCarsNameDoesNotHideAnUnfinishedExample() {
        KeptComparison last =
                ExampleGarage.comparisons().get(ExampleGarage.comparisons().size() - 1);
        assertThat(last.car()).isEqualTo(ExampleGarage.LAST_CAR);
        assertThat(ExampleGarage.comparisons().stream()
                        .filter(kept -> kept.car().equals(ExampleGarage.LAST_CAR)))
                .hasSize(1);
        store.keep(own(last), Judge.judge(last.session(), last.settings()), "own", NOW);
        example.putInAtFirstStart();
        example.putInAtFirstStart();
        assertThat(store.comparisons()).hasSize(1 + ExampleGarage.comparisons().size());
    }

    private static KeptComparison own(KeptComparison kept) {
        return new KeptComparison(
                kept.car(),
                kept.track(),
                kept.lane(),
                kept.driver(),
                kept.conditions(),
                kept.change(),
                kept.stays(),
                kept.session(),
                kept.settings(),
                false);
    }

    /** The story that the example tells; the cars are in the order of their evenings. */
    @Test
    void theVerdictsAreThoseOfTheStory() {
        List<Verdict> verdicts = ExampleGarage.comparisons().stream()
                .map(kept -> Judge.judge(kept.session(), kept.settings()))
                .toList();
        assertThat(verdicts)
                .extracting(
                        Verdict::decision,
                        verdict -> verdict.consistency().orElseThrow().decision())
                .containsExactly(
                        tuple(Decision.FASTER, SteadyDecision.MORE_LAPS),
                        tuple(Decision.MORE_LAPS, SteadyDecision.MORE_LAPS),
                        tuple(Decision.FASTER, SteadyDecision.MORE_LAPS),
                        tuple(Decision.MORE_LAPS, SteadyDecision.STEADIER),
                        tuple(Decision.SLOWER, SteadyDecision.MORE_LAPS),
                        tuple(Decision.FASTER, SteadyDecision.MORE_LAPS),
                        tuple(Decision.FASTER, SteadyDecision.MORE_LAPS),
                        tuple(Decision.FASTER, SteadyDecision.MORE_LAPS));
        assertThat(verdicts.stream()
                        .mapToInt(verdict -> count(verdict, LapKind.MISSED))
                        .sum())
                .as("missed gates")
                .isEqualTo(2);
        assertThat(verdicts.stream()
                        .mapToInt(verdict ->
                                verdict.before().offs() + verdict.after().offs())
                        .sum())
                .as("offs")
                .isBetween(5, 25);
    }

    private static int count(Verdict verdict, LapKind kind) {
        return verdict.before().count(kind) + verdict.after().count(kind);
    }

    /** A change that proved slower, or proved nothing for the ballast, was taken back. */
    @Test
    void theLadderStandsOnWhatStayed() {
        example.putInAtFirstStart();
        assertThat(ExampleGarage.comparisons())
                .filteredOn(kept -> kept.stays() == Side.BEFORE)
                .extracting(KeptComparison::car, KeptComparison::change)
                .containsExactly(
                        tuple(
                                "Greenshank",
                                "5 g of ballast moved back, from under the motor to just ahead of the rear axle"),
                        tuple("Sanderling", "Magnet taken out"));
        assertThat(store.lapsOnTrack("Shed loop"))
                .allMatch(car -> car.runs().size() == 3)
                .flatExtracting(CarLaps::runs)
                .allMatch(run -> run.run().laps().stream().allMatch(lap -> lap.seconds() > 6 && lap.seconds() < 14));
    }

    @Test
    void theEveningsLieBeforeTheStart() {
        example.putInAtFirstStart();
        List<Instant> saved =
                store.comparisons().stream().map(SavedComparison::savedAt).toList();
        assertThat(saved).doesNotHaveDuplicates().allMatch(at -> at.isBefore(NOW));
        assertThat(saved.get(0)).isEqualTo(NOW.minus(Duration.ofDays(1)));
    }

    @Test
    void everythingIsMarkedAsInvented() throws IOException {
        assertThat(ExampleGarage.comparisons())
                .allMatch(KeptComparison::example)
                .allMatch(kept -> kept.track().equals("Shed loop"))
                .allMatch(kept -> kept.driver().equals("example driver"))
                .allMatch(kept -> List.of("red", "blue").contains(kept.lane()))
                .allMatch(kept -> CARS.contains(kept.car()));
        assertThat(bundled()).startsWith("{\n  \"about\": \"Invented: no such car, track or driver exists.");
    }

    /** To invent other laps, change {@link ExampleLaps} and run its main method on the file. */
    @Test
    void theFileIsWhatTheProgramInvents() throws IOException {
        assertThat(bundled()).isEqualTo(ExampleLaps.json());
    }

    private static String bundled() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(ExampleGarage.class.getResourceAsStream("/example/shed-loop.json"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
