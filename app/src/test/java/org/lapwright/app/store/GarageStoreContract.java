package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.app.usecase.StoreException;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** What every garage does, wherever it is kept. A store's test extends this and adds nothing. */
abstract class GarageStoreContract extends GaragePhotoContract {
    @Test
    void aNewStoreIsEmpty() {
        assertThat(store.comparisons()).isEmpty();
        assertThat(store.archived()).isEmpty();
        assertThat(store.comparison(1)).isEmpty();
        assertThat(store.tracks()).isEmpty();
        assertThat(store.lapsOnTrack("Shed loop")).isEmpty();
        assertThat(store.isExample("Dunlin")).isFalse();
        assertThat(store.exampleState()).isEqualTo(ExampleState.ABSENT);
    }

    @Test
    void everyFieldComesBackAsItWasKept() {
        List<SavedComparison> kept = new ArrayList<>();
        for (int number = 0; number < 80; number++) {
            KeptComparison comparison = Sample.numbered(number);
            SavedComparison saved = keep(comparison);
            assertThat(saved.kept()).isEqualTo(comparison);
            assertThat(store.comparison(saved.id())).contains(saved);
            kept.add(0, saved);
        }
        assertThat(store.comparisons()).isEqualTo(kept);
    }

    /** Record equality compares doubles by their bits. */
    @ParameterizedTest
    @ValueSource(
            doubles = {
                TimedLap.SHORTEST_S,
                TimedLap.LONGEST_S,
                6.0,
                6.1,
                0.1 + 0.2,
                1.0 / 3,
                6.000000000000001,
                1234.5678901234567,
            })
    void lapTimesComeBackBitForBit(double seconds) {
        KeptComparison comparison = Sample.of("Dunlin", Side.AFTER, seconds, Math.max(0.001, Math.nextDown(seconds)));
        assertThat(store.comparison(keep(comparison).id()).map(SavedComparison::kept))
                .contains(comparison);
    }

    @Test
    void extremesOfTheSettingsComeBack() {
        NoisePrior prior = new NoisePrior(Double.MIN_VALUE, 1e6, Math.nextDown(4.0), Integer.MAX_VALUE);
        KeptComparison comparison = withSettings(new TrialSettings(0.001, 0.1, true, Optional.empty(), prior));
        assertThat(store.comparison(keep(comparison).id()).map(SavedComparison::kept))
                .contains(comparison);
    }

    @Test
    void aNegativeZeroIsKeptAsZero() {
        SavedComparison saved = keep(withSettings(
                new TrialSettings(0.05, -0.0, false, Optional.empty(), new NoisePrior(-0.0, -0.0, -0.0, 0))));
        KeptComparison expected =
                withSettings(new TrialSettings(0.05, 0.0, false, Optional.empty(), new NoisePrior(0.0, 0.0, 0.0, 0)));
        assertThat(saved.kept()).isEqualTo(expected);
        assertThat(store.comparison(saved.id())).contains(saved);
    }

    private static KeptComparison withSettings(TrialSettings settings) {
        Session session = Session.of(TimedRun.of(6.1), TimedRun.of(6.0));
        return new KeptComparison("Dunlin", "Shed loop", "", "", "", "", Side.AFTER, session, settings, false);
    }

    @Test
    void aComparisonWithoutLapsComesBack() {
        KeptComparison noRuns = new KeptComparison(
                "Dunlin",
                "Shed loop",
                "",
                "",
                "",
                "",
                Side.BEFORE,
                new Session(List.of()),
                TrialSettings.DEFAULT,
                false);
        KeptComparison noLaps = new KeptComparison(
                "Dunlin",
                "Shed loop",
                "",
                "",
                "",
                "",
                Side.BEFORE,
                Session.of(TimedRun.of(), TimedRun.of()),
                TrialSettings.DEFAULT,
                false);
        assertThat(store.comparison(keep(noRuns).id()).map(SavedComparison::kept))
                .contains(noRuns);
        assertThat(store.comparison(keep(noLaps).id()).map(SavedComparison::kept))
                .contains(noLaps);
        assertThat(store.tracks()).isEmpty();
    }

    @Test
    void theRacersWordComesBackInTheOrderSaid() {
        List<Overrule> words = List.of(
                new Overrule(9, LapKind.OFF, "nudged by a cat"),
                new Overrule(2, LapKind.CLEAN, "I braked, the lap was whole"),
                new Overrule(9, LapKind.CLEAN, "no, it was lap 8"));
        TimedRun run = new TimedRun(List.of(new TimedLap(9, 6.2), new TimedLap(2, 6.3)), words);
        Session session = new Session(List.of(new DrivenRun(Side.AFTER, run)));
        KeptComparison comparison = new KeptComparison(
                "Dunlin", "Shed loop", "", "", "", "", Side.AFTER, session, TrialSettings.DEFAULT, false);
        assertThat(store.comparison(keep(comparison).id()).map(SavedComparison::kept))
                .contains(comparison);
    }

    @Test
    void timesAreKeptToTheMicrosecond() {
        SavedComparison saved = keepAt(Sample.numbered(1), Instant.parse("2026-03-01T20:15:30.123456789Z"));
        assertThat(saved.savedAt()).isEqualTo("2026-03-01T20:15:30.123456Z");
        SavedComparison early = keepAt(Sample.numbered(2), Instant.parse("1969-12-31T23:59:59.999999Z"));
        assertThat(early.savedAt()).isEqualTo("1969-12-31T23:59:59.999999Z");
        assertThat(store.comparison(early.id())).contains(early);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> keepAt(Sample.numbered(3), Instant.MAX))
                .withMessageContaining("time is");
    }

    @Test
    void newestComesFirstByTimeThenByNumber() {
        SavedComparison first = keepAt(Sample.numbered(1), AT);
        SavedComparison second = keepAt(Sample.numbered(2), AT);
        SavedComparison older = keepAt(Sample.numbered(3), AT.minusSeconds(60));
        assertThat(store.comparisons()).containsExactly(second, first, older);
    }

    @Test
    void theSameKeySavesOnce() {
        SavedComparison first = store.keep(Sample.numbered(1), Sample.full(), "again", AT);
        assertThat(store.keep(Sample.numbered(1), Sample.full(), "again", AT.plusSeconds(5)))
                .isEqualTo(first);
        assertThat(store.keep(Sample.numbered(2), Sample.TOO_FEW, "again", AT)).isEqualTo(first);
        assertThat(store.keep(Sample.numbered(1), Sample.full(), "Again", AT).id())
                .isNotEqualTo(first.id());
        store.archive(first.id(), AT);
        assertThat(store.keep(Sample.numbered(1), Sample.full(), "again", AT)).isEqualTo(first);
        assertThat(store.comparisons()).hasSize(1);
    }

    @Test
    void aKeyHasOneToEightyCharacters() {
        for (String key : List.of("", "k".repeat(81), "line\nbreak")) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> store.keep(Sample.numbered(1), Sample.full(), key, AT))
                    .withMessageContaining("request key");
        }
        store.keep(Sample.numbered(1), Sample.full(), "🏎".repeat(40), AT);
        assertThat(store.comparisons()).hasSize(1);
    }

    @Test
    void archivingHidesAndRestoringBringsBack() {
        SavedComparison first = keep(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1));
        SavedComparison second = keep(Sample.of("Whimbrel", Side.AFTER, 6.4, 6.3));
        store.archive(first.id(), AT);
        store.archive(first.id(), AT.plusSeconds(1));
        assertThat(store.comparisons()).containsExactly(second);
        assertThat(store.archived()).containsExactly(first);
        assertThat(store.comparison(first.id())).contains(first);
        assertThat(carsOnLadder()).containsExactly("Whimbrel");
        store.restore(first.id());
        store.restore(first.id());
        assertThat(store.archived()).isEmpty();
        assertThat(store.comparisons()).containsExactly(second, first);
        assertThat(onLadder("Dunlin")).containsExactly(6.1);
    }

    @Test
    void comparisonsComePageByPage() {
        List<SavedComparison> kept = new ArrayList<>();
        for (int number = 0; number < 7; number++) {
            kept.add(0, keepAt(Sample.numbered(number), AT.plusSeconds(number / 2)));
        }
        store.archive(kept.remove(2).id(), AT);
        assertThat(store.comparisons(0, 4)).isEqualTo(kept.subList(0, 4));
        assertThat(store.comparisons(4, 4)).isEqualTo(kept.subList(4, 6));
        assertThat(store.comparisons(6, 4)).isEmpty();
    }

    @Test
    void carsDrivenAreOnesOwnTheOneKeptLastFirst() {
        keepAt(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1), AT);
        keepAt(Sample.of("Whimbrel", Side.AFTER, 6.2, 6.1), AT.plusSeconds(1));
        keepAt(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1), AT.plusSeconds(2));
        keepAt(Sample.example(Sample.numbered(3)), AT.plusSeconds(3));
        store.archive(
                keepAt(Sample.of("Heron", Side.AFTER, 6.2, 6.1), AT.plusSeconds(4))
                        .id(),
                AT);
        assertThat(store.carsDriven()).containsExactly("Dunlin", "Whimbrel");
    }

    @Test
    void theRevisionIsAnotherAfterAnyChange() {
        long empty = store.revision();
        SavedComparison first = keep(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1));
        long kept = store.revision();
        assertThat(kept).isNotEqualTo(empty).isEqualTo(store.revision());
        store.archive(first.id(), AT);
        assertThat(store.revision()).isNotEqualTo(kept);
    }

    @Test
    void archivedOnesComeNewestFirstWhateverWasArchivedLast() {
        SavedComparison first = keepAt(Sample.numbered(1), AT);
        SavedComparison second = keepAt(Sample.numbered(2), AT);
        SavedComparison older = keepAt(Sample.example(Sample.numbered(3)), AT.minusSeconds(60));
        SavedComparison shown = keepAt(Sample.numbered(4), AT);
        store.archive(second.id(), AT.plusSeconds(1));
        store.archive(first.id(), AT.plusSeconds(2));
        store.archiveExample(AT.plusSeconds(3));
        assertThat(store.archived()).containsExactly(second, first, older);
        assertThat(store.comparisons()).containsExactly(shown);
    }

    @Test
    void aNumberThatIsNotThereIsSaidSo() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.archive(7, AT))
                .withMessageContaining("no comparison number 7");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.restore(7))
                .withMessageContaining("no comparison number 7");
        assertThat(store.comparison(-1)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "Dunlin,dUNLIN",
        "Größe,GRÖSSE",
        "ΟΔΟΣ,οδος",
        "Élan,e\u0301lan",
        "Long  Tail,long tail",
        "ısı,ISI",
        "привет,ПРИВЕТ",
    })
    void namesMeetWhateverTheirCase(String first, String second) {
        keep(Sample.named(first, "track " + first, "lane " + first, "driver " + first, ""));
        SavedComparison saved = keep(Sample.named(second, "TRACK " + second, "LANE " + second, "DRIVER " + second, ""));
        assertThat(saved.kept())
                .isEqualTo(Sample.named(first, "track " + first, "lane " + first, "driver " + first, ""));
        assertThat(store.comparison(saved.id())).contains(saved);
        assertThat(store.lapsOnTrack("tRACK " + second)).hasSize(1);
    }

    @Test
    void differentNamesStayApart() {
        List<String> names = List.of("Dunlin", "Dünlin", "Dunlin 2", "Dunlin ²", "Dunlin%", "Dunlin_", "Dunli");
        names.forEach(name -> keep(Sample.of(name, Side.AFTER, 6.2, 6.1)));
        assertThat(carsOnLadder()).containsExactlyInAnyOrderElementsOf(names);
    }

    @Test
    void oneLaneNameOnTwoTracksIsTwoLanes() {
        keep(Sample.named("Dunlin", "Shed loop", "Red", "", ""));
        SavedComparison saved = keep(Sample.named("Dunlin", "Attic oval", "red", "", ""));
        assertThat(saved.kept().lane()).isEqualTo("red");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Robert'); DROP TABLE car;--",
                "\"quoted\" 'twice' `thrice`",
                ":name ?1 ${pk} <which> #{x} \\:x",
                "🏎️👩🏽‍🔧🇳🇱",
                "\u202Eright to left\u202C",
                "zero\u200Bwidth",
                "=1+1",
                "../../etc",
                "<img src=x onerror=alert(1)>",
                "\uFFFE\uFFFD",
            })
    void hostileNamesAreJustNames(String name) {
        KeptComparison comparison =
                Sample.named(name, name, name.substring(0, Math.min(40, name.length())), name, name);
        SavedComparison saved = keep(comparison);
        assertThat(store.comparison(saved.id()).map(SavedComparison::kept)).contains(comparison);
        assertThat(store.tracks()).containsExactly(name);
        assertThat(store.lapsOnTrack(name)).extracting(CarLaps::car).containsExactly(name);
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\u0000b", "a\u0007b", "a\u001Bb", "a\u007Fb", "a\u0085b", "a\uD83Cb", "a\uDFCEb"})
    void whatADatabaseLosesIsRefusedByNameAndPlace(String text) {
        for (KeptComparison comparison : List.of(
                Sample.named(text, "t", "l", "d", "c"),
                Sample.named("c", text, "l", "d", "c"),
                Sample.named("c", "t", text, "d", "c"),
                Sample.named("c", "t", "l", text, "c"),
                Sample.named("c", "t", "l", "d", text),
                withReason(text))) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> keep(comparison))
                    .withMessageContaining("U+%04X as its character 2".formatted((int) text.charAt(1)));
        }
        assertThat(store.comparisons()).isEmpty();
    }

    private static KeptComparison withReason(String reason) {
        TimedRun run = new TimedRun(List.of(new TimedLap(1, 6.2)), List.of(new Overrule(1, LapKind.OFF, reason)));
        Session session = new Session(List.of(new DrivenRun(Side.AFTER, run)));
        return new KeptComparison("c", "t", "", "", "", "", Side.AFTER, session, TrialSettings.DEFAULT, false);
    }

    @Test
    void notesHaveLinesButNamesDoNot() {
        KeptComparison lines = Sample.named("c", "t", "l", "d", "first line\n\tsecond line\r\nthird");
        assertThat(store.comparison(keep(lines).id()).map(SavedComparison::kept))
                .contains(lines);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> keep(Sample.named("two\nlines", "t", "l", "d", "")))
                .withMessageContaining("name of the car");
    }

    @Test
    void manyThreadsKeepEachTheirOwnOnce() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            List<Callable<SavedComparison>> saves = new ArrayList<>();
            // Every key is sent twice, by different threads.
            IntStream.range(0, 160)
                    .forEach(i -> saves.add(() -> {
                        store.comparisons();
                        return store.keep(Sample.numbered(i % 80), Sample.full(), "thread " + i % 80, AT);
                    }));
            List<SavedComparison> saved = new ArrayList<>();
            for (Future<SavedComparison> done : threads.invokeAll(saves)) {
                saved.add(done.get());
            }
            assertThat(store.comparisons()).hasSize(80).containsExactlyInAnyOrderElementsOf(saved.subList(0, 80));
            assertThat(saved.subList(80, 160)).isEqualTo(saved.subList(0, 80));
            assertThat(saved.subList(0, 80))
                    .extracting(SavedComparison::kept)
                    .isEqualTo(IntStream.range(0, 80).mapToObj(Sample::numbered).toList());
        } finally {
            threads.shutdownNow();
            assertThat(threads.awaitTermination(10, TimeUnit.SECONDS)).isTrue();
        }
    }

    @Test
    void aClosedStoreSaysSo() {
        store.close();
        store.close();
        for (Runnable call : List.<Runnable>of(
                store::comparisons,
                store::archived,
                () -> store.comparison(1),
                store::tracks,
                () -> store.lapsOnTrack("Shed loop"),
                () -> store.isExample("Dunlin"),
                store::exampleState,
                () -> store.archive(1, AT),
                () -> store.restore(1),
                () -> store.archiveExample(AT),
                store::restoreExample,
                () -> keep(Sample.numbered(1)))) {
            assertThatThrownBy(call::run).isInstanceOf(StoreException.class).hasMessageContaining("closed");
        }
    }
}
