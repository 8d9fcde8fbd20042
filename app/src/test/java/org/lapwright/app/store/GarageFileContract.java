package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.FileStore.Kind;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.core.trial.ladder.CarLaps;
import org.lapwright.core.trial.session.Side;

/** What every garage does with car and track files. */
abstract class GarageFileContract extends GarageLadderContract {
    private static final Instant MONDAY = Instant.parse("2026-03-02T20:00:00Z");
    private static final Instant TUESDAY = Instant.parse("2026-03-03T20:00:00Z");

    private KeptFile keep(Kind kind, String name, String text, boolean example, Instant at) {
        return store.keepFile(new KeptFile(kind, name, text, example, at));
    }

    @Test
    void aNewGarageHasNoFiles() {
        assertThat(store.files(Kind.CAR)).isEmpty();
        assertThat(store.files(Kind.TRACK)).isEmpty();
        assertThat(store.file(Kind.CAR, "Dunlin")).isEmpty();
    }

    @Test
    void aFileComesBackWordForWord() {
        String text = "{\n \"name\": \"Dünlin 𝔻\",\r\n\t\"a\": 6.50\n}";
        KeptFile kept = keep(Kind.CAR, "Dünlin", text, false, MONDAY);
        assertThat(kept).isEqualTo(new KeptFile(Kind.CAR, "Dünlin", text, false, MONDAY));
        assertThat(store.files(Kind.CAR)).containsExactly(kept);
        assertThat(store.files(Kind.TRACK)).isEmpty();
        assertThat(store.file(Kind.CAR, " dÜNLIN ")).contains(kept);
    }

    @Test
    void theNewestCountsUnderTheNameKeptFirst() {
        for (Kind kind : Kind.values()) {
            keep(kind, "Shed", "old", false, MONDAY);
            KeptFile newer = keep(kind, "SHED", "new", false, TUESDAY);
            assertThat(newer.name()).isEqualTo("Shed");
            assertThat(store.files(kind)).containsExactly(newer);
        }
    }

    @Test
    void theSameTextAgainChangesNothing() {
        KeptFile first = keep(Kind.TRACK, "Shed", "same", false, MONDAY);
        assertThat(keep(Kind.TRACK, "Shed", "same", false, TUESDAY)).isEqualTo(first);
        assertThat(store.file(Kind.TRACK, "Shed")).contains(first);
    }

    @Test
    void whatWasOnceThereCanBeKeptAgain() {
        keep(Kind.CAR, "Dunlin", "one", false, MONDAY);
        keep(Kind.CAR, "Dunlin", "two", false, MONDAY);
        KeptFile back = keep(Kind.CAR, "Dunlin", "one", false, TUESDAY);
        assertThat(store.file(Kind.CAR, "Dunlin")).contains(back);
        assertThat(back.savedAt()).isEqualTo(TUESDAY);
    }

    @Test
    void filesAreListedByName() {
        for (String name : List.of("whimbrel", "Dunlin", "Greenshank", "avocet")) {
            keep(Kind.CAR, name, "{}", false, MONDAY);
        }
        assertThat(store.files(Kind.CAR))
                .extracting(KeptFile::name)
                .containsExactly("avocet", "Dunlin", "Greenshank", "whimbrel");
    }

    @Test
    void theOwnersFileStandsBeforeTheExamples() {
        for (Kind kind : Kind.values()) {
            KeptFile example = keep(kind, "Shed", "example", true, MONDAY);
            assertThat(store.file(kind, "shed")).contains(example);
            KeptFile own = keep(kind, "shed", "own", false, MONDAY);
            assertThat(store.files(kind)).containsExactly(own);
            assertThat(keep(kind, "Shed", "example, newer", true, TUESDAY).example())
                    .isTrue();
            assertThat(store.files(kind)).containsExactly(own);
        }
    }

    @Test
    void theExamplesFilesGoAndComeWithIt() {
        keep(Sample.example(Sample.of("Knot", Side.AFTER, 6.2, 6.1)));
        KeptFile car = keep(Kind.CAR, "Knot", "example", true, MONDAY);
        KeptFile track = keep(Kind.TRACK, "Shed loop", "example", true, MONDAY);
        KeptFile own = keep(Kind.CAR, "Avocet", "own", false, MONDAY);
        store.archiveExample(TUESDAY);
        assertThat(store.files(Kind.CAR)).containsExactly(own);
        assertThat(store.files(Kind.TRACK)).isEmpty();
        store.restoreExample();
        assertThat(store.files(Kind.CAR)).containsExactly(own, car);
        assertThat(store.file(Kind.TRACK, "shed loop")).contains(track);
    }

    @Test
    void aFileOfACarWithLapsLeavesItsLadderAlone() {
        keep(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1));
        List<CarLaps> before = store.lapsOnTrack("Shed loop");
        keep(Kind.CAR, "Dunlin", "{}", false, TUESDAY);
        assertThat(store.lapsOnTrack("Shed loop")).isEqualTo(before);
        keep(Sample.of("Dunlin", Side.BEFORE, 6.11, 6.5));
        assertThat(onLadder("Dunlin")).containsExactly(6.1, 6.11);
        assertThat(store.file(Kind.CAR, "Dunlin")).isPresent();
    }

    @Test
    void whatADatabaseLosesIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> keep(Kind.CAR, "Dun\u0000lin", "{}", false, MONDAY))
                .withMessageContaining("U+0000");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> keep(Kind.CAR, "Dunlin", "{\uD800}", false, MONDAY))
                .withMessageContaining("U+D800");
        assertThat(store.files(Kind.CAR)).isEmpty();
    }
}
