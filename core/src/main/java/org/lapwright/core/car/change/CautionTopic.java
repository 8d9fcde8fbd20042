package org.lapwright.core.car.change;

/** What to warn of before the first change of some kinds. The words are the program's, not the car's. */
public enum CautionTopic {
    /** Ballast made of lead. */
    LEAD,
    /** Small strong magnets. */
    MAGNETS,
    /** Truing, files and rotary tools. */
    CUTTING,
    /** Soldering. */
    FUME,
    /** Power on the bench. */
    POWER,
    /** Solvents and oil near a sparking motor. */
    SOLVENTS
}
