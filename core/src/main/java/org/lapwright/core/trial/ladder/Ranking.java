package org.lapwright.core.trial.ladder;

import java.util.List;

/**
 * The cars on one track, ranked.
 *
 * @param entries the fastest first, each as it would be on the average of the lanes
 * @param lanes what each lane does, the fastest first; one alone does nothing
 */
public record Ranking(List<LadderEntry> entries, List<LaneEffect> lanes) {
    /** Nobody has driven. */
    public static final Ranking NONE = new Ranking(List.of(), List.of());

    /** Names of the lanes that have one, the fastest first. */
    public List<String> laneNames() {
        return lanes.stream()
                .map(LaneEffect::lane)
                .filter(name -> !name.isEmpty())
                .toList();
    }

    /** Copies the lists. */
    public Ranking {
        entries = List.copyOf(entries);
        lanes = List.copyOf(lanes);
    }
}
