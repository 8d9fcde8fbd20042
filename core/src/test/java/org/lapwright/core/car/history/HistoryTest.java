package org.lapwright.core.car.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.DriveChange;
import org.lapwright.core.car.change.NoseChange;
import org.lapwright.core.car.change.SampleCar;
import org.lapwright.core.car.history.History.Line;
import org.lapwright.core.units.Reading;

final class HistoryTest {
    private static final Build CAR = SampleCar.build();

    /** 1 → 2 → 3, and 2 → 4 → 5 as a branch made later, and 6 from 1. */
    private static History history() {
        return new History(List.of(first(1), made(2, 1), made(3, 2), made(4, 2), made(5, 4), made(6, 1)), 5);
    }

    @Test
    void theWayLeadsFromTheFirstToTheOneAskedFor() {
        History history = history();
        assertThat(history.wayTo(history.present())).extracting(Step::id).containsExactly(1L, 2L, 4L, 5L);
    }

    @Test
    void whatWasMadeLastGoesStraightOn() {
        assertThat(history().lines())
                .extracting(line -> line.step().id(), Line::column)
                .containsExactly(tuple(1L, 0), tuple(2L, 1), tuple(3L, 2), tuple(4L, 1), tuple(5L, 1), tuple(6L, 0));
    }

    @Test
    void twoSetUpsShareTheirBeginning() {
        History history = history();
        assertThat(history.shared(history.find(3).orElseThrow(), history.find(5).orElseThrow()))
                .map(Step::id)
                .contains(2L);
        assertThat(history.before(history.present())).map(Step::id).contains(4L);
    }

    @Test
    void aTornHistoryIsRefused() {
        assertThatThrownBy(() -> new History(List.of(first(1), made(3, 2)), 1)).hasMessageContaining("from 2");
        assertThatThrownBy(() -> new History(List.of(first(1)), 7)).hasMessageContaining("7");
        assertThatThrownBy(() -> new History(List.of(first(1), first(1)), 1)).hasMessageContaining("1");
    }

    @Test
    void onlyWhatIsOtherwiseIsListed() {
        Build after = new NoseChange.ShimAdded(0.5)
                .apply(new DriveChange.GearsFitted(Reading.exact(10), Reading.exact(28)).apply(CAR));
        assertThat(Differences.between(CAR, after))
                .extracting(Difference::path)
                .containsExactly(
                        "mass.cg_height_mm", "gears.pinion_teeth", "ballast pod z_mm", "shims under the guide");
        assertThat(Differences.between(after, after)).isEmpty();
    }

    private static Step first(long id) {
        return new Step(id, OptionalLong.empty(), "first", "");
    }

    private static Step made(long id, long parent) {
        return new Step(id, OptionalLong.of(parent), "noted", "something");
    }
}
