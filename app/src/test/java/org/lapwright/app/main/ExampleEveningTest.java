package org.lapwright.app.main;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.store.MemoryGarage;
import org.lapwright.app.usecase.ExampleGarage;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.StoredStep;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.core.car.SetUp;

/** The evening of the example garage: guide, shims, tyres, ballast moved twice, body freed, magnet out. */
class ExampleEveningTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-14T19:30:00Z"), ZoneOffset.UTC);

    @Test
    void everyStepIsThereOnceAndReadable() {
        MemoryGarage store = new MemoryGarage();
        ExampleGarage example = new ExampleGarage(store, new JudgeChange(), CLOCK, ExampleEvening::on);
        example.putInAtFirstStart();
        example.putInAtFirstStart();
        StoredHistory history = store.history("Sanderling").orElseThrow();
        assertThat(history.example()).isTrue();
        assertThat(history.steps())
                .extracting(StoredStep::kind)
                .containsExactly(
                        "first",
                        "guide-fitted",
                        "front-gap",
                        "shim-added",
                        "shim-added",
                        "tyres-trued",
                        "ballast-added",
                        "ballast-added",
                        "ballast-moved",
                        "ballast-moved",
                        "body-float",
                        "magnet-removed");
        List<StoredStep> unreadable = history.steps().stream()
                .filter(step -> CarFile.read(step.file()).accepted().isEmpty())
                .toList();
        assertThat(unreadable).isEmpty();
    }

    /** 72 g as weighed, 0.4 g of guide, two pieces of 5 g, less 1.5 g of magnet. */
    @Test
    void whatWasDoneAddsUp() {
        MemoryGarage store = new MemoryGarage();
        new ExampleGarage(store, new JudgeChange(), CLOCK, ExampleEvening::on).putInAtFirstStart();
        String file = store.history("Sanderling").orElseThrow().presentStep().file();
        SetUp car = CarFile.read(file).accepted().orElseThrow().setUp();
        assertThat(car.massProperties().totalG())
                .isCloseTo(72 + 0.4 + 10 - 1.5, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(car.magnet()).isEmpty();
        assertThat(CarFile.read(file).accepted().orElseThrow().build().trim().shimStackMm())
                .isEqualTo(0.5);
    }
}
