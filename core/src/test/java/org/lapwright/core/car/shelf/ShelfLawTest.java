package org.lapwright.core.car.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.lapwright.core.car.change.PartPlace;

/** What holds for any story of any parts. */
class ShelfLawTest {
    private static final List<String> CARS = List.of("Dunlin", "Knot");
    private static final List<String> KINDS = List.of("rear tyres", "motor", "axle");

    @Property(tries = 300)
    void onePlaceHoldsOnePartAndNoLapIsCountedTwice(@ForAll long seed) {
        Random random = new Random(seed);
        List<Part> parts = new ArrayList<>();
        for (int id = 1; id <= 8; id++) {
            parts.add(new Part(id, new PartKind(KINDS.get(random.nextInt(3))), "part " + id, ""));
        }
        List<Happened> happened = new ArrayList<>();
        List<LapsDriven> driven = new ArrayList<>();
        for (int second = 0; second < 60; second++) {
            Instant at = Instant.ofEpochSecond(second);
            happened.add(new Happened(1 + random.nextInt(8), event(random), at));
            driven.add(new LapsDriven(CARS.get(random.nextInt(2)), random.nextInt(30), at));
        }
        Shelf shelf = Shelf.of(parts, happened, driven);
        long all = driven.stream().mapToLong(LapsDriven::laps).sum();
        for (PartPlace place : List.of(PartPlace.REAR_TYRES, PartPlace.MOTOR)) {
            List<PartState> there = shelf.parts().stream()
                    .filter(state -> state.part().kind().place().equals(java.util.Optional.of(place)))
                    .toList();
            List<String> cars =
                    there.stream().flatMap(state -> state.car().stream()).toList();
            assertThat(cars).doesNotHaveDuplicates();
            assertThat(there.stream().mapToLong(PartState::laps).sum()).isLessThanOrEqualTo(all);
        }
        assertThat(shelf.parts()).allSatisfy(state -> {
            assertThat(state.car().isPresent() && state.isAway()).isFalse();
            assertThat(state.services()).allMatch(service -> service.lapsSince() >= 0);
        });
        assertThat(shelf.parts().stream().map(PartState::part).collect(Collectors.toList()))
                .isEqualTo(parts);
    }

    private static PartEvent event(Random random) {
        return switch (random.nextInt(7)) {
            case 0 -> new PartEvent.TakenOff();
            case 1 -> new PartEvent.PutAway();
            case 2 -> new PartEvent.BroughtBack();
            case 3 -> new PartEvent.Reminder("oil", random.nextInt(3));
            case 4 -> new PartEvent.Serviced("oil");
            default -> new PartEvent.Fitted(CARS.get(random.nextInt(2)));
        };
    }
}
