package org.lapwright.app.web.shelf;

import java.util.List;
import java.util.Optional;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.change.ChangeKind;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.car.shelf.PartState;
import org.lapwright.core.car.shelf.PartState.Service;

/**
 * One part.
 *
 * @param shell around it
 * @param state how it stands
 * @param wear pace against its laps; empty where too few runs tell
 * @param cars it can be fitted to
 * @param key made up once for the next thing that happens to it
 * @param problems with what was asked; empty when there are none
 */
public record PartPage(
        Shell shell, PartState state, Optional<WearView> wear, List<String> cars, String key, List<String> problems) {
    /** Copies the lists. */
    public PartPage {
        cars = List.copyOf(cars);
        problems = List.copyOf(problems);
    }

    /** Where it is and how worn, as a sentence. */
    public String standing() {
        String where = state.isAway()
                ? "Put away"
                : state.car().map(car -> "Fitted to " + car).orElse("On the shelf");
        return where + ", " + ShelfPage.laps(state.laps()) + " run on it.";
    }

    /** A service as a sentence. */
    public String words(Service service) {
        String since = "%s since it was done last".formatted(ShelfPage.laps(service.lapsSince()));
        return service.isDue()
                ? "Due now: %s, every %s.".formatted(since, ShelfPage.laps(service.everyLaps()))
                : "In %s (every %s)."
                        .formatted(ShelfPage.laps(service.lapsLeft()), ShelfPage.laps(service.everyLaps()));
    }

    /** Where the change of numbers that fitting it brings is logged; empty for a kind that the numbers do not know. */
    public Optional<String> change() {
        return state.car()
                .flatMap(car -> state.part()
                        .kind()
                        .place()
                        .map(place -> "/bench/change?name=%s&kind=%s"
                                .formatted(BenchPage.encoded(car), kindOf(place).code())));
    }

    private static ChangeKind kindOf(PartPlace place) {
        return switch (place) {
            case REAR_TYRES -> ChangeKind.TYRES_FITTED;
            case GUIDE -> ChangeKind.GUIDE_FITTED;
            case BRAID -> ChangeKind.BRAID_FITTED;
            case MOTOR -> ChangeKind.MOTOR_FITTED;
            case MAGNET -> ChangeKind.MAGNET_FITTED;
            case GEARS -> ChangeKind.GEARS_FITTED;
        };
    }
}
