package org.lapwright.app.web.next;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.advice.SuggestChanges.Advice;
import org.lapwright.app.usecase.advice.SuggestChanges.Answer;
import org.lapwright.app.web.bench.PlanDrawing;
import org.lapwright.app.web.bench.PlanView;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.advice.Sensitivity;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.units.Interval;

/**
 * What to try next on one car.
 *
 * @param shell around it
 * @param cars to choose from
 * @param car chosen; empty when there is none
 * @param tracks to choose from
 * @param track chosen; empty when there is none
 * @param lap the best lap as it is; empty when nothing was worked out
 * @param runs how many runs it was learned from; 0 when only its numbers are known
 * @param first the three best
 * @param others the rest
 * @param tried how many changes were tried
 * @param problem why there is no advice; empty when there is
 * @param bars what one unit more of each thing does
 * @param rules what the rules of the car's class have to do with it
 */
public record NextPage(
        Shell shell,
        List<String> cars,
        String car,
        List<String> tracks,
        String track,
        String lap,
        int runs,
        List<Card> first,
        List<Card> others,
        int tried,
        String problem,
        List<Bar> bars,
        List<String> rules) {
    private static final int FIRST = 3;
    private static final double WIDEST = 100;
    private static final double SMALL_S = 0.0005;
    private static final double MS = 1000;
    private static final int RUNS = 4;
    private static final int FEWEST_LAPS = 5;
    private static final int MOST_LAPS = 40;

    /** Copies the lists. */
    public NextPage {
        cars = List.copyOf(cars);
        tracks = List.copyOf(tracks);
        first = List.copyOf(first);
        others = List.copyOf(others);
        bars = List.copyOf(bars);
        rules = List.copyOf(rules);
    }

    /**
     * One suggestion.
     *
     * @param words what to do
     * @param gain what it takes off the lap, with its interval
     * @param chance that it is faster
     * @param why one sentence of physics
     * @param caution what gets harder; empty when nothing does
     * @param effort work and laps
     * @param log where it is logged, or the first of two is
     * @param pair whether it is two changes
     * @param plan of the run that would prove it; empty when no evening is long enough
     * @param before the car from above as it is
     * @param after the car from above after it
     * @param low left end of the interval on the scale of the page, per cent
     * @param width of the interval, per cent
     * @param mean the gain, per cent
     */
    public record Card(
            String words,
            String gain,
            String chance,
            String why,
            String caution,
            String effort,
            String log,
            boolean pair,
            String plan,
            PlanView before,
            PlanView after,
            double low,
            double width,
            double mean) {}

    /** A page without advice. */
    public static NextPage without(
            Shell shell, List<String> cars, String car, List<String> tracks, String track, String problem) {
        return new NextPage(
                shell, cars, car, tracks, track, "", 0, List.of(), List.of(), 0, problem, List.of(), List.of());
    }

    /** The page of an answer. */
    public static NextPage of(
            Shell shell, Choice choice, SetUp before, int runs, Answer answer, List<Sensitivity> sensitivities) {
        String car = choice.car();
        String track = choice.track();
        double most = answer.worthwhile().stream()
                .mapToDouble(advice -> advice.suggestion().intervalS().high())
                .max()
                .orElse(1);
        PlanView now = PlanDrawing.of(before, SetUpNumbers.onBench(before));
        List<Card> cards = new ArrayList<>();
        for (Advice advice : answer.worthwhile()) {
            cards.add(card(choice, advice, most, now));
        }
        int split = Math.min(FIRST, cards.size());
        return new NextPage(
                shell,
                choice.cars(),
                car,
                choice.tracks(),
                track,
                Figures.seconds(answer.lapS()),
                runs,
                cards.subList(0, split),
                cards.subList(split, cards.size()),
                answer.tried(),
                "",
                bars(sensitivities),
                List.of());
    }

    /** The same with what the rules of the car's class have to do with it. */
    public NextPage withRules(List<String> said) {
        return new NextPage(shell, cars, car, tracks, track, lap, runs, first, others, tried, problem, bars, said);
    }

    private static List<Bar> bars(List<Sensitivity> sensitivities) {
        double most = sensitivities.stream()
                .mapToDouble(found -> Math.max(
                        Math.abs(found.intervalS().low()),
                        Math.abs(found.intervalS().high())))
                .max()
                .orElse(1);
        double scale = WIDEST / 2 / Math.max(most, SMALL_S);
        List<Bar> bars = new ArrayList<>();
        for (Sensitivity found : sensitivities) {
            Interval interval = found.intervalS();
            boolean matters = Math.abs(found.lapS()) >= SMALL_S;
            bars.add(new Bar(
                    label(found.what()),
                    matters
                            ? "%s ms (%s to %s)"
                                    .formatted(
                                            Figures.signed(MS * found.lapS(), 1),
                                            Figures.signed(MS * interval.low(), 1),
                                            Figures.signed(MS * interval.high(), 1))
                            : "unlikely to matter here",
                    tenths(WIDEST / 2 + interval.low() * scale),
                    tenths((interval.high() - interval.low()) * scale)));
        }
        return bars;
    }

    private static String label(Sensitivity.What what) {
        return switch (what) {
            case GRAM_REAR -> "1 g more over the rear axle";
            case GRAM_NOSE -> "1 g more at the guide";
            case HEIGHT -> "weight 1 mm higher";
            case TYRE -> "tyres 1 mm larger";
            case GRIP -> "grip 0.01 more";
            case PINION -> "pinion one tooth more";
            case AXLE_GEAR -> "axle gear one tooth more";
            case TRACK_WIDTH -> "1 mm wider track";
            case MAGNET -> "magnet pulls 10 g more";
            case VOLT -> "supply one volt more";
            case BRAKE -> "braking circuit one ohm more";
        };
    }

    /**
     * What there is to choose from, and what is chosen.
     *
     * @param cars names
     * @param car chosen
     * @param tracks names
     * @param track chosen
     */
    public record Choice(List<String> cars, String car, List<String> tracks, String track) {
        /** Copies the lists. */
        public Choice {
            cars = List.copyOf(cars);
            tracks = List.copyOf(tracks);
        }
    }

    /**
     * A bar about the middle of a scale, faster to the left.
     *
     * @param label one more of what
     * @param words what it does to the lap
     * @param low left end, per cent
     * @param width per cent
     */
    public record Bar(String label, String words, double low, double width) {}

    private static Card card(Choice choice, Advice advice, double most, PlanView now) {
        Interval interval = advice.suggestion().intervalS();
        double scale = WIDEST / Math.max(most, 1e-6);
        double low = Math.max(0, interval.low() * scale);
        String laps = advice.lapsToProve().isPresent()
                ? "about %d laps prove it".formatted(advice.lapsToProve().getAsInt())
                : "too small to prove in an evening";
        return new Card(
                advice.words(),
                "%s faster, 9 in 10 between %s and %s"
                        .formatted(
                                Figures.seconds(advice.suggestion().gainS()),
                                Figures.fixed(interval.low(), 3),
                                Figures.seconds(interval.high())),
                Figures.percent(Math.round(100 * advice.suggestion().chance()) / 100.0),
                advice.why(),
                advice.caution().orElse(""),
                "%s minutes of work, %s%s"
                        .formatted(
                                Figures.fixed(advice.suggestion().candidate().effortMin(), 0),
                                laps,
                                advice.suggestion().candidate().reversible() ? "" : "; it cannot be put back"),
                Log.address(
                        choice.car(),
                        choice.track(),
                        advice.suggestion().candidate().changes().get(0)),
                advice.suggestion().candidate().changes().size() > 1,
                plan(advice.lapsToProve()),
                now,
                PlanDrawing.of(
                        advice.suggestion().after().setUp(),
                        SetUpNumbers.onBench(advice.suggestion().after().setUp())),
                tenths(low),
                tenths(Math.max(0, interval.high() * scale - low)),
                tenths(Math.max(0, advice.suggestion().gainS() * scale)));
    }

    /** Two runs without it, two with it, in the order in which a drift of the evening cancels. */
    private static String plan(OptionalInt lapsToProve) {
        int each = (lapsToProve.orElse(Integer.MAX_VALUE - RUNS) + RUNS - 1) / RUNS;
        return each > MOST_LAPS ? "" : "ABBA x " + Math.max(FEWEST_LAPS, each);
    }

    private static double tenths(double value) {
        return Math.rint(10 * value) / 10;
    }
}
