package org.lapwright.core.car;

import java.util.List;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * The magnet, as it pulls towards steel rails at the car's ride height.
 *
 * @param downforceG pull
 * @param xMm where it acts, ahead of the rear axle
 */
public record Magnet(Reading downforceG, Reading xMm) {
    /** Pull. */
    public static final NumberKey DOWNFORCE = new NumberKey("magnet", "downforce_g", 0, 3000);

    /** Where it acts. */
    public static final NumberKey X = new NumberKey("magnet", "x_mm", -100, 300);

    /** The keys of its numbers, in the order in which files list them. */
    public static final List<NumberKey> KEYS = List.of(DOWNFORCE, X);

    /** Checks each number. */
    public Magnet {
        DOWNFORCE.check(downforceG);
        X.check(xMm);
    }

    /** From the numbers of a file or form. */
    public static Magnet of(Readings numbers) {
        return new Magnet(numbers.require(DOWNFORCE), numbers.require(X));
    }

    /** Its numbers by key. */
    public Readings readings() {
        return Readings.none().with(DOWNFORCE, downforceG).with(X, xMm);
    }
}
