package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.core.trial.session.Side;

/** Whatever is done to them, in whatever order, the store on disk and the one in memory answer the same. */
class StoresAgreeLawTest {
    private static final List<String> CARS = List.of("Dunlin", "dunlin", "Whimbrel", "Ruff");
    private static final List<String> TRACKS = List.of("Shed loop", "SHED LOOP", "Attic oval");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void bothAnswerAlike(long seed) throws IOException {
        Random random = new Random(seed);
        try (GarageStore memory = new MemoryGarage();
                GarageStore disk = SqliteGarage.open(Garages.emptyIn(folder))) {
            for (int step = 1; step <= 40; step++) {
                int what = random.nextInt(12);
                long id = 1 + random.nextInt(step);
                KeptComparison kept = comparison(random);
                Instant at = Instant.ofEpochSecond(random.nextInt(50));
                String key = "key " + random.nextInt(60);
                for (GarageStore store : List.of(memory, disk)) {
                    act(store, what, id, kept, key, at);
                }
                assertThat(answers(disk)).as("seed %d, step %d", seed, step).isEqualTo(answers(memory));
            }
        }
    }

    private static KeptComparison comparison(Random random) {
        KeptComparison kept = Sample.on(
                TRACKS.get(random.nextInt(TRACKS.size())),
                CARS.get(random.nextInt(CARS.size())),
                random.nextBoolean() ? Side.BEFORE : Side.AFTER,
                1 + random.nextInt(1000),
                1 + random.nextInt(1000));
        return random.nextInt(3) == 0 ? Sample.example(kept) : kept;
    }

    private static void act(GarageStore store, int what, long id, KeptComparison kept, String key, Instant at) {
        boolean there = store.comparison(id).isPresent();
        switch (what) {
            case 0 -> store.archiveExample(at);
            case 1 -> store.restoreExample();
            case 2, 3 -> {
                if (there) {
                    store.archive(id, at);
                }
            }
            case 4 -> {
                if (there) {
                    store.restore(id);
                }
            }
            default -> store.keep(kept, Sample.TOO_FEW, key, at);
        }
    }

    private static List<Object> answers(GarageStore store) {
        List<Object> answers =
                new ArrayList<>(List.of(store.comparisons(), store.archived(), store.tracks(), store.exampleState()));
        TRACKS.forEach(track -> answers.add(store.lapsOnTrack(track)));
        CARS.forEach(car -> answers.add(store.isExample(car)));
        return answers;
    }
}
