package org.lapwright.app.main;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.ChangeJson;
import org.lapwright.app.usecase.ExampleGarage.EveningStep;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.change.BallastChange;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChassisChange;
import org.lapwright.core.car.change.MagnetChange;
import org.lapwright.core.car.change.NoseChange;
import org.lapwright.core.car.change.TyreChange;
import org.lapwright.core.units.Reading;

/** An invented evening on one car of the example garage, so that a history is there to look at. */
final class ExampleEvening {
    private static final List<Change> CHANGES = List.of(
            new NoseChange.GuideFitted("deep blade", of(7, 0.1), Optional.empty(), Optional.of(of(0.4, 0.1))),
            new NoseChange.FrontGapMeasured(exact(-0.35)),
            new NoseChange.ShimAdded(0.25),
            new NoseChange.ShimAdded(0.25),
            new TyreChange.Trued(of(19.4, 0.05)),
            new BallastChange.Added(new Ballast("left pod", exact(5), exact(20), exact(12), exact(4))),
            new BallastChange.Added(new Ballast("right pod", exact(5), exact(20), exact(-12), exact(4))),
            new BallastChange.Moved("left pod", exact(6), exact(12), exact(4)),
            new BallastChange.Moved("right pod", exact(6), exact(-12), exact(4)),
            new ChassisChange.BodyFloat(Optional.of(exact(1.5)), "rear edge of the chassis"),
            new MagnetChange.Removed(Optional.of(of(1.5, 0.1))));

    private ExampleEvening() {}

    /** The steps, each after the one before it. */
    static List<EveningStep> on(String carFile) {
        CarFile file = CarFile.read(carFile).accepted().orElseThrow();
        List<EveningStep> steps = new ArrayList<>();
        for (Change change : CHANGES) {
            String words = change.sentence(file.build());
            file = file.with(change.apply(file.build()));
            steps.add(new EveningStep(change.kind().code(), words, ChangeJson.write(change, ""), file.text()));
        }
        return steps;
    }

    private static Reading exact(double value) {
        return Reading.exact(value);
    }

    private static Reading of(double value, double plusMinus) {
        return new Reading(value, plusMinus);
    }
}
