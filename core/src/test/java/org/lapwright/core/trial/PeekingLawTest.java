package org.lapwright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * A racer who looks after every lap must not be fooled, and must not be kept waiting either. Simulated with fixed seeds;
 * the expected power is that of 10 000 sessions simulated by an independent program in R for the same method.
 */
class PeekingLawTest {
    /** For the claim itself. */
    private static final int MANY = 2000;

    /** For what follows from it. */
    private static final int SOME = 700;

    private static double share(
            int trials, SessionNoise noise, String planText, double effect, TrialSettings settings, Ask ask) {
        RunPlan plan = RunPlan.parse(planText);
        long yes = LongStream.range(0, trials)
                .parallel()
                .filter(seed -> ask.isSo(Judge.judge(
                        noise.session(plan, effect, new SplittableRandom(1000 + seed)), settings.withPlan(plan))))
                .count();
        return yes / (double) trials;
    }

    private interface Ask {
        boolean isSo(Verdict verdict);
    }

    private static boolean saysChange(Verdict verdict) {
        return verdict.decision() == Decision.FASTER || verdict.decision() == Decision.SLOWER;
    }

    private static boolean saysSpreadChange(Verdict verdict) {
        return verdict.consistency()
                .map(consistency -> consistency.decision() != SteadyDecision.MORE_LAPS)
                .orElse(false);
    }

    @ParameterizedTest
    @CsvSource({"ABBAABBAABBA x 10", "AB x 30", "AB x 60", "ABBA x 5"})
    void noChangeLooksLikeOneInAtMostFivePercent(String plan) {
        int trials = plan.length() > 12 ? MANY : SOME;
        assertThat(share(trials, SessionNoise.REALISTIC, plan, 0, TrialSettings.DEFAULT, PeekingLawTest::saysChange))
                .isLessThanOrEqualTo(0.05);
    }

    @Test
    void neitherDoHeavyTails() {
        assertThat(share(
                        MANY,
                        SessionNoise.HEAVY,
                        "ABBAABBAABBA x 10",
                        0,
                        TrialSettings.DEFAULT,
                        PeekingLawTest::saysChange))
                .isLessThanOrEqualTo(0.05);
    }

    @Test
    void sameScatterSeldomLooksDifferent() {
        assertThat(share(
                        SOME,
                        SessionNoise.REALISTIC,
                        "ABBAAB x 10",
                        0,
                        TrialSettings.DEFAULT,
                        PeekingLawTest::saysSpreadChange))
                .isLessThanOrEqualTo(0.05);
    }

    @Test
    void handTimedLapsDoNotFoolEither() {
        assertThat(share(
                        SOME,
                        SessionNoise.REALISTIC.timedByHand(),
                        "ABBAAB x 10",
                        0,
                        TrialSettings.DEFAULT.withHandTimed(true),
                        PeekingLawTest::saysChange))
                .isLessThanOrEqualTo(0.05);
    }

    @ParameterizedTest
    @CsvSource({"0.005, 0.13", "0.01, 0.50", "0.02, 0.985"})
    void trueGainsAreFoundAsOftenAsSimulatedElsewhere(double gain, double expected) {
        double found = share(
                MANY,
                SessionNoise.REALISTIC,
                "ABBAAB x 10",
                Math.log1p(-gain),
                TrialSettings.DEFAULT,
                verdict -> verdict.decision() == Decision.FASTER);
        assertThat(found).isBetween(expected - 0.03, expected + 0.03);
    }

    @Test
    void aTwofoldScatterIsFoundInAboutFourTenths() {
        // Power of the peeked verdict for a ratio of 2 in 60 laps is 0.42 in the independent simulation.
        double found = share(
                SOME,
                SessionNoise.REALISTIC.withAfterScatter(2),
                "ABBAAB x 10",
                0,
                TrialSettings.DEFAULT,
                verdict -> verdict.consistency()
                        .map(consistency -> consistency.decision() == SteadyDecision.WILDER)
                        .orElse(false));
        assertThat(found).isBetween(0.36, 0.56);
    }

    @Test
    void theIntervalHoldsTheTruthAtTheEnd() {
        double effect = Math.log1p(-0.01);
        double covered = share(
                SOME,
                SessionNoise.REALISTIC,
                "ABBAAB x 10",
                effect,
                TrialSettings.DEFAULT,
                verdict -> verdict.difference()
                        .map(difference -> difference.intervalShare().contains(-0.01))
                        .orElse(false));
        assertThat(covered).isGreaterThanOrEqualTo(0.95);
    }
}
