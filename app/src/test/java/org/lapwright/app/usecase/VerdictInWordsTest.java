package org.lapwright.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.trial.Caveat;
import org.lapwright.core.trial.Consistency;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Difference;
import org.lapwright.core.trial.LapsNeeded;
import org.lapwright.core.trial.OffRates;
import org.lapwright.core.trial.SteadyDecision;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.TrialSettings;
import org.lapwright.core.units.Interval;

class VerdictInWordsTest {
    private static final double INFINITE = Double.POSITIVE_INFINITY;

    @Test
    void fasterSaysHowMuchAndWithinWhat() {
        VerdictInWords words = words(verdict(Decision.FASTER, -0.07, -0.12, -0.02));
        assertThat(words.headline()).isEqualTo("After is 0.07 s a lap faster, somewhere between 0.02 and 0.12.");
        assertThat(words.confidence())
                .isEqualTo("Looked at after every lap, such a verdict is wrong at most once in twenty.");
    }

    @Test
    void slowerSaysHowMuchAndWithinWhat() {
        assertThat(words(verdict(Decision.SLOWER, 0.031, 0.004, 0.058)).headline())
                .isEqualTo("After is 0.031 s a lap slower, somewhere between 0.004 and 0.058.");
    }

    @Test
    void levelNamesTheMargin() {
        assertThat(words(verdict(Decision.LEVEL, 0.0, -0.012, 0.013)).headline())
                .isEqualTo("Level: any difference is within your margin of 0.3 % (0.019 s a lap), somewhere between "
                        + "0.012 s faster and 0.013 s slower.");
    }

    @Test
    void notSureSaysHowManyMoreLaps() {
        VerdictInWords words = words(verdict(Decision.MORE_LAPS, -0.01, -0.05, 0.02));
        assertThat(words.headline()).isEqualTo("Not sure yet: somewhere between 0.05 s faster and 0.02 s slower.");
        assertThat(words.needed()).isEqualTo("About 8 more laps each way should settle it.");
        assertThat(words.confidence()).isEmpty();
    }

    @Test
    void anIntervalWiderThanALapIsNotToldInNumbers() {
        VerdictInWords words = words(verdict(Decision.MORE_LAPS, -0.01, -6.2, 2e18));
        assertThat(words.headline()).isEqualTo("Not sure yet: so few laps of the plan leave the difference wide open.");
    }

    @Test
    void aHopelessDifferenceIsCalledThat() {
        Verdict verdict =
                with(verdict(Decision.MORE_LAPS, -0.001, -0.05, 0.049), OptionalInt.empty(), OptionalInt.of(1));
        assertThat(words(verdict).needed())
                .isEqualTo(
                        "If there is a difference, it is small: it would take more than 200 laps each way to tell. To show that it is"
                                + " within your margin of 0.019 s takes about 1 lap each way.");
    }

    @Test
    void withoutADifferenceItSaysWhatIsMissing() {
        Verdict verdict = new Verdict(
                Decision.MORE_LAPS,
                Optional.empty(),
                Optional.empty(),
                LapsNeeded.NONE,
                OptionalInt.empty(),
                stint(3),
                stint(0),
                List.of(),
                Optional.empty(),
                Set.of(Caveat.TOO_FEW_LAPS));
        VerdictInWords words = words(verdict);
        assertThat(words.headline())
                .isEqualTo("Too few laps to compare yet: it takes 5 clean laps a side and 10 in all. So far 3 before, "
                        + "0 after.");
        assertThat(words.caveats()).as("not said twice").isEmpty();
        assertThat(words.offs()).isEmpty();
    }

    @Test
    void aVerdictReachedEarlierStandsButSaysSo() {
        Verdict verdict = verdict(Decision.FASTER, -0.04, -0.1, 0.02);
        assertThat(words(verdict).headline())
                .isEqualTo(
                        "After is faster: an earlier look settled that, and it stands. All the laps together say somewhere "
                                + "between 0.10 s faster and 0.02 s slower.");
    }

    @ParameterizedTest
    @CsvSource({
        "-0.2, -0.1, somewhere between 0.10 and 0.20 s faster",
        "0.1, 0.2, somewhere between 0.10 and 0.20 s slower",
        "-0.0001, 0.2, somewhere between almost 0 s faster and 0.200 s slower",
    })
    void aRangeNamesItsDirection(double low, double high, String words) {
        assertThat(VerdictInWords.range(new Interval(low, high))).isEqualTo(words);
    }

    @Test
    void openRangesDoNotPretend() {
        assertThat(VerdictInWords.range(new Interval(-INFINITE, -0.1))).isEqualTo("at least 0.10 s faster");
        assertThat(VerdictInWords.range(new Interval(-INFINITE, 0.1)))
                .isEqualTo("at most 0.10 s slower, and no telling how much faster");
        assertThat(VerdictInWords.range(new Interval(0.1, INFINITE))).isEqualTo("at least 0.10 s slower");
        assertThat(VerdictInWords.range(new Interval(-0.1, INFINITE)))
                .isEqualTo("at most 0.10 s faster, and no telling how much slower");
        assertThat(VerdictInWords.range(new Interval(-INFINITE, INFINITE)))
                .isEqualTo("the laps so far leave everything open");
    }

    @Test
    void consistencyAndOffsHaveTheirOwnSentences() {
        VerdictInWords words = words(verdict(Decision.FASTER, -0.07, -0.12, -0.02));
        assertThat(words.consistency())
                .isEqualTo("After is steadier: the spread is 0.72 times that before, somewhere between 0.55 and 0.93.");
        assertThat(words.offs())
                .isEqualTo(
                        "Lost to an off: 1 of 22 laps before, 3 of 24 laps after. Chance alone could do that (p = 0.61).");
    }

    @Test
    void ninetyPercentIsOnceInTen() {
        TrialSettings club = new TrialSettings(0.1, 0.003, false, Optional.empty(), NoisePrior.DEFAULT);
        assertThat(new VerdictInWords(verdict(Decision.FASTER, -0.07, -0.12, -0.02), club).confidence())
                .endsWith("at most once in ten.");
    }

    @ParameterizedTest
    @EnumSource(Caveat.class)
    void everyCaveatIsASentence(Caveat caveat) {
        Verdict verdict = withCaveats(verdict(Decision.FASTER, -0.07, -0.12, -0.02), EnumSet.of(caveat));
        assertThat(words(verdict).caveats())
                .singleElement()
                .satisfies(sentence -> assertThat(sentence).endsWith(".").matches("[A-Z].{20,}"));
    }

    @ParameterizedTest
    @EnumSource(Decision.class)
    void noPraiseAndNoCertaintyWithoutAnInterval(Decision decision) {
        String headline = words(verdict(decision, -0.07, -0.12, -0.02)).headline();
        assertThat(headline).contains("between");
        assertThat(headline.toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("great", "well done", "congratulations", "certainly", "definitely", "proved", "!");
    }

    private static VerdictInWords words(Verdict verdict) {
        return new VerdictInWords(verdict, TrialSettings.DEFAULT);
    }

    private static Verdict verdict(Decision decision, double seconds, double low, double high) {
        Interval interval = new Interval(low, high);
        Interval share = interval.times(1 / 6.2);
        OffRates.Rate before = new OffRates.Rate(1, 22, new Interval(0.01, 0.22));
        OffRates.Rate after = new OffRates.Rate(3, 24, new Interval(0.04, 0.31));
        return new Verdict(
                decision,
                Optional.of(new Difference(seconds, interval, seconds / 6.2, share, 0.95)),
                Optional.of(new Consistency(
                        SteadyDecision.STEADIER,
                        Optional.of(0.72),
                        Optional.of(new Interval(0.55, 0.93)),
                        new OffRates(before, after, 0.61))),
                decision == Decision.MORE_LAPS
                        ? new LapsNeeded(OptionalInt.of(8), false, OptionalInt.of(40))
                        : LapsNeeded.NONE,
                OptionalInt.of(31),
                stint(21),
                stint(21),
                List.of(),
                Optional.empty(),
                Set.of());
    }

    private static Verdict with(Verdict verdict, OptionalInt eachWay, OptionalInt forMargin) {
        return new Verdict(
                verdict.decision(),
                verdict.difference(),
                verdict.consistency(),
                new LapsNeeded(eachWay, false, forMargin),
                verdict.decidedAtLap(),
                verdict.before(),
                verdict.after(),
                verdict.runs(),
                verdict.working(),
                verdict.caveats());
    }

    private static Verdict withCaveats(Verdict verdict, Set<Caveat> caveats) {
        return new Verdict(
                verdict.decision(),
                verdict.difference(),
                verdict.consistency(),
                verdict.needed(),
                verdict.decidedAtLap(),
                verdict.before(),
                verdict.after(),
                verdict.runs(),
                verdict.working(),
                caveats);
    }

    private static Stint stint(int clean) {
        OptionalDouble none = OptionalDouble.empty();
        return new Stint(
                List.of(),
                clean,
                clean > 0 ? OptionalDouble.of(6.2) : none,
                none,
                none,
                none,
                none,
                Optional.empty(),
                none,
                none,
                none,
                none);
    }
}
