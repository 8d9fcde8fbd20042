package org.lapwright.core.car.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.car.shelf.PartEvent.BroughtBack;
import org.lapwright.core.car.shelf.PartEvent.Fitted;
import org.lapwright.core.car.shelf.PartEvent.LapsAdded;
import org.lapwright.core.car.shelf.PartEvent.PutAway;
import org.lapwright.core.car.shelf.PartEvent.Reminder;
import org.lapwright.core.car.shelf.PartEvent.Serviced;
import org.lapwright.core.car.shelf.PartEvent.TakenOff;

/** Where parts are and what they have run, against stories whose sums are in the head. */
class ShelfTest {
    private static final Part SOFT = new Part(1, new PartKind("rear tyres"), "soft", "");
    private static final Part HARD = new Part(2, new PartKind("Rear Tyres"), "hard", "");
    private static final Part AXLE = new Part(3, new PartKind("axle"), "steel", "");
    private static final Part SPARE = new Part(4, new PartKind("axle"), "hollow", "");
    private static final List<Part> ALL = List.of(SOFT, HARD, AXLE, SPARE);

    private static Happened at(int second, Part part, PartEvent event) {
        return new Happened(part.id(), event, Instant.ofEpochSecond(second));
    }

    private static LapsDriven laps(int second, String car, int laps) {
        return new LapsDriven(car, laps, Instant.ofEpochSecond(second));
    }

    private static PartState state(Part part, List<Happened> happened, LapsDriven... driven) {
        return Shelf.of(ALL, happened, List.of(driven)).find(part.id()).orElseThrow();
    }

    @Test
    void lapsCountForWhatWasOnTheCarThen() {
        List<Happened> story = List.of(
                at(10, SOFT, new Fitted("Dunlin")),
                at(20, SOFT, new TakenOff()),
                at(30, HARD, new Fitted("Dunlin")),
                at(40, SOFT, new Fitted("Knot")));
        LapsDriven[] driven = {
            laps(45, "Knot", 7),
            laps(5, "Dunlin", 1000),
            laps(15, "Dunlin", 40),
            laps(25, "Dunlin", 300),
            laps(35, "Dunlin", 20)
        };
        assertThat(state(SOFT, story, driven).laps()).isEqualTo(47);
        assertThat(state(SOFT, story, driven).car()).contains("Knot");
        assertThat(state(HARD, story, driven).laps()).isEqualTo(20);
        assertThat(state(AXLE, story, driven).laps()).isZero();
    }

    @Test
    void aPlaceForOnePartGivesUpTheOther() {
        List<Happened> story = List.of(
                at(1, SOFT, new Fitted("Dunlin")),
                at(2, AXLE, new Fitted("Dunlin")),
                at(3, SPARE, new Fitted("Dunlin")),
                at(4, HARD, new Fitted("Dunlin")));
        assertThat(state(SOFT, story).car()).isEmpty();
        assertThat(state(HARD, story).car()).contains("Dunlin");
        assertThat(state(AXLE, story).car()).contains("Dunlin");
        assertThat(state(SPARE, story).car()).contains("Dunlin");
    }

    @Test
    void aServiceIsDueByTheLapsSinceItWasDone() {
        List<Happened> set = List.of(
                at(1, AXLE, new LapsAdded(90)), at(2, AXLE, new Reminder("oil", 100)), at(3, AXLE, new LapsAdded(99)));
        assertThat(state(AXLE, set).services()).containsExactly(new PartState.Service("oil", 100, 99));
        assertThat(state(AXLE, set).isDue()).isFalse();
        assertThat(state(AXLE, set).services().get(0).lapsLeft()).isEqualTo(1);
        List<Happened> due = plus(set, at(4, AXLE, new LapsAdded(1)));
        assertThat(state(AXLE, due).isDue()).isTrue();
        List<Happened> done = plus(due, at(5, AXLE, new Serviced("oil")));
        assertThat(state(AXLE, done).isDue()).isFalse();
        assertThat(state(AXLE, done).laps()).isEqualTo(190);
        List<Happened> sooner = plus(plus(done, at(6, AXLE, new LapsAdded(30))), at(7, AXLE, new Reminder("oil", 25)));
        assertThat(state(AXLE, sooner).services()).containsExactly(new PartState.Service("oil", 25, 30));
        assertThat(state(AXLE, plus(sooner, at(8, AXLE, new Reminder("oil", 0))))
                        .services())
                .isEmpty();
    }

    @Test
    void whatIsPutAwayIsOffItsCarAndNeverDue() {
        List<Happened> story = List.of(
                at(1, SOFT, new Fitted("Dunlin")),
                at(2, SOFT, new Reminder("true", 10)),
                at(3, SOFT, new LapsAdded(20)),
                at(4, SOFT, new PutAway()));
        assertThat(state(SOFT, story).car()).isEmpty();
        assertThat(state(SOFT, story).isAway()).isTrue();
        assertThat(state(SOFT, story).isDue()).isFalse();
        PartState back = state(SOFT, plus(story, at(5, SOFT, new BroughtBack())));
        assertThat(back.isAway()).isFalse();
        assertThat(back.isDue()).isTrue();
    }

    @Test
    void knownKindsHaveAPlaceAndOwnOnesHaveNone() {
        assertThat(HARD.kind()).isEqualTo(SOFT.kind());
        assertThat(HARD.kind().place()).contains(PartPlace.REAR_TYRES);
        assertThat(AXLE.kind().place()).isEqualTo(Optional.empty());
        assertThat(PartKind.KNOWN).hasSameSizeAs(PartPlace.values());
        assertThatIllegalArgumentException().isThrownBy(() -> new PartKind(" ")).withMessageContaining("kind of part");
        assertThatIllegalArgumentException().isThrownBy(() -> new Reminder("oil", -1));
        assertThatIllegalArgumentException().isThrownBy(() -> new LapsAdded(100_001));
    }

    private static List<Happened> plus(List<Happened> story, Happened more) {
        return java.util.stream.Stream.concat(story.stream(), java.util.stream.Stream.of(more))
                .toList();
    }
}
