package org.lapwright.core.car.shelf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.core.car.change.PartPlace;

/**
 * All parts as they stand, worked out from what happened to them and from the laps of the cars they were on. Nothing of it is
 * stored, so that it cannot differ from what happened.
 *
 * @param parts in the order in which they were bought or written down
 */
public record Shelf(List<PartState> parts) {
    /** Copies the list. */
    public Shelf {
        parts = List.copyOf(parts);
    }

    /**
     * The shelf.
     *
     * @param parts all parts
     * @param happened to them, in its order; what names no part of these is passed over
     * @param driven laps of the cars, in any order: they count for whatever was on the car when they were kept
     */
    public static Shelf of(List<Part> parts, List<Happened> happened, List<LapsDriven> driven) {
        return new Shelf(lives(parts, happened, driven).values().stream()
                .map(Life::state)
                .toList());
    }

    /**
     * The runs that a part was on the car for, in the order in which they were kept.
     *
     * @param id number of the part
     * @param parts all parts
     * @param happened to them, in its order
     * @param driven laps of the cars, in any order
     */
    public static List<RunOnPart> runsOn(long id, List<Part> parts, List<Happened> happened, List<LapsDriven> driven) {
        Life life = lives(parts, happened, driven).get(id);
        return life == null ? List.of() : List.copyOf(life.runs);
    }

    private static Map<Long, Life> lives(List<Part> parts, List<Happened> happened, List<LapsDriven> driven) {
        Map<Long, Life> lives = new LinkedHashMap<>();
        parts.forEach(part -> lives.put(part.id(), new Life(part)));
        List<LapsDriven> inOrder = new ArrayList<>(driven);
        inOrder.sort(Comparator.comparing(LapsDriven::at));
        int next = 0;
        for (Happened one : happened) {
            while (next < inOrder.size() && inOrder.get(next).at().isBefore(one.at())) {
                drive(lives, inOrder.get(next++));
            }
            Life life = lives.get(one.part());
            if (life != null) {
                life.take(one.event(), lives);
            }
        }
        inOrder.subList(next, inOrder.size()).forEach(laps -> drive(lives, laps));
        return lives;
    }

    /** A part by its number. */
    public Optional<PartState> find(long id) {
        return parts.stream().filter(state -> state.part().id() == id).findFirst();
    }

    private static void drive(Map<Long, Life> lives, LapsDriven laps) {
        lives.values().forEach(life -> life.drive(laps));
    }

    /** One part while its story is told. */
    private static final class Life {
        private final Part part;
        private final List<RunOnPart> runs = new ArrayList<>();
        private final Map<String, Integer> every = new LinkedHashMap<>();
        private final Map<String, Long> doneAtLap = new LinkedHashMap<>();
        private Optional<String> car = Optional.empty();
        private long laps;
        private boolean away;

        Life(Part part) {
            this.part = part;
        }

        void drive(LapsDriven driven) {
            if (car.isPresent() && car.get().equals(driven.car())) {
                runs.add(new RunOnPart(driven, laps));
                laps += driven.laps();
            }
        }

        void take(PartEvent event, Map<Long, Life> all) {
            if (event instanceof PartEvent.Fitted fitted) {
                part.kind().place().ifPresent(place -> free(fitted.car(), place, all));
                car = Optional.of(fitted.car());
                away = false;
            } else if (event instanceof PartEvent.LapsAdded added) {
                laps = Math.max(0, laps + added.laps());
                doneAtLap.replaceAll((service, at) -> Math.min(at, laps));
            } else if (event instanceof PartEvent.Reminder reminder) {
                remind(reminder);
            } else if (event instanceof PartEvent.Serviced serviced) {
                doneAtLap.computeIfPresent(serviced.service(), (service, at) -> laps);
            } else if (event instanceof PartEvent.BroughtBack) {
                away = false;
            } else {
                car = Optional.empty();
                away = away || event instanceof PartEvent.PutAway;
            }
        }

        private static void free(String car, PartPlace place, Map<Long, Life> all) {
            for (Life other : all.values()) {
                if (other.car.equals(Optional.of(car))
                        && other.part.kind().place().equals(Optional.of(place))) {
                    other.car = Optional.empty();
                }
            }
        }

        private void remind(PartEvent.Reminder reminder) {
            if (reminder.everyLaps() == 0) {
                every.remove(reminder.service());
                doneAtLap.remove(reminder.service());
            } else {
                every.put(reminder.service(), reminder.everyLaps());
                doneAtLap.putIfAbsent(reminder.service(), laps);
            }
        }

        PartState state() {
            List<PartState.Service> services = new ArrayList<>();
            every.forEach((name, often) ->
                    services.add(new PartState.Service(name, often, laps - doneAtLap.getOrDefault(name, laps))));
            return new PartState(part, car, laps, services, away);
        }
    }
}
