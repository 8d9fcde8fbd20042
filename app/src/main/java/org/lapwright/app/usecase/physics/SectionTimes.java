package org.lapwright.app.usecase.physics;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.dynamics.LapTrace;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Stretch;
import org.lapwright.core.track.Stretches;

/**
 * Where one lap loses time against another on the same lane.
 *
 * @param sections straight by straight and turn by turn; their differences add up to that of the laps
 * @param lossS time lost up to each edge of the cells, s; negative where time was gained
 */
public record SectionTimes(List<SectionTime> sections, List<Double> lossS) {
    /** Copies the lists. */
    public SectionTimes {
        sections = List.copyOf(sections);
        lossS = List.copyOf(lossS);
    }

    /**
     * Compares two laps.
     *
     * @param lane the lane that both were driven on
     * @param here the lap in question
     * @param other what it is held against
     * @throws IllegalArgumentException if the laps have other cells than the lane
     */
    public static SectionTimes of(LaneCells lane, PredictedLap here, PredictedLap other) {
        if (here.trace().cells() != lane.count() || other.trace().cells() != lane.count()) {
            throw new IllegalArgumentException("the laps were driven on another lane; both need the %d cells of '%s'"
                    .formatted(lane.count(), lane.lane().name()));
        }
        List<SectionTime> sections = new ArrayList<>();
        for (Stretch stretch : Stretches.of(lane)) {
            sections.add(new SectionTime(stretch, timeS(here.trace(), stretch), timeS(other.trace(), stretch)));
        }
        List<Double> loss = new ArrayList<>();
        double lost = 0;
        loss.add(lost);
        for (int cell = 0; cell < lane.count(); cell++) {
            lost += here.trace().cellS(cell) - other.trace().cellS(cell);
            loss.add(lost);
        }
        return new SectionTimes(sections, loss);
    }

    private static double timeS(LapTrace trace, Stretch stretch) {
        double time = 0;
        for (int cell = stretch.fromCell(); cell < stretch.toCell(); cell++) {
            time += trace.cellS(cell);
        }
        return time;
    }

    /**
     * The times in one section.
     *
     * @param stretch the section
     * @param hereS time in it of the lap in question, s
     * @param otherS time in it of the other lap, s
     */
    public record SectionTime(Stretch stretch, double hereS, double otherS) {
        /** Time lost against the other, s; negative when gained. */
        public double lossS() {
            return hereS - otherS;
        }
    }
}
