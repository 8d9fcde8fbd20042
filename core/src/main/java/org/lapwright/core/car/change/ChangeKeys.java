package org.lapwright.core.car.change;

import org.lapwright.core.car.Ballast;
import org.lapwright.core.units.NumberKey;

/** The keys of the numbers that changes ask for and no part of a set-up has under the same name. */
final class ChangeKeys {
    static final NumberKey MASS = new NumberKey("", "mass_g", 0.01, 500);
    static final NumberKey X = Ballast.X.in("");
    static final NumberKey Y = Ballast.Y.in("");
    static final NumberKey Z = Ballast.Z.in("");

    /** What the part that came on weighs more than the one that went; negative when less. */
    static final NumberKey HEAVIER = new NumberKey("", "heavier_g", -200, 200);

    static final NumberKey MINUTES = new NumberKey("", "minutes", 0, 100_000);
    static final String NAME = "name";
    static final String PIECE = "piece";
    static final String WHERE = "where";
    static final String WHAT = "what";
    static final String EDGES = "edges";

    private ChangeKeys() {}
}
