package org.lapwright.app.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.trial.Difference;
import org.lapwright.core.trial.Look;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.Working;

/** The numbers behind a verdict, each with its unit and what it means. */
public final class Numbers {
    private final List<Row> rows = new ArrayList<>();

    private Numbers() {}

    /** All numbers of a verdict. */
    static List<Row> of(Verdict verdict) {
        Numbers numbers = new Numbers();
        verdict.difference().ifPresent(numbers::difference);
        verdict.working().ifPresent(numbers::working);
        return List.copyOf(numbers.rows);
    }

    private void difference(Difference difference) {
        add("difference", Figures.signed(difference.seconds(), 3) + " s", "after minus before, a lap; minus is faster");
        add(
                "its interval",
                "%s to %s s"
                        .formatted(
                                Figures.signed(difference.intervalS().low(), 3),
                                Figures.signed(difference.intervalS().high(), 3)),
                "repeated confidence interval at %s, valid however often one looked"
                        .formatted(Figures.percent(difference.confidence())));
        add(
                "as a share",
                "%s %% (%s to %s %%)"
                        .formatted(
                                Figures.signed(100 * difference.share(), 2),
                                Figures.signed(100 * difference.intervalShare().low(), 2),
                                Figures.signed(100 * difference.intervalShare().high(), 2)),
                "the same as a share of the pace before");
    }

    private void working(Working working) {
        add("plan", working.planText(), "runs planned; the evidence is measured against it");
        add("α", Figures.percent(working.alpha()), "chance of a wrong “faster” or “slower” that is put up with");
        add("margin", Figures.percent(working.levelMargin()), "share of a lap that does not matter");
        add("φ", Figures.fixed(working.autocorrelation(), 3), "how much a lap takes after the one before it, 0 to 0.8");
        add("γ", Figures.fixed(working.runShare(), 3), "variance from run to run over variance from lap to lap");
        add("σ", Figures.percent(working.lapScatter()), "standard deviation of a clean lap about the fit");
        add("drift", Figures.signed(100 * working.driftShare(), 2) + " %", "change over 60 laps, taken out");
        add(
                "warm-up",
                Figures.signed(100 * working.warmUpShare(), 2) + " %",
                "extra time of a run's first lap, taken out");
        add(
                "belief",
                "φ %s (weighs %s laps), γ %s"
                        .formatted(
                                Figures.significant(working.prior().autocorrelation(), 3),
                                Figures.significant(working.prior().autocorrelationLaps(), 3),
                                Figures.significant(working.prior().runShare(), 3)),
                learned(working.prior().sessions()));
        if (!working.looks().isEmpty()) {
            look(working.looks().get(working.looks().size() - 1));
        }
    }

    private static String learned(int sessions) {
        return switch (sessions) {
            case 0 -> "usual belief about a driver's noise; nothing learned yet";
            case 1 -> "learned from 1 earlier session kept here";
            default -> "learned from %d earlier sessions kept here".formatted(sessions);
        };
    }

    private void look(Look last) {
        add("looks at", Figures.laps(last.lap()), "laps driven in all, odd ones included");
        add("δ", Figures.signed(last.delta(), 5), "estimate of log after minus log before");
        add("standard error", Figures.fixed(last.standardError(), 5), "of δ");
        add("ν", Figures.significant(last.degreesOfFreedom(), 3), "degrees of freedom of the standard error");
        add("information", Figures.significant(last.information(), 4), "in units of one over the variance of a lap");
        add(
                "information fraction",
                Figures.fixed(last.informationFraction(), 3),
                "share of the plan's information that is in; 1 at the plan's end");
        add("z", Figures.signed(last.z(), 3), "t turned into a normal deviate of the same tail");
        add("boundary", Figures.fixed(last.boundary(), 3), "what z has to reach at this information, either way");
        add("half width", Figures.fixed(last.halfWidth(), 5), "half the interval of δ");
    }

    /** What a side amounts to, in the order of the columns' headings. */
    static SideRow side(String name, Stint stint) {
        return new SideRow(
                name,
                stint.cleanLaps() + " of " + Figures.laps(stint.laps().size()),
                seconds(stint.paceS()),
                seconds(stint.spreadS()),
                seconds(stint.madS()),
                seconds(stint.heldS())
                        + stint.heldIntervalS()
                                .map(held -> " (%s to %s)"
                                        .formatted(Figures.fixed(held.low(), 3), Figures.fixed(held.high(), 3)))
                                .orElse(""),
                seconds(stint.bestS()),
                stint.driftSPerLap().isPresent()
                        ? Figures.signed(stint.driftSPerLap().getAsDouble(), 4) + " s"
                        : Figures.NONE,
                stint.effectiveLaps().isPresent()
                        ? Figures.fixed(stint.effectiveLaps().getAsDouble(), 1)
                        : Figures.NONE,
                seconds(stint.timePerLapS()));
    }

    private static String seconds(OptionalDouble value) {
        return value.isPresent() ? Figures.seconds(value.getAsDouble()) : Figures.NONE;
    }

    private void add(String name, String value, String meaning) {
        rows.add(new Row(name, value, meaning));
    }

    /**
     * One number.
     *
     * @param name as the method calls it
     * @param value with its unit
     * @param meaning in words
     */
    public record Row(String name, String value, String meaning) {}

    /**
     * What one side amounts to.
     *
     * @param side before or after
     * @param clean how many laps count
     * @param pace robust centre
     * @param spread by Q_n
     * @param mad spread by the median absolute deviation
     * @param held what four in five laps meet
     * @param best best clean lap
     * @param drift a lap
     * @param effective how many independent laps these are worth
     * @param timePerLap all time over all laps
     */
    public record SideRow(
            String side,
            String clean,
            String pace,
            String spread,
            String mad,
            String held,
            String best,
            String drift,
            String effective,
            String timePerLap) {}
}
