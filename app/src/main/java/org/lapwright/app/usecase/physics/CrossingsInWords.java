package org.lapwright.app.usecase.physics;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.track.Crossing;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LanePlan;
import org.lapwright.core.track.Track;

/** Where a track passes over itself, and whether a car fits under it. */
public final class CrossingsInWords {
    /** What most cars need under a bridge, rail to underside included: common practice, no source. */
    private static final double CAR_M = 0.07;

    private static final double LEVEL_M = 0.02;
    private static final int MOST = 6;

    private CrossingsInWords() {}

    /** A sentence for each crossing of the first lane; the other lanes cross beside it. */
    public static List<String> of(Track track) {
        Lane lane = track.lanes().get(0);
        LanePlan plan = LanePlan.of(track, lane);
        double cellM = track.lengthM(lane) / plan.cells();
        List<String> said = new ArrayList<>();
        List<Crossing> crossings = plan.crossings();
        for (Crossing crossing : crossings.subList(0, Math.min(MOST, crossings.size()))) {
            said.add(sentence(lane, crossing, cellM));
        }
        if (crossings.size() > MOST) {
            said.add("And it crosses itself in %d more places.".formatted(crossings.size() - MOST));
        }
        return said;
    }

    private static String sentence(Lane lane, Crossing crossing, double cellM) {
        String first = Figures.fixed((crossing.first() + 0.5) * cellM, 2);
        String second = Figures.fixed((crossing.second() + 0.5) * cellM, 2);
        double height = Math.abs(crossing.riseM());
        if (height < LEVEL_M) {
            return "Lane %s crosses itself on the level, %s m and %s m into the lap: cars can meet there."
                    .formatted(lane.name(), first, second);
        }
        boolean later = crossing.riseM() > 0;
        String over = "Lane %s passes over itself: the bridge is %s m into the lap, over %s m, %s mm higher"
                .formatted(
                        lane.name(), later ? second : first, later ? first : second, Figures.fixed(1000 * height, 0));
        return height < CAR_M ? over + "; most cars need some 70 mm." : over + ".";
    }
}
