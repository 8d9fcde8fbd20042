package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.Instant;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.FileStore.Kind;
import org.lapwright.app.usecase.HistoryStore.NewStep;
import org.lapwright.app.usecase.HistoryStore.StaleBenchException;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.StoredStep;
import org.lapwright.app.usecase.HistoryStore.Why;
import org.lapwright.app.usecase.KeptFile;

/** What every garage does with the steps of a car. */
abstract class GarageStepContract extends GarageFileContract {
    private static final Instant MONDAY = Instant.parse("2026-03-02T20:00:00Z");

    private StoredHistory log(OptionalLong onto, String words, String file) {
        return store.log(step(onto, words, file), "key of " + words);
    }

    private static NewStep step(OptionalLong onto, String words, String file) {
        return new NewStep("Dunlin", onto, "base", "noted", words, "{\"what\":1}", file, false, MONDAY);
    }

    private static OptionalLong on(StoredHistory history) {
        return OptionalLong.of(history.present());
    }

    @Test
    void aCarBeginsWithoutSteps() {
        assertThat(store.history("Dunlin")).isEmpty();
    }

    @Test
    void theFirstLogKeepsWhatWasBeforeAsWell() {
        StoredHistory history = log(OptionalLong.empty(), "tyres trued", "after");
        assertThat(history.steps())
                .extracting(StoredStep::kind, StoredStep::words, StoredStep::file, StoredStep::change)
                .containsExactly(
                        tuple("first", "first", "base", ""), tuple("noted", "tyres trued", "after", "{\"what\":1}"));
        assertThat(history.presentStep().parent())
                .hasValue(history.steps().get(0).id());
        assertThat(history.presentStep().at()).isEqualTo(MONDAY);
        assertThat(store.history(" dunlin ")).contains(history);
        assertThat(store.file(Kind.CAR, "Dunlin")).map(KeptFile::text).contains("after");
    }

    @Test
    void theSameRequestLogsOnce() {
        StoredHistory once = log(OptionalLong.empty(), "tyres trued", "after");
        assertThat(log(OptionalLong.empty(), "tyres trued", "after")).isEqualTo(once);
        assertThat(log(on(once), "tyres trued", "after")).isEqualTo(once);
    }

    @Test
    void anUndoneStepStaysAndTheNextBranchesOff() {
        StoredHistory one = log(OptionalLong.empty(), "shim in", "one");
        StoredHistory two = log(on(one), "magnet out", "two");
        StoredHistory undone = store.putOn("DUNLIN", two.present(), one.present(), Why.UNDO, "undo", MONDAY);
        assertThat(undone.present()).isEqualTo(one.present());
        assertThat(undone.steps()).isEqualTo(two.steps());
        assertThat(store.file(Kind.CAR, "Dunlin")).map(KeptFile::text).contains("one");
        StoredHistory branched = log(on(undone), "oiled", "three");
        assertThat(branched.presentStep().parent()).hasValue(one.present());
        assertThat(branched.steps()).hasSize(4);
    }

    @Test
    void whoeverWorksOnAnOldSetUpIsToldAndLosesNothing() {
        StoredHistory one = log(OptionalLong.empty(), "shim in", "one");
        StoredHistory two = log(on(one), "magnet out", "two");
        assertThatThrownBy(() -> log(on(one), "oiled", "three"))
                .isInstanceOfSatisfying(
                        StaleBenchException.class,
                        stale -> assertThat(stale.now()).isEqualTo(two))
                .hasMessageContaining("magnet out");
        assertThatThrownBy(() -> store.putOn("Dunlin", one.present(), two.present(), Why.BACK, "back", MONDAY))
                .isInstanceOf(StaleBenchException.class);
        assertThat(store.history("Dunlin")).contains(two);
    }

    @Test
    void aStepThatIsNotTheCarsIsRefused() {
        StoredHistory one = log(OptionalLong.empty(), "shim in", "one");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.putOn("Dunlin", one.present(), 99, Why.BACK, "back", MONDAY))
                .withMessageContaining("99");
        assertThatIllegalArgumentException().isThrownBy(() -> store.putOn("Knot", 1, 2, Why.BACK, "back", MONDAY));
        assertThat(store.history("Dunlin")).contains(one);
    }

    @Test
    void measuringAnewIsAStepOfACarThatHasSteps() {
        StoredHistory one = log(OptionalLong.empty(), "shim in", "one");
        store.keepFile(new KeptFile(Kind.CAR, "Dunlin", "weighed again", false, MONDAY));
        StoredHistory now = store.history("Dunlin").orElseThrow();
        assertThat(now.presentStep().kind()).isEqualTo("measured");
        assertThat(now.presentStep().file()).isEqualTo("weighed again");
        assertThat(now.presentStep().parent()).hasValue(one.present());
    }

    @Test
    void ownAndExampleCarsOfOneNameAreTwo() {
        store.keepFile(new KeptFile(Kind.CAR, "Dunlin", "example", true, MONDAY));
        NewStep example =
                new NewStep("Dunlin", OptionalLong.empty(), "base", "noted", "shown", "", "shown", true, MONDAY);
        StoredHistory shown = store.log(example, "example");
        assertThat(store.history("Dunlin")).contains(shown);
        StoredHistory own = log(OptionalLong.empty(), "mine", "mine");
        assertThat(own.example()).isFalse();
        assertThat(own.steps()).hasSize(2);
        assertThat(store.history("Dunlin")).contains(own);
    }

    @Test
    void aLoggedChangeThatWasDrivenAndDidNotStayComesOff() {
        StoredHistory one = log(OptionalLong.empty(), "shim in", "one");
        store.keep(Sample.change("Dunlin", "shim in", false), Sample.full(), "drive", MONDAY);
        StoredHistory now = store.history("Dunlin").orElseThrow();
        assertThat(now.presentStep().kind()).isEqualTo("first");
        assertThat(now.steps()).isEqualTo(one.steps());
        assertThat(store.file(Kind.CAR, "Dunlin")).map(KeptFile::text).contains("base");
    }

    @Test
    void aLoggedChangeThatStayedIsLeftOn() {
        StoredHistory one = log(OptionalLong.empty(), "shim in", "one");
        store.keep(Sample.change("Dunlin", "shim in", true), Sample.full(), "drive", MONDAY);
        assertThat(store.history("Dunlin")).contains(one);
        store.keep(Sample.change("Dunlin", "shim in", false), Sample.full(), "again", MONDAY);
        assertThat(store.history("Dunlin"))
                .as("driven already: another change by the same name")
                .contains(one);
    }
}
