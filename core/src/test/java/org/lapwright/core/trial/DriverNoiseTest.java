package org.lapwright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.TrialSettings;

class DriverNoiseTest {
    private static final RunPlan PLAN = RunPlan.parse("ABBAAB x 10");

    private static List<Session> season(SessionNoise noise, int sessions) {
        List<Session> season = new ArrayList<>();
        for (int i = 0; i < sessions; i++) {
            season.add(noise.session(PLAN, 0.005 * (i % 3), new SplittableRandom(500 + i)));
        }
        return season;
    }

    @Test
    void withoutSessionsTheUsualBeliefStands() {
        assertThat(DriverNoise.learn(List.of())).isEqualTo(NoisePrior.DEFAULT);
    }

    @Test
    void aSeasonShowsHowThisDriverDrives() {
        NoisePrior usual = DriverNoise.learn(season(SessionNoise.REALISTIC, 12));
        assertThat(usual.autocorrelation()).isCloseTo(0.3, within(0.15));
        assertThat(usual.sessions()).isEqualTo(12);
        NoisePrior harsh = DriverNoise.learn(season(SessionNoise.HARSH, 12));
        assertThat(harsh.autocorrelation()).isGreaterThan(usual.autocorrelation() + 0.1);
        assertThat(harsh.runShare()).isGreaterThan(NoisePrior.DEFAULT.runShare());
    }

    /** For the default belief the independent simulation has 14.5 % of false alarms here, for a learned one 4.6 %. */
    @Test
    void learningKeepsAHarshDriverHonest() {
        NoisePrior learned = DriverNoise.learn(season(SessionNoise.HARSH, 20));
        double usual = falseAlarms(NoisePrior.DEFAULT);
        double taught = falseAlarms(learned);
        assertThat(taught).isLessThan(usual).isLessThanOrEqualTo(0.075);
    }

    private static double falseAlarms(NoisePrior prior) {
        int trials = 600;
        TrialSettings settings = TrialSettings.DEFAULT.withPlan(PLAN).withPrior(prior);
        return LongStream.range(0, trials)
                        .parallel()
                        .filter(seed ->
                                Judge.judge(SessionNoise.HARSH.session(PLAN, 0, new SplittableRandom(seed)), settings)
                                                .decision()
                                        != Decision.MORE_LAPS)
                        .count()
                / (double) trials;
    }
}
