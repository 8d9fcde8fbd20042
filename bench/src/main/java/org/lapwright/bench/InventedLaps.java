package org.lapwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;

/** Laps to measure with: about 7 s, one in a hundred scatter, an off now and then. Always the same. */
final class InventedLaps {
    private InventedLaps() {}

    static double[] seconds(int laps, double pace, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] seconds = new double[laps];
        for (int i = 0; i < laps; i++) {
            double off = random.nextDouble() < 0.03 ? 1 + random.nextDouble() : 1;
            seconds[i] = Math.rint(1000 * pace * off * (1 + 0.01 * random.nextGaussian())) / 1000;
        }
        return seconds;
    }

    static Session session(RunPlan plan) {
        List<DrivenRun> runs = new ArrayList<>();
        for (Side side : plan.order()) {
            double pace = side == Side.BEFORE ? 7.0 : 6.95;
            runs.add(new DrivenRun(side, TimedRun.of(seconds(plan.lapsPerRun(), pace, runs.size() + 1))));
        }
        return new Session(runs);
    }

    static String csv(int laps) {
        StringBuilder text = new StringBuilder("lap,lap_s,lane\n");
        double[] seconds = seconds(laps, 7, 1);
        for (int i = 0; i < laps; i++) {
            text.append(i + 1)
                    .append(',')
                    .append(String.format(Locale.ROOT, "%.3f", seconds[i]))
                    .append(",red\n");
        }
        return text.toString();
    }
}
