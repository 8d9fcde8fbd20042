package org.lapwright.core.car.change;

import java.util.List;
import java.util.Optional;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.units.Reading;

/** What a swapped part adds to the weighed car: a point mass where the part sits, as if it were ballast. */
final class PartMass {
    static final String GUIDE = "other guide";
    static final String TYRES = "other tyres";
    static final String MOTOR = "other motor";
    static final String MAGNET = "magnet";
    static final String MAGNET_OUT = "magnet out";

    private static final List<String> NAMES = List.of(GUIDE, TYRES, MOTOR, MAGNET, MAGNET_OUT);

    private PartMass() {}

    /** Whether a piece stands for a part that was swapped: nobody can stick it elsewhere. */
    static boolean isOne(Ballast piece) {
        return NAMES.stream()
                .anyMatch(name -> piece.name().equals(name) || piece.name().matches(name + " \\d+"));
    }

    static Build added(Build build, String name, Optional<Reading> heavierG, double xMm, double zMm) {
        if (heavierG.isEmpty() || heavierG.get().value() == 0) {
            return build;
        }
        Reading x = Reading.exact(xMm);
        return build.plus(new Ballast(name, heavierG.get(), x, Reading.exact(0), Reading.exact(zMm)));
    }
}
