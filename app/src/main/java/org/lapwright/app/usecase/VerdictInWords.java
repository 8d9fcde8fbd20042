package org.lapwright.app.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.lapwright.core.trial.Caveat;
import org.lapwright.core.trial.Consistency;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Difference;
import org.lapwright.core.trial.LapsNeeded;
import org.lapwright.core.trial.OffRates;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.TrialSettings;
import org.lapwright.core.units.Interval;

/**
 * A verdict in plain words, the same on every page and on the command line.
 *
 * <p>No praise, and no statement without the interval that belongs to it.
 */
public final class VerdictInWords {
    /** A difference of more than this share of a lap is none that a change makes. */
    /** A ratio of spreads beyond this, and beneath one over it, tells nothing. */
    private static final double MOST_RATIO = 5;

    private static final double MOST_TOLD = 0.25;

    private final Verdict verdict;
    private final TrialSettings settings;

    /** The words for a verdict and the settings it was judged by. */
    public VerdictInWords(Verdict verdict, TrialSettings settings) {
        this.verdict = verdict;
        this.settings = settings;
    }

    /** The verdict on pace in one or two sentences. */
    public String headline() {
        if (verdict.difference().isEmpty()) {
            return "Too few laps to compare yet: it takes 5 clean laps a side and 10 in all. So far %s before, %s after."
                    .formatted(
                            Figures.count(verdict.before().cleanLaps()),
                            Figures.count(verdict.after().cleanLaps()));
        }
        Difference difference = verdict.difference().get();
        return switch (verdict.decision()) {
            case FASTER, SLOWER -> decided(difference);
            case LEVEL -> level(difference);
            case MORE_LAPS ->
                isWideOpen(difference.intervalS())
                        ? "Not sure yet: so few laps of the plan leave the difference wide open."
                        : "Not sure yet: %s.".formatted(range(difference.intervalS()));
        };
    }

    /** Early in a plan the interval can be wider than any lap; its ends are then numbers, but say nothing. */
    private boolean isWideOpen(Interval interval) {
        double pace = verdict.before().paceS().orElse(Double.POSITIVE_INFINITY);
        return Math.max(-interval.low(), interval.high()) > MOST_TOLD * pace;
    }

    /** How many more laps should settle it; empty once it is settled. */
    public String needed() {
        return verdict.decision() == Decision.MORE_LAPS && verdict.difference().isPresent()
                ? needed(verdict.needed(), margin())
                : "";
    }

    /** What the driver could see at all; empty with too few laps. */
    public String leastSeen() {
        return verdict.leastSeenS().isPresent()
                ? "With laps that scatter so, the smallest gain to be seen in %s a side is about %s s a lap."
                        .formatted(
                                Figures.laps(Verdict.USUAL_LAPS_A_SIDE),
                                Figures.significant(verdict.leastSeenS().getAsDouble(), 2))
                : "";
    }

    /** How often such a verdict is wrong; empty where there is none. */
    public String confidence() {
        if (verdict.decision() == Decision.MORE_LAPS) {
            return "";
        }
        return "Looked at after every lap, such a verdict is wrong at most once in "
                + inWords(Math.round(1 / settings.alpha())) + ".";
    }

    /** The verdict on consistency. */
    public String consistency() {
        if (verdict.consistency().isEmpty()) {
            return "Consistency: too few laps to tell.";
        }
        Consistency consistency = verdict.consistency().get();
        String opening = switch (consistency.decision()) {
            case STEADIER -> "After is steadier: ";
            case WILDER -> "After is wilder: ";
            case MORE_LAPS -> "Steadier or wilder is not sure yet: ";
        };
        return opening
                + consistency
                        .spreadRatio()
                        .map(ratio -> "the spread is %s times that before%s."
                                .formatted(
                                        Figures.fixed(ratio, 2),
                                        consistency
                                                .ratioInterval()
                                                .map(VerdictInWords::between)
                                                .orElse("")))
                        .orElse("the laps are too few or too alike to give a ratio of spreads.");
    }

    /** How often the car came off on either side. */
    public String offs() {
        if (verdict.consistency().isEmpty()) {
            return "";
        }
        OffRates offs = verdict.consistency().get().offs();
        if (offs.before().offs() + offs.after().offs() == 0) {
            return "No lap was lost to an off on either side.";
        }
        String counts = "Lost to an off: %s of %s before, %s of %s after."
                .formatted(
                        Figures.count(offs.before().offs()),
                        Figures.laps(offs.before().laps()),
                        Figures.count(offs.after().offs()),
                        Figures.laps(offs.after().laps()));
        return counts
                + (offs.fisherP() < settings.alpha()
                        ? " Chance alone would seldom part them so far (p = %s).".formatted(p(offs.fisherP()))
                        : " Chance alone could do that (p = %s).".formatted(p(offs.fisherP())));
    }

    /** What to know beside the verdict, most telling first. */
    public List<String> caveats() {
        List<String> sentences = new ArrayList<>();
        for (Caveat caveat : Caveat.values()) {
            boolean said = caveat == Caveat.TOO_FEW_LAPS && verdict.difference().isEmpty();
            if (verdict.caveats().contains(caveat) && !said) {
                sentences.add(sentence(caveat));
            }
        }
        return sentences;
    }

    /** The margin that does not matter, s a lap; absent without a pace before. */
    public OptionalDouble margin() {
        return verdict.before().paceS().isPresent()
                ? OptionalDouble.of(
                        settings.levelMargin() * verdict.before().paceS().getAsDouble())
                : OptionalDouble.empty();
    }

    private String decided(Difference difference) {
        String direction = verdict.decision() == Decision.FASTER ? "faster" : "slower";
        Interval interval = difference.intervalS();
        int decimals = Figures.decimals(interval);
        boolean holds = verdict.decision() == Decision.FASTER ? interval.high() <= 0 : interval.low() >= 0;
        if (!holds) {
            return "After is %s: an earlier look settled that, and it stands. All the laps together say %s."
                    .formatted(direction, range(interval));
        }
        return "After is %s s a lap %s, %s."
                .formatted(
                        Figures.fixed(Math.abs(difference.seconds()), decimals), direction, bare(interval, decimals));
    }

    private String level(Difference difference) {
        String margin = margin().isPresent()
                ? "%s (%s s a lap)"
                        .formatted(
                                Figures.percent(settings.levelMargin()), Figures.significant(margin().getAsDouble(), 2))
                : Figures.percent(settings.levelMargin());
        return "Level: any difference is within your margin of %s, %s."
                .formatted(margin, range(difference.intervalS()));
    }

    /** An interval of differences in words with direction and unit. */
    static String range(Interval interval) {
        int decimals = Figures.decimals(interval);
        double low = interval.low();
        double high = interval.high();
        if (!interval.isBounded()) {
            return openRange(interval, decimals);
        }
        if (high <= 0) {
            return bare(interval, decimals) + " s faster";
        }
        if (low >= 0) {
            return bare(interval, decimals) + " s slower";
        }
        return "somewhere between %s s faster and %s s slower".formatted(amount(low, decimals), amount(high, decimals));
    }

    private static String openRange(Interval interval, int decimals) {
        boolean knowsLow = !Double.isInfinite(interval.low());
        boolean knowsHigh = !Double.isInfinite(interval.high());
        if (knowsHigh) {
            return interval.high() <= 0
                    ? "at least %s s faster".formatted(amount(interval.high(), decimals))
                    : "at most %s s slower, and no telling how much faster"
                            .formatted(amount(interval.high(), decimals));
        }
        if (knowsLow) {
            return interval.low() >= 0
                    ? "at least %s s slower".formatted(amount(interval.low(), decimals))
                    : "at most %s s faster, and no telling how much slower".formatted(amount(interval.low(), decimals));
        }
        return "the laps so far leave everything open";
    }

    private static String bare(Interval interval, int decimals) {
        double near = Math.min(Math.abs(interval.low()), Math.abs(interval.high()));
        double far = Math.max(Math.abs(interval.low()), Math.abs(interval.high()));
        return "somewhere between %s and %s".formatted(amount(near, decimals), amount(far, decimals));
    }

    private static String amount(double value, int decimals) {
        return Math.abs(value) < 0.5 * Math.pow(10, -decimals) ? "almost 0" : Figures.fixed(Math.abs(value), decimals);
    }

    /** A ratio that may lie far on either side of 1 is said to tell nothing. */
    private static String between(Interval interval) {
        if (interval.low() * MOST_RATIO < 1 && interval.high() > MOST_RATIO) {
            return ", but laps so few leave that wide open";
        }
        return ", somewhere between %s and %s"
                .formatted(Figures.fixed(interval.low(), 2), Figures.fixed(interval.high(), 2));
    }

    private static String needed(LapsNeeded needed, OptionalDouble margin) {
        if (needed.eachWay().isPresent()) {
            int laps = needed.eachWay().getAsInt();
            return needed.afresh()
                    ? "Driving on would hardly tell. A new session of about %s each way, in the order A B B A, should."
                            .formatted(Figures.laps(laps))
                    : "About %s each way should settle it.".formatted(more(laps));
        }
        String small = "If there is a difference, it is small: it would take more than %s laps each way to tell."
                .formatted(Figures.count(LapsNeeded.BEYOND_REASON));
        boolean marginWithinReach = needed.forMargin().isPresent() && margin.isPresent();
        return marginWithinReach
                ? small
                        + " To show that it is within your margin of %s s takes about %s each way."
                                .formatted(
                                        Figures.significant(margin.getAsDouble(), 2),
                                        Figures.laps(needed.forMargin().getAsInt()))
                : small;
    }

    private static String more(int laps) {
        return laps == 1 ? "1 more lap" : Figures.count(laps) + " more laps";
    }

    private static String afterLap(OptionalInt lap) {
        return lap.isPresent() ? " at lap " + lap.getAsInt() : "";
    }

    private static String p(double p) {
        return p < 0.001 ? "under 0.001" : Figures.significant(p, 2);
    }

    private static String inWords(long number) {
        return number == 20 ? "twenty" : number == 10 ? "ten" : Figures.count(number);
    }

    private String sentence(Caveat caveat) {
        return switch (caveat) {
            case TOO_FEW_LAPS -> "Few clean laps: a verdict needs 5 a side and 10 in all.";
            case ONE_RUN_A_SIDE ->
                "One run a side: how much one run differs from the next cannot be seen, so a cautious guess stands in "
                        + "for it. Runs in the order A B B A would show it.";
            case HAND_TIMED ->
                "Timed by hand: laps next to each other share a press of the button, so whole runs were judged, not "
                        + "single laps.";
            case PLAN_AS_DRIVEN ->
                "No plan was stated, so the runs as driven were taken for it. To look as you go, state a plan first.";
            case BEYOND_PLAN -> "More laps than planned: from there on the verdict asks for a little more evidence.";
            case DECIDED_EARLIER ->
                "The verdict was reached%s and stands, though the interval has opened again since."
                        .formatted(afterLap(verdict.decidedAtLap()));
            case COARSE_CLOCK ->
                "The clock's steps are coarse against the scatter of the laps: less than a step cannot be seen.";
            case AFTER_FIRST ->
                "The After runs were driven first: a track, car or driver warming up then looks like the change.";
            case UNEVEN_EXCLUSIONS ->
                "Many more laps were left out on one side: the pace of the clean ones may flatter it.";
            case NO_SCATTER -> "All laps are the same: the scatter was taken from the clock's step.";
        };
    }
}
