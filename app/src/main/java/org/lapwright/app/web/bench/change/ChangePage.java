package org.lapwright.app.web.bench.change;

import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.bench.Caution;
import org.lapwright.app.usecase.bench.ForeseeChange.Foreseen;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.bench.CarPage.TrackChoice;
import org.lapwright.app.web.bench.PlanView;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.change.ChangeKind;

/**
 * Logging one change.
 *
 * @param shell around it
 * @param car its name
 * @param present what is on the car, for seeing whether somebody else has logged meanwhile; empty when nothing was
 * @param form what was typed
 * @param foreseen what it brings; empty while it cannot be told
 * @param problems what is wrong with the whole of it
 * @param cautions what to warn of first
 * @param track the track on which the lap is foreseen
 * @param key made up once for this change
 * @param pieces the ballast on the car
 * @param plan the car from above after the change, for putting ballast on; empty for kinds without a place
 */
public record ChangePage(
        Shell shell,
        String car,
        String present,
        ChangeForm form,
        Optional<Foreseen> foreseen,
        List<String> problems,
        List<Caution> cautions,
        TrackChoice track,
        String key,
        List<Ballast> pieces,
        Optional<PlanView> plan) {
    /** Copies the lists. */
    public ChangePage {
        pieces = List.copyOf(pieces);
        problems = List.copyOf(problems);
        cautions = List.copyOf(cautions);
    }

    /** The name as part of an address. */
    public String encodedName() {
        return BenchPage.encoded(car);
    }

    /** A piece of ballast by its name. */
    public Optional<Ballast> piece(String name) {
        return pieces.stream().filter(piece -> piece.name().equals(name)).findFirst();
    }

    /**
     * The kinds to choose from.
     *
     * @param shell around it
     * @param car its name
     * @param kinds in their order
     */
    public record Choice(Shell shell, String car, List<ChangeKind> kinds) {
        /** Copies the list. */
        public Choice {
            kinds = List.copyOf(kinds);
        }

        /** The name as part of an address. */
        public String encodedName() {
            return BenchPage.encoded(car);
        }
    }
}
