package org.lapwright.core.trial;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.stats.model.RunCovariance;
import org.lapwright.core.stats.model.RunData;
import org.lapwright.core.stats.model.RunGls;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.Session;

/**
 * Learns a driver's noise from earlier sessions: how much neighbouring laps are alike, and how much a run differs from
 * the next. A few runs of one session cannot tell either; a season of sessions can.
 *
 * <p>Restricted maximum likelihood over all sessions together, with level, drift, warm-up and effect free in each; drawn
 * towards the usual belief with the weight of {@value #LAPS_OF_BELIEF} laps and {@value #RUNS_OF_BELIEF} runs.
 */
public final class DriverNoise {
    private static final int LAPS_OF_BELIEF = 60;
    private static final int RUNS_OF_BELIEF = 8;
    private static final int MOST_SESSIONS = 40;
    private static final int LEAST_LAPS = 20;
    private static final double MOST_AUTOCORRELATION = 0.8;
    private static final double MOST_RUN_SHARE = 4;

    private DriverNoise() {}

    /**
     * What the sessions say of their driver.
     *
     * @param sessions earlier sessions of one driver, newest first; only the newest {@value #MOST_SESSIONS} with enough
     *     laps are used
     * @return the belief; {@link NoisePrior#DEFAULT} when there is nothing to learn from
     */
    public static NoisePrior learn(List<Session> sessions) {
        List<RunData> data = new ArrayList<>();
        int laps = 0;
        int runs = 0;
        for (Session session : sessions) {
            Layout layout = new Course(session).layOut();
            if (data.size() < MOST_SESSIONS && layout.rows() >= LEAST_LAPS) {
                data.add(RunData.of(layout.runs(), layout.allColumns(), layout.y()));
                laps += layout.rows();
                runs += layout.runs().runs();
            }
        }
        if (data.isEmpty()) {
            return NoisePrior.DEFAULT;
        }
        RunGls found = new RunCovariance(true).estimate(data);
        NoisePrior usual = NoisePrior.DEFAULT;
        double phi = drawn(found.phi(), laps, usual.autocorrelation(), LAPS_OF_BELIEF);
        double gamma = drawn(Math.min(found.gamma(), MOST_RUN_SHARE), runs, usual.runShare(), RUNS_OF_BELIEF);
        return new NoisePrior(
                Math.max(0, Math.min(MOST_AUTOCORRELATION, phi)),
                usual.autocorrelationLaps() + Math.min(laps, 10 * LAPS_OF_BELIEF) / 4.0,
                gamma,
                data.size());
    }

    private static double drawn(double found, int weight, double belief, int beliefWeight) {
        return (weight * found + beliefWeight * belief) / (weight + beliefWeight);
    }
}
