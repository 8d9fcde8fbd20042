package org.lapwright.app.files.garage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Trim;

/** A set-up to hand on: its numbers, and no word that its owner wrote. */
public final class SharedSetUp {
    private static final String NAME = "Set-up";

    private SharedSetUp() {}

    /** A car file with the numbers of this one: no names, no notes, no keys that this version does not know. */
    public static String text(CarFile file) {
        SetUp own = file.setUp();
        List<Ballast> pieces = new ArrayList<>();
        for (Ballast piece : own.ballast()) {
            pieces.add(
                    new Ballast("piece " + (pieces.size() + 1), piece.massG(), piece.xMm(), piece.yMm(), piece.zMm()));
        }
        SetUp plain = new SetUp(
                NAME,
                own.chassis(),
                own.mass(),
                pieces,
                own.guide(),
                own.rearTyre(),
                own.gears(),
                own.motor(),
                own.magnet(),
                own.drag(),
                own.pickupOhm());
        Trim trim = file.build().trim();
        Trim unnamed = new Trim(trim.shimsMm(), trim.frontGapMm(), trim.bodyTurns(), Map.of());
        return CarFile.of(plain)
                .with(new Build(plain, unnamed))
                .with(new CarRemarks(file.remarks().scale(), knownPlaces(file)))
                .text();
    }

    /** What stands under "not measured" is a text of the owner's as long as it is no place of a number. */
    private static Set<String> knownPlaces(CarFile file) {
        Set<String> places =
                file.setUp().numbers().stream().map(NamedReading::path).collect(Collectors.toSet());
        return file.remarks().notMeasured().stream().filter(places::contains).collect(Collectors.toSet());
    }
}
