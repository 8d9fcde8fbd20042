package org.lapwright.app.web;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.physics.OwnGarage;
import org.lapwright.app.usecase.physics.PredictLap;
import org.lapwright.app.web.track.editor.DrawnLaps;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.track.Track;

/** What the car that a form asks for, or else the first of the garage, could do on a track that is not kept yet. */
final class BestLaps {
    private final OwnGarage garage;
    private final PredictLap predictLap;

    BestLaps(PhysicsCases cases) {
        this.garage = cases.garage();
        this.predictLap = cases.predictLap();
    }

    /** Its best lap on each lane, or nothing while the track cannot be understood or there is no car. */
    DrawnLaps on(Optional<Track> track, Context context) {
        List<String> cars = garage.cars().stream().map(KeptFile::name).toList();
        if (cars.isEmpty()) {
            return DrawnLaps.NONE;
        }
        String asked = Optional.ofNullable(context.formParam("car")).orElse("");
        String car = cars.contains(asked) ? asked : cars.get(0);
        Optional<SetUp> setUp = garage.car(car)
                .flatMap(kept -> CarFile.read(kept.text()).accepted())
                .map(CarFile::setUp);
        return DrawnLaps.of(
                cars,
                car,
                setUp.isPresent() ? track : Optional.empty(),
                (drawn, lane) -> predictLap.predict(setUp.orElseThrow(), drawn, lane));
    }
}
