package org.lapwright.app.usecase.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.NumberWords;
import org.lapwright.core.fit.Learned;
import org.lapwright.core.units.NumberKey;

/** What laps tell of a car, in plain words. */
public final class LearnedInWords {
    private static final double LITTLE = 0.1;
    private static final double MUCH = 0.9;

    private LearnedInWords() {}

    /** What people call an unknown. */
    public static String label(Learned learned, String name) {
        return learned.numbers().stream()
                .filter(number -> number.name().equals(name))
                .flatMap(number -> number.path().stream())
                .map(path -> NumberWords.of(path).label())
                .findFirst()
                .orElse("Driver's share of the best lap");
    }

    /** A value with its doubt, in its unit. */
    public static String value(Learned.Parameter number, Learned.Estimate estimate) {
        int decimals = (int) Math.max(0, Math.ceil(1 - Math.log10(Math.max(estimate.plusMinus(), 1e-9))));
        String text = Figures.fixed(estimate.value(), decimals) + " ± " + Figures.fixed(estimate.plusMinus(), decimals);
        String unit = unit(number.name());
        return unit.isEmpty() ? text : text + " " + unit;
    }

    private static String unit(String name) {
        return new NumberKey("", name, 0, 0).unit();
    }

    /** What the laps told of a number, in a few words. */
    public static String told(Learned.Parameter number) {
        return number.learned() < LITTLE
                ? "the laps tell nothing of it"
                : "the laps took away " + Figures.percent(number.learned()) + " of the doubt";
    }

    /** What the laps cannot tell, and what would, a sentence each. */
    public static List<String> advice(Learned learned) {
        List<String> said = new ArrayList<>();
        for (Learned.TradeOff pair : learned.tradeOffs()) {
            said.add("%s and %s trade off (%s): the laps fit as well with more of one and %s of the other."
                    .formatted(
                            label(learned, pair.first()),
                            lower(label(learned, pair.second())),
                            Math.abs(pair.correlation()) > MUCH ? "hardly to be told apart" : "partly",
                            pair.correlation() < 0 ? "less" : "more"));
        }
        learned.measurements().stream()
                .limit(1)
                .forEach(best -> said.add("Measuring this would narrow the forecast most, by %s: %s. %s"
                        .formatted(
                                Figures.percent(best.lessBy()),
                                lower(label(learned, best.name())),
                                how(learned, best))));
        return said;
    }

    private static String how(Learned learned, Learned.Measurement measurement) {
        return learned.numbers().stream()
                .filter(number -> number.name().equals(measurement.name()))
                .flatMap(number -> number.path().stream())
                .map(path -> NumberWords.of(path).measure())
                .findFirst()
                .orElse("");
    }

    /** What to know before believing it. */
    public static List<String> caveats(Learned learned) {
        List<String> said = new ArrayList<>();
        if (learned.diagnosis().paces() == 0) {
            said.add("No run of this car told anything: this is what was believed before.");
        }
        if (!learned.diagnosis().isSound()) {
            said.add(
                    "The draws have not settled well (R̂ %s, %s independent draws, %s of them count): take it as rough."
                            .formatted(
                                    Figures.fixed(learned.diagnosis().greatestRHat(), 3),
                                    Figures.fixed(learned.diagnosis().leastEffective(), 0),
                                    Figures.percent(learned.diagnosis().exactShare())));
        }
        return said;
    }

    private static String lower(String label) {
        return label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }
}
