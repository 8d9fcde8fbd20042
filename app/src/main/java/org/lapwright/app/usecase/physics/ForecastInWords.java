package org.lapwright.app.usecase.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.prediction.ForecastCaveat;
import org.lapwright.core.prediction.LapForecast;
import org.lapwright.core.prediction.NumberShare;
import org.lapwright.core.units.Interval;

/** A forecast lap in plain words: how sure it is, and which measurement would make it surer. */
public final class ForecastInWords {
    private static final int MOST_SHARES = 5;

    /** A number that brings less than this share of the most one is not worth a trip to the bench. */
    private static final double WORTH_TELLING = 0.05;

    private ForecastInWords() {}

    /**
     * One number that makes the lap uncertain.
     *
     * @param path its place in the car file
     * @param label what people call it
     * @param written as it stands in the file, with its doubt and unit
     * @param brings how far it moves the lap, in s
     * @param share of the greatest, 0 to 1
     * @param measure how to know it better
     */
    public record Cause(String path, String label, String written, String brings, double share, String measure) {
        /** The share as a width: {@code 62%}. */
        public String width() {
            return Math.round(100 * share) + "%";
        }
    }

    /** The lap time; empty when there is no lap. */
    public static Optional<String> lap(LapForecast forecast) {
        return forecast.central() instanceof PredictedLap lap
                ? Optional.of(Figures.seconds(lap.lapS()))
                : Optional.empty();
    }

    /** The interval in a sentence; empty when there is none. */
    public static String interval(LapForecast forecast) {
        String between = between(forecast);
        return between.isEmpty() ? "" : "9 in 10 between " + between;
    }

    /** The ends of the interval, {@code 5.64 and 6.14 s}; empty when there is none. */
    public static String between(LapForecast forecast) {
        return forecast.knownS().map(ForecastInWords::between).orElse("");
    }

    private static String between(Interval interval) {
        int decimals = Figures.decimals(interval);
        return Figures.fixed(interval.low(), decimals) + " and " + Figures.fixed(interval.high(), decimals) + " s";
    }

    /** The numbers that bring most of the doubt, the most first. */
    public static List<Cause> causes(LapForecast forecast) {
        List<NumberShare> shares = forecast.shares();
        double most = shares.isEmpty() ? 0 : Math.abs(shares.get(0).amount());
        if (!(most > 0 && Double.isFinite(most))) {
            return List.of();
        }
        return shares.stream()
                .filter(share -> Math.abs(share.amount()) >= WORTH_TELLING * most)
                .limit(MOST_SHARES)
                .map(share -> cause(share, most))
                .toList();
    }

    /** What to know before believing how sure it is. */
    public static List<String> caveats(LapForecast forecast) {
        List<String> said = new ArrayList<>(PredictionInWords.caveats(forecast.central()));
        forecast.caveats().forEach(caveat -> said.add(caveat(caveat)));
        return said;
    }

    private static Cause cause(NumberShare share, double most) {
        NumberWords words = NumberWords.of(share.number().path());
        return new Cause(
                share.number().path(),
                words.label(),
                reading(
                        share.number().reading().value(),
                        share.number().reading().plusMinus(),
                        share.number().key().unit()),
                "± " + Figures.significant(Math.abs(share.amount()), 2) + " s",
                Math.abs(share.amount()) / most,
                words.measure());
    }

    /** A number with its doubt and unit: {@code 78 ± 0.5 g}. */
    public static String reading(double value, double plusMinus, String unit) {
        String text = Figures.significant(value, 6);
        String doubted = plusMinus > 0 ? text + " ± " + Figures.significant(plusMinus, 2) : text;
        return unit.isEmpty() ? doubted : doubted + " " + unit;
    }

    private static String caveat(ForecastCaveat caveat) {
        if (caveat instanceof ForecastCaveat.MethodsPart) {
            return "The doubt is so wide that the lap bends over it; the interval is that of drawn cars, and the list of"
                    + " causes is rough.";
        }
        if (caveat instanceof ForecastCaveat.MayNotGetRound stuck) {
            return "%s of the cars within these doubts would not get round at all; the interval is that of the others."
                    .formatted(Figures.percent(stuck.chance()));
        }
        return "No number of the car has a ± yet, so nothing can be said of how sure this is.";
    }
}
