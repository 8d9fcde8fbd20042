package org.lapwright.app.web.next;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.advice.LearnedInWords;
import org.lapwright.app.usecase.advice.OwnLaps;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.fit.Learned;
import org.lapwright.core.track.Lane;
import org.lapwright.core.units.Interval;

/**
 * What the laps tell of a car.
 *
 * @param shell around it
 * @param choice of car and track
 * @param problem why nothing is told; empty when something is
 * @param from what it was learned from, a sentence
 * @param numbers what is learned
 * @param lanes what the car can do
 * @param advice what the laps cannot tell, and what would
 * @param caveats what to know before believing it
 * @param working how the draws came about
 */
public record LearnedPage(
        Shell shell,
        NextPage.Choice choice,
        String problem,
        String from,
        List<Row> numbers,
        List<LaneRow> lanes,
        List<String> advice,
        List<String> caveats,
        String working) {
    /** Half of the width of a picture is so many deviations of what was believed. */
    private static final double REACH = 3;

    private static final double WIDTH = 100;

    /** Copies the lists. */
    public LearnedPage {
        numbers = List.copyOf(numbers);
        lanes = List.copyOf(lanes);
        advice = List.copyOf(advice);
        caveats = List.copyOf(caveats);
    }

    /**
     * One number, with a picture: what was believed over what is left.
     *
     * @param label what people call it
     * @param before what was believed
     * @param after what the laps leave
     * @param told what they told
     * @param beforeLow left end of what was believed, one deviation either side, per cent
     * @param beforeWidth its width
     * @param afterLow left end of what is left
     * @param afterWidth its width
     */
    public record Row(
            String label,
            String before,
            String after,
            String told,
            double beforeLow,
            double beforeWidth,
            double afterLow,
            double afterWidth) {
        static Row of(Learned learned, Learned.Parameter number) {
            double middle = number.before().value();
            double scale = WIDTH / 2 / (REACH * number.before().plusMinus());
            double from = WIDTH / 2
                    + scale * (number.after().value() - middle - number.after().plusMinus());
            return new Row(
                    LearnedInWords.label(learned, number.name()),
                    LearnedInWords.value(number, number.before()),
                    LearnedInWords.value(number, number.after()),
                    LearnedInWords.told(number),
                    tenths(WIDTH / 2 * (1 - 1 / REACH)),
                    tenths(WIDTH / REACH),
                    tenths(Math.max(0, from)),
                    tenths(Math.min(
                            WIDTH - Math.max(0, from),
                            2 * scale * number.after().plusMinus())));
        }

        private static double tenths(double number) {
            return Math.round(10 * number) / 10.0;
        }
    }

    /**
     * One lane.
     *
     * @param lane its name
     * @param best the best lap, and where it lies
     * @param pace the pace that the driver would hold, and where it lies
     * @param held what was held there; a dash where nothing was driven with this set-up
     */
    public record LaneRow(String lane, String best, String pace, String held) {
        static LaneRow of(Learned.OnLane lane) {
            return new LaneRow(
                    lane.lane().map(Lane::name).orElse("all"),
                    between(lane.lapS(), lane.intervalS()),
                    between(lane.paceS(), lane.paceIntervalS()),
                    lane.measuredS().isPresent()
                            ? Figures.seconds(lane.measuredS().getAsDouble())
                            : Figures.NONE);
        }

        private static String between(double seconds, Interval interval) {
            int decimals = Figures.decimals(interval);
            return "%s (%s to %s)"
                    .formatted(
                            Figures.seconds(seconds),
                            Figures.fixed(interval.low(), decimals),
                            Figures.fixed(interval.high(), decimals));
        }
    }

    /** A page that says why nothing is told. */
    public static LearnedPage without(Shell shell, NextPage.Choice choice, String problem) {
        return new LearnedPage(shell, choice, problem, "", List.of(), List.of(), List.of(), List.of(), "");
    }

    /** The page of an answer. */
    public static LearnedPage of(Shell shell, NextPage.Choice choice, OwnLaps.Answer answer) {
        Learned learned = answer.learned();
        int runs = learned.diagnosis().paces();
        List<Row> rows = new ArrayList<>();
        learned.numbers().forEach(number -> rows.add(Row.of(learned, number)));
        String others = answer.others().isEmpty()
                ? ""
                : " The hand is the same on %s, so their laps tell of the driver too."
                        .formatted(String.join(", ", answer.others()));
        return new LearnedPage(
                shell,
                choice,
                "",
                (runs == 1 ? "Learned from 1 run" : "Learned from " + runs + " runs") + " of " + choice.car() + " on "
                        + choice.track() + "." + others,
                rows,
                learned.lanes().stream().map(LaneRow::of).toList(),
                LearnedInWords.advice(learned),
                LearnedInWords.caveats(learned),
                "Greatest split R̂ %s, at least %s independent draws, laps within %s of the curve, %s of the draws count after the solver drove them."
                        .formatted(
                                Figures.fixed(learned.diagnosis().greatestRHat(), 3),
                                Figures.fixed(learned.diagnosis().leastEffective(), 0),
                                Figures.percent(learned.diagnosis().curveMisfit()),
                                Figures.percent(learned.diagnosis().exactShare())));
    }
}
