package org.lapwright.core.doubt;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.random.RandomGenerator;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.lapwright.core.units.Interval;

/** Propagation of distributions by drawing from them, JCGM 101:2008 (Supplement 1 to the GUM). Inputs are independent. */
public final class MonteCarlo {
    private static final int MOST_TRIALS = 20_000_000;
    private static final int LEAST_MOST = 100;
    private static final int LEAST_BLOCK = 10_000;

    private MonteCarlo() {}

    /**
     * A fixed number of draws.
     *
     * @param measure computes the number from the inputs' values; may give a number that is not finite, which is counted
     * @param inputs what each input may be
     * @param trials 2 to 20,000,000
     * @param chance where chance comes from; the same seed gives the same answer
     * @throws IllegalArgumentException if fewer than two draws give a finite number
     */
    public static SampledDoubt run(
            ToDoubleFunction<double[]> measure, List<InputDistribution> inputs, int trials, RandomGenerator chance) {
        if (trials < 2 || trials > MOST_TRIALS) {
            throw new IllegalArgumentException("trials is %d; it must be from 2 to %d".formatted(trials, MOST_TRIALS));
        }
        return SampledDoubt.of(draw(measure, inputs, trials, chance));
    }

    /**
     * As many draws as it takes (JCGM 101:2008, 7.9): blocks are drawn until mean, standard deviation and both ends of the
     * interval are stable to the wanted digits of the standard deviation, twice their standard error over the blocks.
     *
     * @param measure computes the number
     * @param inputs what each input may be
     * @param level of the interval, above 0 and below 1
     * @param digits significant digits wanted of the standard deviation, 1 or 2
     * @param mostTrials where to stop in any case, 100 to 20,000,000
     * @param chance where chance comes from
     */
    public static SampledDoubt adaptive(
            ToDoubleFunction<double[]> measure,
            List<InputDistribution> inputs,
            double level,
            int digits,
            int mostTrials,
            RandomGenerator chance) {
        if (digits < 1 || digits > 2) {
            throw new IllegalArgumentException("digits is " + digits + "; it must be 1 or 2");
        }
        if (mostTrials < LEAST_MOST || mostTrials > MOST_TRIALS) {
            throw new IllegalArgumentException("at most %d trials are allowed; it must be from %d to %d"
                    .formatted(mostTrials, LEAST_MOST, MOST_TRIALS));
        }
        int block = Math.min(mostTrials / 2, (int) Math.max(LEAST_BLOCK, Math.ceil(100 / (1 - Levels.check(level)))));
        double[] all = new double[0];
        Blocks blocks = new Blocks(level, digits);
        do {
            double[] more = draw(measure, inputs, block, chance);
            int old = all.length;
            all = Arrays.copyOf(all, old + more.length);
            System.arraycopy(more, 0, all, old, more.length);
            blocks.add(more);
        } while (all.length + block <= mostTrials && !blocks.areStable(all));
        return SampledDoubt.of(all);
    }

    /**
     * The numerical tolerance that goes with a standard uncertainty stated to some digits (JCGM 101:2008, 7.9.2): half of the
     * last digit's place.
     *
     * @param uncertainty above 0
     * @param digits at least 1
     */
    public static double tolerance(double uncertainty, int digits) {
        int place = (int) Math.floor(Math.log10(uncertainty)) - digits + 1;
        // 9.96 to two digits is 10, whose last digit stands one place higher.
        if (Math.rint(uncertainty / Math.pow(10, place)) >= Math.pow(10, digits)) {
            place++;
        }
        return 0.5 * Math.pow(10, place);
    }

    private static double[] draw(
            ToDoubleFunction<double[]> measure, List<InputDistribution> inputs, int trials, RandomGenerator chance) {
        double[] drawn = new double[trials];
        double[] values = new double[inputs.size()];
        for (int t = 0; t < trials; t++) {
            for (int i = 0; i < values.length; i++) {
                values[i] = inputs.get(i).draw(chance);
            }
            drawn[t] = measure.applyAsDouble(values);
        }
        return drawn;
    }

    /** Mean, deviation and both ends, each over the blocks drawn so far. */
    private static final class Blocks {
        private final double level;
        private final int digits;
        private final List<StreamingStatistics> figures = List.of(
                new StreamingStatistics(),
                new StreamingStatistics(),
                new StreamingStatistics(),
                new StreamingStatistics());

        Blocks(double level, int digits) {
            this.level = level;
            this.digits = digits;
        }

        void add(double[] block) {
            SampledDoubt doubt = SampledDoubt.of(block);
            Interval interval = doubt.interval(level);
            double[] now = {doubt.mean(), doubt.standardDeviation(), interval.low(), interval.high()};
            for (int i = 0; i < now.length; i++) {
                figures.get(i).addValue(now[i]);
            }
        }

        boolean areStable(double[] all) {
            double deviation = SampledDoubt.of(all).standardDeviation();
            long count = figures.get(0).getN();
            if (count < 2) {
                return false;
            }
            return deviation == 0
                    || figures.stream()
                            .allMatch(figure -> 2 * figure.getStandardDeviation() / Math.sqrt(count)
                                    < tolerance(deviation, digits));
        }
    }
}
