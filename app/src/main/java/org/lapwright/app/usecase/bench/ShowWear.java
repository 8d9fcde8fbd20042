package org.lapwright.app.usecase.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.GarageStore.SetUpRun;
import org.lapwright.app.usecase.KnownDriver;
import org.lapwright.app.usecase.ShelfStore.ShelfRecord;
import org.lapwright.core.car.shelf.RunOnPart;
import org.lapwright.core.car.shelf.Shelf;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.Sorting;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.wear.Wear;
import org.lapwright.core.trial.wear.WearRun;

/** Do tyres, braid or any other part make the car slower the more laps they have run? */
public final class ShowWear {
    private final GarageStore store;
    private final KnownDriver knownDriver;

    /** Wear of the parts in {@code store}. */
    public ShowWear(GarageStore store, KnownDriver knownDriver) {
        this.store = store;
        this.knownDriver = knownDriver;
    }

    /** A run, and the laps that the part had run before it. */
    private record Driven(SetUpRun run, long lapsBefore) {
        /** Runs of one name differ by wear and chance alone. */
        String group(String car) {
            return "%s, set-up %d, %s, %s".formatted(car, run.setUp(), run.track(), run.lane());
        }
    }

    /** What the laps on a part have done to the pace; empty where too few runs tell. */
    public Optional<Wear> wear(long part) {
        ShelfRecord record = store.shelf();
        Map<String, List<Driven>> groups = new LinkedHashMap<>();
        Map<String, Map<Instant, List<RunOnPart>>> byCar = new LinkedHashMap<>();
        for (RunOnPart each : Shelf.runsOn(part, record.parts(), record.happened(), record.driven())) {
            if (each.driven().laps() == 0) {
                continue;
            }
            byCar.computeIfAbsent(each.driven().car(), car -> new HashMap<>())
                    .computeIfAbsent(each.driven().at(), at -> new ArrayList<>())
                    .add(each);
        }
        byCar.forEach((car, runs) -> {
            for (Driven driven : driven(car, runs)) {
                groups.computeIfAbsent(driven.group(car), name -> new ArrayList<>())
                        .add(driven);
            }
        });
        List<WearRun> all = new ArrayList<>();
        groups.forEach((name, driven) -> all.addAll(paces(name, driven)));
        return Wear.of(all, knownDriver.prior());
    }

    /** The runs of a car that the part was on for: those of one comparison come in their order, here as on the shelf. */
    private List<Driven> driven(String car, Map<Instant, List<RunOnPart>> onPart) {
        List<Driven> driven = new ArrayList<>();
        Map<Instant, Integer> next = new HashMap<>();
        for (SetUpRun run : store.runsOf(car)) {
            if (run.run().laps().isEmpty()) {
                continue;
            }
            int place = next.merge(run.at(), 1, Integer::sum) - 1;
            List<RunOnPart> there = onPart.getOrDefault(run.at(), List.of());
            if (place < there.size()) {
                driven.add(new Driven(run, there.get(place).lapsBefore()));
            }
        }
        return driven;
    }

    private static List<WearRun> paces(String group, List<Driven> driven) {
        List<TimedRun> runs = driven.stream().map(each -> each.run().run()).toList();
        List<List<Lap>> sorted = Sorting.sort(runs);
        List<WearRun> paces = new ArrayList<>();
        for (int i = 0; i < driven.size(); i++) {
            Stint stint = Stint.of(sorted.get(i));
            if (stint.paceS().isPresent()) {
                double middle = driven.get(i).lapsBefore() + stint.laps().size() / 2.0;
                paces.add(new WearRun(
                        group, middle, stint.cleanLaps(), stint.paceS().getAsDouble()));
            }
        }
        return paces;
    }
}
