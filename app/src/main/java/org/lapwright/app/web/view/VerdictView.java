package org.lapwright.app.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.VerdictInWords;
import org.lapwright.app.web.chart.IntervalChart;
import org.lapwright.app.web.chart.LapChart;
import org.lapwright.app.web.chart.LooksChart;
import org.lapwright.core.trial.Consistency;
import org.lapwright.core.trial.Look;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.Working;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * A verdict with its pictures and its working.
 *
 * @param code of the decision
 * @param headline the verdict on pace
 * @param confidence how often such a verdict is wrong, or how many more laps one takes; may be empty
 * @param consistency the verdict on consistency
 * @param leastSeen what the driver could see at all; empty with too few laps
 * @param leftOut how many laps do not count
 * @param offs how often the car came off; empty when unknown
 * @param caveats what to know beside it
 * @param pictures what is drawn
 * @param working what is behind it
 */
public record VerdictView(
        String code,
        String headline,
        String confidence,
        String consistency,
        String leastSeen,
        String leftOut,
        String offs,
        List<String> caveats,
        Pictures pictures,
        WorkingView working) {
    /** Copies the list. */
    public VerdictView {
        caveats = List.copyOf(caveats);
    }

    /** The view of a verdict and the settings it was judged by. */
    public static VerdictView of(Verdict verdict, TrialSettings settings) {
        VerdictInWords words = new VerdictInWords(verdict, settings);
        return new VerdictView(
                verdict.decision().code(),
                words.headline(),
                words.confidence() + words.needed(),
                words.consistency(),
                words.leastSeen(),
                leftOut(verdict),
                words.offs(),
                words.caveats(),
                Pictures.of(verdict, words.margin().orElse(0)),
                WorkingView.of(verdict));
    }

    private static String leftOut(Verdict verdict) {
        int before = verdict.before().laps().size() - verdict.before().cleanLaps();
        int after = verdict.after().laps().size() - verdict.after().cleanLaps();
        return before + after == 0
                ? "Every lap counts for the pace."
                : "Left out of the pace: %d of %s before, %d of %s after, each with its reason in the working."
                        .formatted(
                                before,
                                Figures.laps(verdict.before().laps().size()),
                                after,
                                Figures.laps(verdict.after().laps().size()));
    }

    /** The verdict in short, for those who hear it. */
    public String said() {
        return confidence.isEmpty() ? headline : headline + " " + confidence;
    }

    /**
     * What is drawn; each is absent as long as there is too little to draw.
     *
     * @param laps every lap
     * @param difference the difference with its interval
     * @param ratio the ratio of spreads with its interval
     * @param looks how the interval closed in
     */
    public record Pictures(
            Optional<LapChart> laps,
            Optional<IntervalChart> difference,
            Optional<IntervalChart> ratio,
            Optional<LooksChart> looks) {

        private static Pictures of(Verdict verdict, double margin) {
            boolean anyLaps =
                    verdict.runs().stream().anyMatch(run -> !run.stint().laps().isEmpty());
            return new Pictures(
                    anyLaps ? Optional.of(LapChart.of(verdict.runs())) : Optional.empty(),
                    verdict.difference()
                            .map(difference ->
                                    IntervalChart.ofDifference(difference.seconds(), difference.intervalS(), margin)),
                    verdict.consistency().flatMap(Pictures::ratio),
                    verdict.working().flatMap(working -> looks(working, verdict, margin)));
        }

        private static Optional<IntervalChart> ratio(Consistency consistency) {
            return consistency
                    .spreadRatio()
                    .flatMap(ratio ->
                            consistency.ratioInterval().map(interval -> IntervalChart.ofRatio(ratio, interval)));
        }

        private static Optional<LooksChart> looks(Working working, Verdict verdict, double margin) {
            long finite = working.looks().stream()
                    .filter(look -> Double.isFinite(look.halfWidth()))
                    .map(Look::lap)
                    .count();
            return finite < 2 || verdict.before().paceS().isEmpty()
                    ? Optional.empty()
                    : Optional.of(LooksChart.of(
                            working.looks(), verdict.before().paceS().getAsDouble(), margin));
        }
    }

    /**
     * What is behind a verdict.
     *
     * @param runs every lap of every run
     * @param leftOut the laps that do not count
     * @param sides what each side amounts to
     * @param numbers the numbers of the comparison
     */
    public record WorkingView(
            List<RunTable> runs, List<LapLine> leftOut, List<Numbers.SideRow> sides, List<Numbers.Row> numbers) {
        /** Copies the lists. */
        public WorkingView {
            runs = List.copyOf(runs);
            leftOut = List.copyOf(leftOut);
            sides = List.copyOf(sides);
            numbers = List.copyOf(numbers);
        }

        private static WorkingView of(Verdict verdict) {
            List<RunTable> runs = new ArrayList<>();
            for (int i = 0; i < verdict.runs().size(); i++) {
                var judged = verdict.runs().get(i);
                runs.add(
                        new RunTable("Run %d, %s".formatted(i + 1, judged.side().code()), LapLine.of(i + 1, judged)));
            }
            return new WorkingView(
                    runs,
                    runs.stream()
                            .flatMap(run -> run.laps().stream())
                            .filter(lap -> !lap.counts())
                            .toList(),
                    List.of(Numbers.side("Before", verdict.before()), Numbers.side("After", verdict.after())),
                    Numbers.of(verdict));
        }
    }

    /**
     * The laps of one run.
     *
     * @param title its number and side
     * @param laps in the order driven
     */
    public record RunTable(String title, List<LapLine> laps) {
        /** Copies the list. */
        public RunTable {
            laps = List.copyOf(laps);
        }
    }
}
