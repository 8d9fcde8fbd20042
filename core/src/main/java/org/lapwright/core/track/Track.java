package org.lapwright.core.track;

import java.util.Comparator;
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
 * @param gates timing gates beside the timing line, in the order of the lap
 */
public record Track(String name, Surface surface, List<Lane> lanes, Power power, Layout layout, List<Gate> gates) {
    private static final int LONGEST_NAME = 80;
    private static final int MOST_LANES = 16;
    private static final int MOST_GATES = 12;
    private static final double LONGEST_LAP_M = 1000;
    private static final double MOST_APART_M = 5e-4;

    /** A track that is timed at its timing line only. */
    public Track(String name, Surface surface, List<Lane> lanes, Power power, Layout layout) {
        this(name, surface, lanes, power, layout, List.of());
    }

    /** Checks that lanes have different names and fit the layout. */
    public Track {
        name = Check.text(name, LONGEST_NAME, "name");
        lanes = List.copyOf(lanes);
        gates = inOrder(gates);
        if (lanes.isEmpty() || lanes.size() > MOST_LANES) {
            throw new IllegalArgumentException(
                    "lanes has %d entries; it needs from 1 to %d".formatted(lanes.size(), MOST_LANES));
        }
        checkPieces(layout, surface, lanes.size());
        Set<String> names = new HashSet<>();
        for (int i = 0; i < lanes.size(); i++) {
            Lane lane = lanes.get(i);
            if (!names.add(lane.name())) {
                throw new IllegalArgumentException(
                        "lanes has two called '%s'; give each its own name".formatted(lane.name()));
            }
            try {
                LanePath path = new LanePath(i, lane.offsetM());
                Check.inRange(layout.lengthM(path), 0.1, LONGEST_LAP_M, "its length", "m");
                checkEnd(layout, path);
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

    /** The same track fed in another way. */
    public Track withPower(Power other) {
        return new Track(name, surface, lanes, other, layout, gates);
    }

    /** Which way a lane goes round. */
    public LanePath path(Lane lane) {
        return new LanePath(lanes.indexOf(lane), lane.offsetM());
    }

    /** Length of a lane, m. */
    public double lengthM(Lane lane) {
        return layout.lengthM(path(lane));
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

    private static List<Gate> inOrder(List<Gate> gates) {
        if (gates.size() > MOST_GATES) {
            throw new IllegalArgumentException(
                    "gates has %d entries; at most %d fit".formatted(gates.size(), MOST_GATES));
        }
        List<Gate> sorted =
                gates.stream().sorted(Comparator.comparingDouble(Gate::at)).toList();
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).at() == sorted.get(i - 1).at()) {
                throw new IllegalArgumentException("gates '%s' and '%s' stand at the same place, %s; move one"
                        .formatted(
                                sorted.get(i - 1).name(),
                                sorted.get(i).name(),
                                Check.number(sorted.get(i).at())));
            }
        }
        return sorted;
    }

    private static void checkPieces(Layout layout, Surface surface, int lanes) {
        if (!(layout instanceof PieceLayout laid)) {
            return;
        }
        for (int i = 0; i < laid.pieces().size(); i++) {
            PieceExtras extras = laid.pieces().get(i).extras();
            int ends = extras.laneEndsMm().size();
            if (ends > 0 && ends != lanes) {
                throw new IllegalArgumentException(
                        "pieces[%d].lane_ends_mm has %d entries; it needs one for each of the %d lanes, in their order"
                                .formatted(i, ends, lanes));
            }
            if (extras.magnetic().orElse(false) && !surface.magnetic()) {
                throw new IllegalArgumentException(
                        "pieces[%d].magnetic is true on a track that is not magnetic; say surface.magnetic true, and magnetic false on the pieces without steel rails"
                                .formatted(i));
            }
        }
    }

    /** Two slots that have changed places once are one long slot; timing would see every second lap only. */
    private static void checkEnd(Layout layout, LanePath path) {
        if (layout instanceof PieceLayout laid && Math.abs(laid.endOffsetM(path) - path.offsetM()) > MOST_APART_M) {
            throw new IllegalArgumentException(
                    "it ends the lap %s mm from the centre line and began at %s mm; bring it back with lane_ends_mm on a later piece, or let lanes swap an even number of times"
                            .formatted(
                                    Check.number(1000 * laid.endOffsetM(path)), Check.number(1000 * path.offsetM())));
        }
    }
}
