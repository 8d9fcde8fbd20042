package org.lapwright.core.car;

import java.util.List;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * A piece stuck on, or taken out of the weighed car (negative mass), at its place.
 *
 * @param name what the racer calls it
 * @param massG mass
 * @param xMm ahead of the rear axle
 * @param yMm left of the centre line
 * @param zMm above the track
 */
public record Ballast(String name, Reading massG, Reading xMm, Reading yMm, Reading zMm) {
    /** Mass. */
    public static final NumberKey MASS = new NumberKey("ballast", "mass_g", -500, 500);

    /** Ahead of the rear axle. */
    public static final NumberKey X = new NumberKey("ballast", "x_mm", -200, 400);

    /** Left of the centre line. */
    public static final NumberKey Y = new NumberKey("ballast", "y_mm", -150, 150);

    /** Above the track. */
    public static final NumberKey Z = new NumberKey("ballast", "z_mm", 0, 200);

    /** The keys of its numbers, in the order in which files list them. */
    public static final List<NumberKey> KEYS = List.of(MASS, X, Y, Z);

    private static final int LONGEST_NAME = 80;

    /** Checks name, mass and place. */
    public Ballast {
        name = Check.text(name, LONGEST_NAME, "ballast.name");
        MASS.check(massG);
        X.check(xMm);
        Y.check(yMm);
        Z.check(zMm);
    }

    /** From the numbers of a file or form. */
    public static Ballast of(String name, Readings numbers) {
        return new Ballast(name, numbers.require(MASS), numbers.require(X), numbers.require(Y), numbers.require(Z));
    }

    /** Its numbers by key. */
    public Readings readings() {
        return Readings.none().with(MASS, massG).with(X, xMm).with(Y, yMm).with(Z, zMm);
    }

    /** Its mass and place. */
    public PointMass pointMass() {
        return new PointMass(massG.value(), xMm.value(), yMm.value(), zMm.value());
    }
}
