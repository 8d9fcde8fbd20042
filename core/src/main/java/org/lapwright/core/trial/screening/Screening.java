package org.lapwright.core.trial.screening;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.lapwright.core.laps.Sorting;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.stats.design.LenthMargins;
import org.lapwright.core.stats.design.TwoLevelDesign;
import org.lapwright.core.units.Check;

/**
 * Which of several tweaks matter? All are tried in few runs: in half of the runs each is on, and the halves are laid so that no two
 * are alike. What is left of the plan's columns shows the noise.
 *
 * <p>Eight runs: the saturated design 2^(7-4) of Box, Hunter and Hunter (1978, p. 391); four tweaks lie on its columns 1, 2, 3 and
 * 123, so that each is apart from every pair of others. Twelve runs: Plackett and Burman (1946). The order is drawn by lot, because
 * tyres and rails change over an evening.
 *
 * @param tweaks what is tried, {@value #FEWEST} to {@value #MOST}, each on or off
 * @param runs {@value #SHORT} or {@value #LONG}
 * @param lapsPerRun laps of each run, {@value #LEAST_LAPS} to {@value #MOST_LAPS}
 * @param seed the lot
 */
public record Screening(List<String> tweaks, int runs, int lapsPerRun, long seed) {
    /** Fewest tweaks: two are told apart by before and after as well. */
    public static final int FEWEST = 3;

    /** Most tweaks. */
    public static final int MOST = 7;

    /** Runs of the short plan. */
    public static final int SHORT = 8;

    /** Runs of the long plan, which shows the noise better. */
    public static final int LONG = 12;

    /** Fewest laps of a run: a pace from fewer is none. */
    public static final int LEAST_LAPS = 3;

    /** Most laps of a run. */
    public static final int MOST_LAPS = 100;

    private static final int LONGEST_NAME = 80;
    private static final int TRIPLE = 6;

    /** Checks names and numbers. */
    public Screening {
        tweaks = tweaks.stream()
                .map(name -> Check.text(name, LONGEST_NAME, "name of a tweak"))
                .toList();
        if (tweaks.size() < FEWEST || tweaks.size() > MOST) {
            throw new IllegalArgumentException(
                    "there are %d tweaks; a screening takes from %d to %d".formatted(tweaks.size(), FEWEST, MOST));
        }
        if (tweaks.stream().distinct().count() < tweaks.size()) {
            throw new IllegalArgumentException("two tweaks have one name; give each its own");
        }
        if (runs != SHORT && runs != LONG) {
            throw new IllegalArgumentException(
                    "a screening of %d runs; there are plans of %d and of %d".formatted(runs, SHORT, LONG));
        }
        Check.inRange(lapsPerRun, LEAST_LAPS, MOST_LAPS, "laps of a run");
    }

    /** How sure an effect is. */
    public enum Telling {
        /** Beyond the margin for all effects together. */
        LIKELY,
        /** Beyond the margin for one, which one of many passes by chance more often. */
        MAYBE,
        /** Not to be told from the noise. */
        UNTOLD
    }

    /**
     * What a tweak did.
     *
     * @param tweak its name
     * @param seconds pace with it less pace without it, s; negative is faster
     * @param telling how sure that is
     */
    public record Effect(String tweak, double seconds, Telling telling) {}

    /**
     * What came out.
     *
     * @param effects of the tweaks, in their order
     * @param margins what an effect has to pass
     * @param points all effects by size, those of columns without a tweak too
     */
    public record Findings(List<Effect> effects, LenthMargins margins, List<Point> points) {
        /** Copies the lists. */
        public Findings {
            effects = List.copyOf(effects);
            points = List.copyOf(points);
        }
    }

    /**
     * A point of the half-normal plot.
     *
     * @param score where it would lie if all were noise, in standard deviations
     * @param seconds size of the effect, s
     * @param tweak its name; empty for a column without one
     */
    public record Point(double score, double seconds, String tweak) {}

    /** Whether a tweak is on in a run; both count from 0, the runs in the order driven. */
    public boolean isOn(int run, int tweak) {
        return design().state(order().get(run), column(tweak)) > 0;
    }

    /** The tweaks that are on in a run. */
    public List<String> on(int run) {
        return IntStream.range(0, tweaks.size())
                .filter(tweak -> isOn(run, tweak))
                .mapToObj(tweaks::get)
                .toList();
    }

    /** Pace of a run, s: all its laps are sorted, the clean ones count. */
    public static double paceS(TimedRun run) {
        return Stint.of(Sorting.sort(List.of(run)).get(0))
                .paceS()
                .orElseThrow(() -> new IllegalArgumentException("a run has no clean lap, so it has no pace"));
    }

    /**
     * Judges the runs.
     *
     * @param driven all runs in the order driven
     * @throws IllegalArgumentException if there are more or fewer than planned, or one has no clean lap
     */
    public Findings judge(List<TimedRun> driven) {
        if (driven.size() != runs) {
            throw new IllegalArgumentException("%d of %d runs are driven".formatted(driven.size(), runs));
        }
        double[] paces = new double[runs];
        for (int run = 0; run < runs; run++) {
            paces[order().get(run)] = paceS(driven.get(run));
        }
        double[] all = design().mainEffects(paces);
        LenthMargins margins = LenthMargins.of(all);
        List<Effect> effects = IntStream.range(0, tweaks.size())
                .mapToObj(tweak -> effect(tweak, all[column(tweak)], margins))
                .toList();
        return new Findings(effects, margins, points(all));
    }

    private Effect effect(int tweak, double seconds, LenthMargins margins) {
        double size = Math.abs(seconds);
        Telling telling = size > margins.simultaneousMargin()
                ? Telling.LIKELY
                : size > margins.margin() ? Telling.MAYBE : Telling.UNTOLD;
        return new Effect(tweaks.get(tweak), seconds, telling);
    }

    private List<Point> points(double[] all) {
        List<Integer> bySize =
                new ArrayList<>(IntStream.range(0, all.length).boxed().toList());
        bySize.sort((one, other) -> Double.compare(Math.abs(all[one]), Math.abs(all[other])));
        double[] scores = LenthMargins.halfNormalScores(all.length);
        return IntStream.range(0, all.length)
                .mapToObj(i -> new Point(scores[i], Math.abs(all[bySize.get(i)]), nameOf(bySize.get(i))))
                .toList();
    }

    private String nameOf(int column) {
        return IntStream.range(0, tweaks.size())
                .filter(tweak -> column(tweak) == column)
                .mapToObj(tweaks::get)
                .findFirst()
                .orElse("");
    }

    /** The column of the plan that is a tweak's. Four tweaks in eight runs: the last is the product of the others. */
    private int column(int tweak) {
        boolean apart = runs == SHORT && tweaks.size() == FEWEST + 1 && tweak == FEWEST;
        return apart ? TRIPLE : tweak;
    }

    private TwoLevelDesign design() {
        return runs == SHORT ? TwoLevelDesign.sevenInEight() : TwoLevelDesign.plackettBurman12();
    }

    /** The rows of the plan in the order driven. */
    private List<Integer> order() {
        List<Integer> rows = new ArrayList<>(IntStream.range(0, runs).boxed().toList());
        Collections.shuffle(rows, new Random(seed));
        return rows;
    }
}
