package org.lapwright.app.web.bench.guided;

import java.util.List;
import org.lapwright.core.car.measure.GuidedMeasurement;

/**
 * How one thing is measured, in words and a drawing.
 *
 * @param code name in addresses
 * @param title what is measured
 * @param steps what to do, in order
 * @param caution what to mind; empty where nothing can hurt
 * @param drawing lines and words of a small drawing, 320 by 110
 */
public record Guide(String code, String title, List<String> steps, String caution, Drawing drawing) {
    /** Copies the list. */
    public Guide {
        steps = List.copyOf(steps);
    }

    /**
     * A small drawing.
     *
     * @param path its lines
     * @param words what stands in it
     */
    public record Drawing(String path, List<Word> words) {
        /** Copies the list. */
        public Drawing {
            words = List.copyOf(words);
        }
    }

    /**
     * A word in the drawing.
     *
     * @param x middle
     * @param y base line
     * @param text what it says
     */
    public record Word(int x, int y, String text) {}

    /** A car from the side: rear wheel at 100, front wheel at 220, guide at 250. */
    private static final String CAR =
            "M70 62h190l10 12H60zM100 66a14 14 0 1 0 .1 0zM215 70a10 10 0 1 0 .1 0zM250 74v18";

    private static final String TILTED = "M40 100L280 100L280 40ZM120 62l80-20l6 22l-80 20zM250 100a30 30 0 0 0-2-13";
    private static final String CIRCLE =
            "M160 55m-40 0a40 40 0 1 0 80 0a40 40 0 1 0-80 0M120 55h80M112 48v14M208 48v14";

    /** How to measure this. */
    public static Guide of(GuidedMeasurement what) {
        return switch (what) {
            case TWO_SCALES -> twoScales(what);
            case SIDE_SCALES -> sideScales(what);
            case TILT_TEST -> tiltTest(what);
            case TILT_BOARD -> tiltBoard(what);
            case TYRE -> tyre(what);
            case ROLL_OUT -> rollOut(what);
            case MOTOR -> motor(what);
            case ROTOR -> rotor(what);
            case MAGNET -> magnet(what);
        };
    }

    private static Guide twoScales(GuidedMeasurement what) {
        return guide(
                what,
                CAR + "M78 96h44v8H78zM228 96h44v8h-44z",
                List.of(new Word(165, 50, "two scales, car level")),
                "",
                "Put the guide on one scale and the rear axle on the other, with blocks so that the car stands level as on the track.",
                "Take off what is listed as ballast: it is added by its own numbers.",
                "Read both. Lift the car, put it down and read again, three times in all.");
    }

    private static Guide sideScales(GuidedMeasurement what) {
        return guide(
                what,
                "M60 40h200M100 40v30M220 40v30M78 70h44v8H78zM198 70h44v8h-44zM160 40v20",
                List.of(
                        new Word(100, 96, "left"),
                        new Word(220, 96, "right"),
                        new Word(160, 26, "rear axle from behind")),
                "",
                "Each rear wheel on a scale of its own, the guide on a block as high as the scales.",
                "Read both; turn the car about and read again with the scales swapped.");
    }

    private static Guide tiltTest(GuidedMeasurement what) {
        return guide(
                what,
                TILTED,
                List.of(new Word(150, 34, "tips"), new Word(225, 94, "angle")),
                "Hold a hand below: the car falls off the board.",
                "Stand the car across a board, its lower wheels against a thin strip so that they cannot slide.",
                "Raise one edge slowly until the upper wheels lift. A phone's level lying on the board reads the angle.",
                "Do it to both sides, and more than once.");
    }

    private static Guide tiltBoard(GuidedMeasurement what) {
        return guide(
                what,
                TILTED,
                List.of(new Word(150, 34, "slides"), new Word(225, 94, "angle")),
                "",
                "Lock the rear wheels (a strip of tape), guide and front wheels off the board or on something that slides easily.",
                "Use a piece of your own track, its slot down the slope, as clean as when you race.",
                "Raise it until the car slides steadily, not just creeps. Read the angle; several times, on fresh spots.");
    }

    private static Guide tyre(GuidedMeasurement what) {
        return guide(
                what,
                CIRCLE,
                List.of(new Word(160, 48, "d")),
                "",
                "Measure across the tyre with a calliper, without squeezing it, at three places turned by a third.",
                "Before and after truing: the difference is what was taken off.");
    }

    private static Guide rollOut(GuidedMeasurement what) {
        return guide(
                what,
                "M40 90h240M80 62a28 28 0 1 0 .1 0M80 90v14M240 90v14M80 98h160",
                List.of(new Word(160, 84, "turns of the wheel"), new Word(80, 30, "mark")),
                "",
                "Mark the tyre and roll the car, with its weight on it, along a ruler for ten turns.",
                "This is the tyre as it rolls, somewhat less than the calliper says.");
    }

    private static Guide motor(GuidedMeasurement what) {
        return guide(
                what,
                "M120 40h80v40h-80zM200 60h40M60 50h60M60 70h60M60 50v-20h60M60 70v25h30",
                List.of(new Word(160, 64, "motor"), new Word(130, 26, "V"), new Word(105, 100, "A")),
                "Hold the shaft still for a second at most: a stalled motor gets hot enough to burn you and itself. Wear eye protection, keep loose sleeves and hair away from gears; use the low-voltage supply as its maker means it to be used.",
                "Take the pinion off the gear, or the motor out. Meter in the lead, volts at the motor.",
                "Run it free: read volts, current and turns (an app that listens to the whine, or a strobe).",
                "Hold the shaft with a cloth for a moment: read the current as it settles.");
    }

    private static Guide rotor(GuidedMeasurement what) {
        return guide(
                what,
                CIRCLE,
                List.of(new Word(160, 48, "armature")),
                "Wash your hands after a motor was open: brushes and solder leave dust.",
                "Weigh the armature of a motor that is open anyway, or of a spare, and measure its diameter.",
                "Its shape is not known to better than 15 %; the result says so.");
    }

    private static Guide magnet(GuidedMeasurement what) {
        return guide(
                what,
                CAR + "M50 92h220v6H50zM60 98h200v10H60zM160 62v-40M150 30l10-10l10 10",
                List.of(new Word(200, 24, "thread, straight up"), new Word(160, 107, "scale")),
                "Small strong magnets must never be swallowed and nip fingers; keep them from children, pacemakers and cards.",
                "A piece of track with its rails lies on the scale, held down; the car stands on it. Set the scale to zero.",
                "Pull the car straight up by a thread, slowly. Read the most below zero just before it comes off. Several times.");
    }

    private static Guide guide(GuidedMeasurement what, String path, List<Word> words, String caution, String... steps) {
        return new Guide(what.code(), what.title(), List.of(steps), caution, new Drawing(path, words));
    }
}
