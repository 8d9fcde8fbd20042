package org.lapwright.core.track;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.lapwright.core.units.Check;

/**
 * A track with its lanes.
 *
 * @param name what it is called
 * @param surface what the tyres run on
 * @param lanes the slots, at least one
 * @param power what feeds each lane
 * @param layout the course of the centre line
 */
public record Track(String name, Surface surface, List<Lane> lanes, Power power, Layout layout) {
    private static final int LONGEST_NAME = 80;
    private static final int MOST_LANES = 16;
    private static final double LONGEST_LAP_M = 1000;

    /** Checks that lanes have different names and fit the layout. */
    public Track {
        name = Check.text(name, LONGEST_NAME, "name");
        lanes = List.copyOf(lanes);
        if (lanes.isEmpty() || lanes.size() > MOST_LANES) {
            throw new IllegalArgumentException(
                    "lanes has %d entries; it needs from 1 to %d".formatted(lanes.size(), MOST_LANES));
        }
        Set<String> names = new HashSet<>();
        for (Lane lane : lanes) {
            if (!names.add(lane.name())) {
                throw new IllegalArgumentException(
                        "lanes has two called '%s'; give each its own name".formatted(lane.name()));
            }
            try {
                Check.inRange(layout.lengthM(lane.offsetM()), 0.1, LONGEST_LAP_M, "its length", "m");
            } catch (IllegalArgumentException unfit) {
                throw new IllegalArgumentException("lane '" + lane.name() + "': " + unfit.getMessage(), unfit);
            }
        }
    }

    /**
     * The lane with this name.
     *
     * @throws IllegalArgumentException if there is none, naming those that there are
     */
    public Lane requireLane(String laneName) {
        return lanes.stream()
                .filter(lane -> lane.name().equals(laneName))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the track has no lane '%s'; it has %s"
                        .formatted(
                                laneName,
                                String.join(", ", lanes.stream().map(Lane::name).toList()))));
    }

    /** Length of a lane, m. */
    public double lengthM(Lane lane) {
        return layout.lengthM(lane.offsetM());
    }

    /** A lane cut into the usual number of cells. */
    public LaneCells cells(Lane lane) {
        return cells(lane, LaneCells.usualCount(lengthM(lane)));
    }

    /**
     * A lane cut into about this many cells.
     *
     * @param cells 2 to 200,000; short pieces may add a few
     */
    public LaneCells cells(Lane lane, int cells) {
        return new LaneCells(this, lane, cells);
    }
}
