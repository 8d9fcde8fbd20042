package org.lapwright.app.web.view;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.trial.ladder.LaneEffect;
import org.lapwright.core.trial.ladder.Ranking;

/**
 * What the lanes of a track do, and which of them is looked at.
 *
 * @param names the lanes to choose from; none where there is one lane
 * @param chosen the one looked at; empty for all of them
 * @param effects a sentence for each lane; none where one is looked at
 */
public record LaneView(List<String> names, String chosen, List<String> effects) {
    /** One lane, or none. */
    public static final LaneView NONE = new LaneView(List.of(), "", List.of());

    private static final double SURE = 1.959963984540054;

    /** Copies the lists. */
    public LaneView {
        names = List.copyOf(names);
        effects = List.copyOf(effects);
    }

    /** The lanes of a ranking of all of them. */
    public static LaneView of(Ranking all, String chosen) {
        if (all.lanes().size() < 2) {
            return NONE;
        }
        List<String> names = all.laneNames().stream().sorted().toList();
        return new LaneView(names, chosen, chosen.isEmpty() ? effects(all) : List.of());
    }

    private static String name(LaneEffect effect) {
        return effect.lane().isEmpty() ? "No lane said" : effect.lane();
    }

    private static List<String> effects(Ranking all) {
        double paceS = all.entries().get(0).paceS();
        List<String> sentences = new ArrayList<>();
        for (LaneEffect effect : all.lanes()) {
            if (!effect.told()) {
                sentences.add("%s: nobody knows; no car has laps in one set-up here and on another lane."
                        .formatted(name(effect)));
                continue;
            }
            double half = SURE * effect.standardError();
            sentences.add("%s: %s s a lap against the average lane, somewhere between %s and %s."
                    .formatted(
                            name(effect),
                            Figures.signed(paceS * effect.log(), 3),
                            Figures.signed(paceS * (effect.log() - half), 3),
                            Figures.signed(paceS * (effect.log() + half), 3)));
        }
        return sentences;
    }
}
