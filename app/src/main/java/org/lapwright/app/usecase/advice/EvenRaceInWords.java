package org.lapwright.app.usecase.advice;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.advice.EvenRace;
import org.lapwright.core.car.Ballast;

/** What makes two cars run level, for people. */
public final class EvenRaceInWords {
    private EvenRaceInWords() {}

    /** How they stand, then any one of what levels them. */
    public static List<String> of(String first, String second, EvenRace.Answer answer) {
        List<String> said = new ArrayList<>();
        said.add("%s does %s, %s does %s."
                .formatted(first, Figures.seconds(answer.firstS()), second, Figures.seconds(answer.secondS())));
        if (answer.isLevel()) {
            said.add("They are level as they are.");
            return said;
        }
        String faster = answer.firstIsFaster() ? first : second;
        if (answer.ways().isEmpty()) {
            said.add("Nothing in reason holds %s back enough: change lanes, or give the other one a start."
                    .formatted(faster));
        }
        answer.ways().forEach(way -> said.add(way(faster, way)));
        return said;
    }

    private static String way(String faster, EvenRace.Way way) {
        String then = "; it then does " + Figures.seconds(way.lapS());
        if (way.by() == EvenRace.By.VOLTAGE) {
            return "Lower the supply of the lane of %s to %s V%s."
                    .formatted(faster, Figures.fixed(way.amount(), 2), then);
        }
        Ballast piece = way.ballast().orElseThrow();
        return "Put %s g on %s, low, %s mm ahead of the rear axle%s%s."
                .formatted(
                        Figures.fixed(way.amount(), 1),
                        faster,
                        Figures.fixed(piece.xMm().value(), 0),
                        piece.yMm().value() == 0
                                ? ""
                                : ", %s mm to the %s"
                                        .formatted(
                                                Figures.fixed(
                                                        Math.abs(piece.yMm().value()), 0),
                                                piece.yMm().value() > 0 ? "left" : "right"),
                        then);
    }
}
