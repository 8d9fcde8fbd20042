package org.lapwright.app.web.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.ShowKept;
import org.lapwright.app.usecase.ShowLadder;
import org.lapwright.core.trial.ladder.LadderEntry;

/**
 * In which order the cars of the bench stand. Cars that the order does not know come last, by name.
 *
 * @param value as a form sends it
 * @param first the cars that it knows, in their order
 * @param beside what is told beside a car in this order
 */
public record BenchOrder(String value, List<String> first, Map<String, String> beside) {
    /** By name. */
    public static final BenchOrder NAME = new BenchOrder("name", List.of(), Map.of());

    private static final String DRIVEN = "driven";
    private static final String PACE = "pace ";

    /** Copies list and map. */
    public BenchOrder {
        first = List.copyOf(first);
        beside = Map.copyOf(beside);
    }

    /** One to choose: as a form sends it, and in words. */
    public record Choice(String value, String words) {}

    /** The orders that there are, with one for each of the tracks that have laps. */
    public static List<Choice> choices(List<String> tracks) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(NAME.value, "by name"));
        choices.add(new Choice(DRIVEN, "driven last first"));
        tracks.forEach(track -> choices.add(new Choice(PACE + track, "by pace on " + track)));
        return choices;
    }

    /**
     * The order that a form sent; by name where there is none such.
     *
     * @param value as the form sent it
     * @param tracks those that have laps
     * @param kept knows the cars that were driven
     * @param ladders know the pace of cars on a track
     */
    public static BenchOrder of(String value, List<String> tracks, ShowKept kept, ShowLadder ladders) {
        if (value.equals(DRIVEN)) {
            return new BenchOrder(value, kept.cars(), Map.of());
        }
        String track = value.startsWith(PACE) ? value.substring(PACE.length()) : "";
        return tracks.contains(track) ? byPace(value, ladders.ladder(track)) : NAME;
    }

    private static BenchOrder byPace(String value, List<LadderEntry> ladder) {
        return new BenchOrder(
                value,
                ladder.stream().map(LadderEntry::car).toList(),
                ladder.stream().collect(Collectors.toMap(LadderEntry::car, entry -> Figures.seconds(entry.paceS()))));
    }

    /** Compares names of cars. */
    Comparator<String> comparator() {
        Map<String, Integer> places = new HashMap<>();
        first.forEach(car -> places.put(car, places.size()));
        return Comparator.comparingInt(car -> places.getOrDefault(car, places.size()));
    }
}
