package org.lapwright.app.files.garage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.lapwright.app.store.MemoryGarage;
import org.lapwright.app.usecase.ExampleGarage;
import org.lapwright.app.usecase.FileStore.Kind;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.physics.PredictLap;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.Judge;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.Side;

/** The example's cars and track are files like any others, and its laps are laps that those cars could have driven. */
class ExampleFilesTest {
    private final GarageStore store = new MemoryGarage();

    private static SetUp car(KeptFile file) {
        FileReading<CarFile> reading = CarFile.read(file.text());
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.notes()).isEmpty();
        return reading.accepted().orElseThrow().setUp();
    }

    private Track track() {
        FileReading<TrackFile> reading =
                TrackFile.read(store.file(Kind.TRACK, "Shed loop").orElseThrow().text());
        assertThat(reading.problems()).isEmpty();
        return reading.accepted().orElseThrow().track();
    }

    /** Nobody holds the best that physics allows; a racer at home is some per cent above it (common practice, no source). */
    @Test
    void nobodyDrivesFasterThanPhysicsAllows() {
        new ExampleGarage(store, new JudgeChange(), Clock.systemUTC()).putInAtFirstStart();
        Map<String, SetUp> cars = store.files(Kind.CAR).stream()
                .map(ExampleFilesTest::car)
                .collect(Collectors.toMap(SetUp::name, Function.identity()));
        Track track = track();
        assertThat(track.cells(track.lanes().get(0)).closingGap().isOpen()).isFalse();
        for (SavedComparison saved : store.comparisons()) {
            KeptComparison kept = saved.kept();
            Lane lane = track.requireLane(kept.lane());
            double best = new PredictLap()
                    .predict(Objects.requireNonNull(cars.get(kept.car())), track, lane)
                    .outcome()
                    .lapS();
            assertThat(staying(kept).paceS().orElseThrow() / best)
                    .as(kept.car())
                    .isBetween(1.02, 1.12);
        }
    }

    private static Stint staying(KeptComparison kept) {
        Verdict verdict = Judge.judge(kept.session(), kept.settings());
        return kept.stays() == Side.BEFORE ? verdict.before() : verdict.after();
    }
}
