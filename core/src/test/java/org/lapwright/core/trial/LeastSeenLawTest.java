package org.lapwright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.TrialSettings;

/** The least gain that is said to be seen is seen in about four of five sessions, half of it seldom; told from sessions in which nothing changed. */
class LeastSeenLawTest {
    private static final RunPlan PLAN = RunPlan.parse("ABBA x 10");
    private static final TrialSettings SETTINGS = TrialSettings.DEFAULT.withPlan(PLAN);
    private static final int SESSIONS = 300;

    private static Verdict judged(SessionNoise noise, double effect, long seed) {
        Session session = noise.session(PLAN, effect, new SplittableRandom(seed));
        return Judge.judge(session, SETTINGS);
    }

    /** By sessions with nothing changed, the middle one of many. */
    private static double leastSeenShare(SessionNoise noise) {
        double[] shares = LongStream.range(0, 60)
                .mapToObj(seed -> judged(noise, 0, seed))
                .mapToDouble(verdict -> verdict.leastSeenS().orElseThrow()
                        / verdict.before().paceS().orElseThrow())
                .sorted()
                .toArray();
        return shares[shares.length / 2];
    }

    private static double seen(SessionNoise noise, double effect) {
        return LongStream.range(0, SESSIONS)
                        .parallel()
                        .filter(seed -> judged(noise, effect, 5000 + seed).decision() == Decision.FASTER)
                        .count()
                / (double) SESSIONS;
    }

    @Test
    void whatIsSaidToBeSeenIsSeenInFourOfFive() {
        SessionNoise noise = SessionNoise.REALISTIC;
        double least = leastSeenShare(noise);
        assertThat(least).isBetween(0.005, 0.03);
        assertThat(seen(noise, -least)).isBetween(0.68, 0.95);
        assertThat(seen(noise, -least / 2)).isLessThan(0.5);
    }

    @Test
    void nothingIsSaidOfTooFewLaps() {
        RunPlan few = RunPlan.parse("AB x 3");
        Session session = SessionNoise.REALISTIC.session(few, 0, new SplittableRandom(1));
        assertThat(Judge.judge(session, TrialSettings.DEFAULT.withPlan(few)).leastSeenS())
                .isEmpty();
    }
}
