package org.lapwright.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.lapwright.app.store.MemoryGarage;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.DriverNoise;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

class KnownDriverTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T20:15:30Z"), ZoneOffset.UTC);

    private final GarageStore store = new MemoryGarage();
    private final KnownDriver driver = new KnownDriver(store);
    private final KeepComparison keeping = new KeepComparison(store, new JudgeChange(), driver, CLOCK);
    private final ShowKept kept = new ShowKept(store, driver, CLOCK);

    @Test
    void ofAnEmptyGarageNothingIsLearned() {
        assertThat(driver.prior()).isEqualTo(NoisePrior.DEFAULT);
    }

    @Test
    void whatIsKeptRemovedAndBroughtBackIsTakenIn() {
        keep(session(1), TrialSettings.DEFAULT);
        NoisePrior one = DriverNoise.learn(List.of(session(1)));
        assertThat(driver.prior()).isEqualTo(one).isNotEqualTo(NoisePrior.DEFAULT);
        SavedComparison second = keep(session(2), TrialSettings.DEFAULT);
        NoisePrior two = DriverNoise.learn(List.of(session(2), session(1)));
        assertThat(driver.prior()).isEqualTo(two).isNotEqualTo(one);
        kept.remove(second.id());
        assertThat(driver.prior()).isEqualTo(one);
        kept.bringBack(second.id());
        assertThat(driver.prior()).isEqualTo(two);
    }

    @Test
    void theExampleAndLapsTimedByHandTeachNothing() {
        new ExampleGarage(store, new JudgeChange(), CLOCK).putInAtFirstStart();
        keep(session(1), TrialSettings.DEFAULT.withHandTimed(true));
        assertThat(driver.prior()).isEqualTo(NoisePrior.DEFAULT);
    }

    @Test
    void onlyTheNewestFortySessionsCount() {
        IntStream.rangeClosed(1, 42).forEach(seed -> keep(session(seed), TrialSettings.DEFAULT));
        List<Session> newest = new ArrayList<>(
                IntStream.rangeClosed(3, 42).mapToObj(KnownDriverTest::session).toList());
        Collections.reverse(newest);
        assertThat(driver.prior()).isEqualTo(DriverNoise.learn(newest));
    }

    @Test
    void whatIsLearnedIsKeptForAllThreads() throws Exception {
        keep(session(1), TrialSettings.DEFAULT);
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            Callable<NoisePrior> question = driver::prior;
            NoisePrior first = driver.prior();
            for (Future<NoisePrior> answer : threads.invokeAll(Collections.nCopies(32, question))) {
                assertThat(answer.get()).isSameAs(first);
            }
            driver.forget();
            List<NoisePrior> afresh = new ArrayList<>();
            for (Future<NoisePrior> answer : threads.invokeAll(Collections.nCopies(32, question))) {
                afresh.add(answer.get());
            }
            assertThat(afresh).allMatch(prior -> prior == afresh.get(0));
            assertThat(afresh.get(0)).isEqualTo(first).isNotSameAs(first);
        } finally {
            threads.shutdownNow();
            assertThat(threads.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
        }
    }

    /** A verdict is wanted all the more when the disk is failing. */
    @Test
    void aGarageThatCannotBeReadLeavesTheUsualBelief() {
        keep(session(1), TrialSettings.DEFAULT);
        store.close();
        assertThat(driver.prior()).isEqualTo(NoisePrior.DEFAULT);
    }

    @Test
    void theLadderGoesByTheDriverAndThatOfTheExampleDoesNot() {
        ShowLadder ladder = new ShowLadder(store, driver, Clock.systemUTC());
        new ExampleGarage(store, new JudgeChange(), CLOCK).putInAtFirstStart();
        var example = ladder.ladder("Shed loop");
        SavedComparison own = keep(session(1), TrialSettings.DEFAULT);
        assertThat(ladder.ladder("Attic oval"))
                .isEqualTo(org.lapwright.core.trial.ladder.Ladder.rank(
                                store.lapsOnTrack("Attic oval"), DriverNoise.learn(List.of(session(1))))
                        .entries());
        assertThat(own.kept().track()).isEqualTo("Attic oval");
        assertThat(ladder.ladder("Shed loop")).isEqualTo(example);
    }

    private SavedComparison keep(Session session, TrialSettings settings) {
        KeptComparison comparison =
                new KeptComparison("Redshank", "Attic oval", "", "", "", "", Side.AFTER, session, settings, false);
        return keeping.keep(comparison, "key " + store.comparisons().size());
    }

    /** A made-up session of enough laps, always the same for the same seed. */
    private static Session session(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        return Session.of(run(random), run(random));
    }

    private static TimedRun run(SplittableRandom random) {
        return TimedRun.of(random.doubles(12, 6.15, 6.25).toArray());
    }
}
