package org.lapwright.core.car.change;

import java.util.Optional;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.units.Reading;

/** What a swapped part adds to the weighed car: a point mass where the part sits, as if it were ballast. */
final class PartMass {
    private PartMass() {}

    static Build added(Build build, String name, Optional<Reading> heavierG, double xMm, double zMm) {
        if (heavierG.isEmpty() || heavierG.get().value() == 0) {
            return build;
        }
        Reading x = Reading.exact(xMm);
        return build.plus(new Ballast(name, heavierG.get(), x, Reading.exact(0), Reading.exact(zMm)));
    }
}
