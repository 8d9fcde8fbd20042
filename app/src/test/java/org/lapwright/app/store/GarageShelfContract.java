package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.ShelfStore.NewPart;
import org.lapwright.core.car.shelf.Happened;
import org.lapwright.core.car.shelf.LapsDriven;
import org.lapwright.core.car.shelf.Part;
import org.lapwright.core.car.shelf.PartEvent;
import org.lapwright.core.car.shelf.PartKind;
import org.lapwright.core.trial.session.Side;

/** What every garage does with parts. */
abstract class GarageShelfContract extends GarageDriveContract {
    private static final Instant MONDAY = Instant.parse("2026-03-02T20:00:00Z");
    private static final NewPart BRAID = new NewPart(new PartKind("braid"), "wide pair", "two lines\nof note");

    @Test
    void aGarageBeginsWithAnEmptyShelf() {
        assertThat(store.shelf().parts()).isEmpty();
        assertThat(store.shelf().happened()).isEmpty();
        assertThat(store.shelf().driven()).isEmpty();
    }

    @Test
    void whatHappenedToAPartComesBackInItsOrder() {
        Part braid = store.addPart(BRAID, "one", MONDAY);
        Part axle = store.addPart(new NewPart(new PartKind("axle"), "steel", ""), "two", MONDAY);
        List<PartEvent> events = List.of(
                new PartEvent.Fitted("Dunlin"),
                new PartEvent.Reminder("new braid", 300),
                new PartEvent.LapsAdded(-12),
                new PartEvent.Serviced("new braid"),
                new PartEvent.TakenOff(),
                new PartEvent.PutAway(),
                new PartEvent.BroughtBack());
        for (int i = 0; i < events.size(); i++) {
            store.partHappened(braid.id(), events.get(i), "key " + i, MONDAY.plusSeconds(i));
        }
        assertThat(store.shelf().parts()).containsExactly(braid, axle);
        assertThat(braid.note()).isEqualTo(BRAID.note());
        assertThat(store.shelf().happened()).extracting(Happened::event).isEqualTo(events);
        assertThat(store.shelf().happened()).extracting(Happened::at).startsWith(MONDAY, MONDAY.plusSeconds(1));
    }

    @Test
    void thePartAndTheEventSentTwiceAreKeptOnce() {
        Part braid = store.addPart(BRAID, "one", MONDAY);
        assertThat(store.addPart(BRAID, "one", MONDAY)).isEqualTo(braid);
        store.partHappened(braid.id(), new PartEvent.LapsAdded(5), "laps", MONDAY);
        store.partHappened(braid.id(), new PartEvent.LapsAdded(5), "laps", MONDAY);
        assertThat(store.shelf().parts()).hasSize(1);
        assertThat(store.shelf().happened()).hasSize(1);
    }

    @Test
    void lapsOfCarsThatPartsWereOnComeWithTheirRunsArchivedOrNot() {
        var kept = store.keep(Sample.of("Dunlin", Side.AFTER, 6.2, 6.1), Sample.TOO_FEW, "a", MONDAY);
        store.keep(Sample.of("Knot", Side.AFTER, 6.2, 6.1), Sample.TOO_FEW, "b", MONDAY);
        store.archive(kept.id(), MONDAY);
        assertThat(store.shelf().driven()).isEmpty();
        Part braid = store.addPart(BRAID, "one", MONDAY);
        store.partHappened(braid.id(), new PartEvent.Fitted("DUNLIN"), "fit", MONDAY);
        assertThat(store.shelf().happened())
                .extracting(Happened::event)
                .containsExactly(new PartEvent.Fitted("Dunlin"));
        assertThat(store.shelf().driven())
                .hasSize(kept.kept().session().runs().size())
                .allMatch(laps -> laps.car().equals("Dunlin") && laps.at().equals(MONDAY));
        assertThat(store.shelf().driven().stream().mapToInt(LapsDriven::laps).sum())
                .isEqualTo(kept.kept().session().runs().stream()
                        .mapToInt(run -> run.run().laps().size())
                        .sum());
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.partHappened(7, new PartEvent.TakenOff(), "key", MONDAY))
                .withMessage("there is no part number 7 on the shelf");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.addPart(new NewPart(new PartKind("braid"), "a\u0000b", ""), "key", MONDAY))
                .withMessageContaining("U+0000");
        assertThatIllegalArgumentException().isThrownBy(() -> store.addPart(BRAID, "", MONDAY));
        assertThat(store.shelf().parts()).isEmpty();
    }
}
