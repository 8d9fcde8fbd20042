package org.lapwright.app.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapwright.app.usecase.ShelfStore.NewPart;
import org.lapwright.app.usecase.ShelfStore.ShelfRecord;
import org.lapwright.core.car.shelf.Happened;
import org.lapwright.core.car.shelf.LapsDriven;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;

/** The parts of a {@link MemoryGarage}. */
final class MemoryShelf {
    private final List<Part> parts = new ArrayList<>();
    private final List<Happened> happened = new ArrayList<>();
    private final Map<String, Part> added = new HashMap<>();
    private final Set<String> said = new HashSet<>();

    Part add(NewPart part, String request) {
        return added.computeIfAbsent(request, fresh -> {
            Part numbered = new Part(parts.size() + 1L, part.kind(), part.name(), part.note());
            parts.add(numbered);
            return numbered;
        });
    }

    boolean has(long part) {
        return part >= 1 && part <= parts.size();
    }

    boolean isSaid(String request) {
        return said.contains(request);
    }

    void add(long part, PartEvent event, String request, Instant at) {
        if (said.add(request)) {
            happened.add(new Happened(part, event, at));
        }
    }

    ShelfRecord all(List<LapsDriven> driven) {
        Set<String> cars = new HashSet<>();
        for (Happened one : happened) {
            if (one.event() instanceof PartEvent.Fitted fitted) {
                cars.add(fitted.car());
            }
        }
        return new ShelfRecord(
                parts,
                happened,
                driven.stream().filter(laps -> cars.contains(laps.car())).toList());
    }
}
