package org.lapwright.core.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;

/**
 * Makes sessions as drivers drive them: autocorrelated laps with a heavy right tail, a level of their own for each run,
 * warm-up, drift, and laps lost to an off with a slow lap behind them.
 *
 * @param scatter standard deviation of what each lap adds of its own, as a share of the lap
 * @param autocorrelation of neighbouring laps
 * @param runScatter standard deviation of run levels, as a share of {@code scatter}
 * @param offShare chance of an off on a lap
 * @param warmUp extra time of a run's first lap, as a share
 * @param drift change of the lap over 60 laps, as a share
 * @param missedShare chance that the gate misses the pass at the end of a lap: two laps in one
 * @param afterScatter factor on the scatter after the change
 * @param shape of the noise
 * @param pressS standard deviation of a press of a button at each pass, s; 0 for a gate
 */
record SessionNoise(
        double scatter,
        double autocorrelation,
        double runScatter,
        double offShare,
        double warmUp,
        double drift,
        double missedShare,
        double afterScatter,
        Shape shape,
        double pressS) {
    static final SessionNoise REALISTIC =
            new SessionNoise(0.01, 0.3, 0.25, 0.04, 0.015, -0.01, 0.005, 1, Shape.SKEWED, 0);
    static final SessionNoise HEAVY = new SessionNoise(0.01, 0.3, 0.25, 0.04, 0.015, -0.01, 0.005, 1, Shape.T3, 0);

    static final SessionNoise HARSH = new SessionNoise(0.01, 0.6, 0.5, 0.04, 0.015, -0.01, 0.005, 1, Shape.SKEWED, 0);
    static final SessionNoise INDEPENDENT = new SessionNoise(0.01, 0, 0, 0, 0, 0, 0, 1, Shape.SKEWED, 0);

    /** Distribution of what each lap adds of its own. */
    enum Shape {
        /** A shifted gamma of shape 4, as reaction times have it. */
        SKEWED,
        /** Student's t on 3 degrees of freedom, scaled to unit variance. */
        T3
    }

    private static final double PACE_S = 7;

    SessionNoise withAfterScatter(double factor) {
        return new SessionNoise(
                scatter, autocorrelation, runScatter, offShare, warmUp, drift, missedShare, factor, shape, pressS);
    }

    SessionNoise timedByHand() {
        return new SessionNoise(
                scatter, autocorrelation, runScatter, offShare, warmUp, drift, 0, afterScatter, shape, 0.07);
    }

    /** A session with a change that is worth {@code effect}, in log lap time. */
    Session session(RunPlan plan, double effect, RandomGenerator random) {
        List<DrivenRun> runs = new ArrayList<>();
        int lap = 0;
        for (Side side : plan.order()) {
            double level =
                    Math.log(PACE_S) + (side == Side.AFTER ? effect : 0) + runScatter * scatter * random.nextGaussian();
            double[] seconds = new double[plan.lapsPerRun()];
            double noise = innovation(random) / Math.sqrt(1 - autocorrelation * autocorrelation);
            double recovery = 0;
            double press = pressS * random.nextGaussian();
            double own = scatter * (side == Side.AFTER ? afterScatter : 1);
            for (int k = 0; k < seconds.length; k++) {
                noise = k == 0 ? noise : autocorrelation * noise + innovation(random);
                double y = level + own * noise + warmUp * Math.exp(-k / 3.0) + drift * lap / 60 + recovery;
                recovery = 0;
                if (random.nextDouble() < offShare) {
                    y += Math.log1p(0.1 + 1.4 * random.nextDouble());
                    recovery = 0.01 + 0.02 * random.nextDouble();
                }
                y += random.nextDouble() < missedShare ? Math.log(2) : 0;
                double nextPress = pressS * random.nextGaussian();
                seconds[k] = Math.rint(1000 * (Math.exp(y) + nextPress - press)) / 1000;
                press = nextPress;
                lap++;
            }
            runs.add(new DrivenRun(side, TimedRun.of(seconds)));
        }
        return new Session(runs);
    }

    /** Mean 0, variance 1. */
    private double innovation(RandomGenerator random) {
        if (shape == Shape.T3) {
            double squares = 0;
            for (int i = 0; i < 3; i++) {
                double g = random.nextGaussian();
                squares += g * g;
            }
            return random.nextGaussian() / Math.sqrt(squares / 3) / Math.sqrt(3);
        }
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            sum -= Math.log(1 - random.nextDouble());
        }
        return (sum - 4) / 2;
    }
}
