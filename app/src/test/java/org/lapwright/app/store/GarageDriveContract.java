package org.lapwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.DriveStore;
import org.lapwright.app.usecase.DriveStore.Drive;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Passed;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Pressed;
import org.lapwright.app.usecase.DriveStore.Mark;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Press;
import org.lapwright.app.usecase.DriveStore.Written;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Side;

/** What every garage does with drives. */
abstract class GarageDriveContract extends GarageStepContract {
    private static final Instant MONDAY = Instant.parse("2026-03-02T20:00:00Z");

    private static final NewDrive FIXED = new NewDrive(
            "Dunlin", "shim in", "Shed loop", "red", 1, "me", "cold, 14 °C", RunPlan.parse("ABBA x 10"), 2);

    private static DriveEvent pass(long sequence) {
        return new Passed(new Pass(
                "gate", "boot", sequence, 1, 0, new PassStamp(PassClock.DEVICE, 6_000_000_000L * sequence, 5, 0.001)));
    }

    private static DriveEvent press(Press press, String key) {
        return new Pressed(press, key);
    }

    @Test
    void aGarageBeginsWithoutADrive() {
        assertThat(store.open()).isEmpty();
        assertThat(store.drive(1)).isEmpty();
    }

    @Test
    void whatHappenedComesBackInItsOrder() {
        Drive begun = store.begin(FIXED, "begin", MONDAY);
        assertThat(begun.fixed()).isEqualTo(FIXED);
        assertThat(begun.startedAt()).isEqualTo(MONDAY);
        List<DriveEvent> events =
                List.of(pass(0), pass(1), press(Press.CAME_OFF, "off"), pass(2), press(Press.NEXT_RUN, "n"));
        Mark before = store.mark();
        Written written = store.happened(begun.id(), events, MONDAY);
        assertThat(written.fresh()).isEqualTo(events);
        assertThat(written.before()).isEqualTo(before);
        assertThat(written.after()).isEqualTo(store.mark()).isNotEqualTo(before);
        Drive now = store.open().orElseThrow();
        assertThat(now.events()).isEqualTo(events);
        assertThat(store.open()).contains(now);
        assertThat(store.drive(begun.id())).contains(now);
    }

    @Test
    void whatComesTwiceIsTakenOnce() {
        Drive begun = store.begin(FIXED, "begin", MONDAY);
        assertThat(store.begin(FIXED, "begin", MONDAY)).isEqualTo(begun);
        store.happened(begun.id(), List.of(pass(0), press(Press.CAME_OFF, "off")), MONDAY);
        List<DriveEvent> again = List.of(pass(0), pass(1), press(Press.CAME_OFF, "off"), pass(1));
        assertThat(store.happened(begun.id(), again, MONDAY).fresh()).containsExactly(pass(1));
        assertThat(store.happened(begun.id(), again, MONDAY).fresh()).isEmpty();
        assertThat(store.drive(begun.id()).orElseThrow().events())
                .containsExactly(pass(0), press(Press.CAME_OFF, "off"), pass(1));
    }

    @Test
    void aComparisonKnowsTheDriveItWasKeptFrom() {
        Drive begun = store.begin(FIXED, "begin", MONDAY);
        KeptComparison kept = Sample.of("Dunlin", Side.AFTER, 6.2, 6.1);
        SavedComparison ofDrive = store.keep(kept, Sample.full(), DriveStore.requestToKeep(begun.id()), MONDAY);
        SavedComparison typed = store.keep(kept, Sample.full(), "typed", MONDAY);
        assertThat(store.driveKeptAs(ofDrive.id())).hasValue(begun.id());
        assertThat(store.driveKeptAs(typed.id())).isEmpty();
        assertThat(store.driveKeptAs(99)).isEmpty();
    }

    @Test
    void aDriveThatIsOverTakesNothingMore() {
        Drive begun = store.begin(FIXED, "begin", MONDAY);
        store.happened(begun.id(), List.of(pass(0), press(Press.KEPT, "keep")), MONDAY);
        assertThat(store.open()).isEmpty();
        store.happened(begun.id(), List.of(press(Press.KEPT, "keep")), MONDAY);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.happened(begun.id(), List.of(pass(1)), MONDAY))
                .withMessageContaining("is over");
        assertThatIllegalArgumentException().isThrownBy(() -> store.happened(99, List.of(pass(1)), MONDAY));
        assertThat(store.begin(FIXED, "another", MONDAY).id()).isNotEqualTo(begun.id());
    }
}
