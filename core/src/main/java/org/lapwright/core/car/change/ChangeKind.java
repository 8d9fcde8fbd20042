package org.lapwright.core.car.change;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The kinds of change: how each is called, what it asks for, what to warn of first, and what nobody can foresee about it. */
public enum ChangeKind {
    /** A piece of ballast stuck on. */
    BALLAST_ADDED(
            "ballast-added",
            "Ballast on",
            Asks::ballastAdded,
            BallastChange.Added::of,
            CautionTopic.LEAD,
            Unforeseen.NOTHING),
    /** A piece of ballast put elsewhere. */
    BALLAST_MOVED(
            "ballast-moved",
            "Ballast moved",
            Asks::ballastMoved,
            BallastChange.Moved::of,
            CautionTopic.LEAD,
            Unforeseen.NOTHING),
    /** A piece of ballast taken off. */
    BALLAST_REMOVED(
            "ballast-removed",
            "Ballast off",
            Asks::ballastRemoved,
            BallastChange.Removed::of,
            CautionTopic.LEAD,
            Unforeseen.NOTHING),
    /** Other tyres. */
    TYRES_FITTED(
            "tyres-fitted",
            "Other tyres",
            Asks::tyresFitted,
            TyreChange.Fitted::of,
            "How a new tyre grips once it is run in, only laps or a tilt test tell."),
    /** Tyres ground true. */
    TYRES_TRUED(
            "tyres-trued",
            "Tyres trued",
            Asks::tyresTrued,
            TyreChange.Trued::of,
            CautionTopic.CUTTING,
            "A trued tyre runs rounder and its fresh surface may grip otherwise: measure it."),
    /** Another guide. */
    GUIDE_FITTED(
            "guide-fitted",
            "Other guide",
            Asks::guideFitted,
            NoseChange.GuideFitted::of,
            "A deeper blade forgives more before the car leaves the slot; the lap time does not show that."),
    /** A shim under the guide. */
    SHIM_ADDED("shim-added", "Shim in", Asks::shimAdded, NoseChange.ShimAdded::of, Unforeseen.NOTHING),
    /** A shim from under the guide. */
    SHIM_REMOVED("shim-removed", "Shim out", Asks::shimRemoved, NoseChange.ShimRemoved::of, Unforeseen.NOTHING),
    /** The front gap measured. */
    FRONT_GAP("front-gap", "Front gap", Asks::frontGap, NoseChange.FrontGapMeasured::of, Unforeseen.NOTHING),
    /** Other gears. */
    GEARS_FITTED(
            "gears-fitted",
            "Gears",
            Asks::gears,
            DriveChange.GearsFitted::of,
            "How freely the new pair meshes is not reckoned with: listen, and measure."),
    /** Another motor. */
    MOTOR_FITTED(
            "motor-fitted",
            "Other motor",
            Asks::motor,
            DriveChange.MotorFitted::of,
            CautionTopic.POWER,
            "The label is a promise; the bench test of this very motor is better."),
    /** The motor run in or bedded in its mount. */
    MOTOR_BEDDED(
            "motor-bedded",
            "Motor bedded",
            Asks::motorBedded,
            DriveChange.MotorBedded::of,
            CautionTopic.POWER,
            "What bedding does to a motor no formula knows: measure it."),
    /** A magnet in, or set anew. */
    MAGNET_FITTED(
            "magnet-fitted",
            "Magnet in",
            Asks::magnet,
            MagnetChange.Fitted::of,
            CautionTopic.MAGNETS,
            Unforeseen.NOTHING),
    /** The magnet out. */
    MAGNET_REMOVED(
            "magnet-removed",
            "Magnet out",
            Asks::magnetRemoved,
            MagnetChange.Removed::of,
            CautionTopic.MAGNETS,
            Unforeseen.NOTHING),
    /** Wheels or spacers: another track width. */
    TRACK_WIDTH("track-width", "Track width", Asks::trackWidth, ChassisChange.TrackWidth::of, Unforeseen.NOTHING),
    /** The body freed or held. */
    BODY_FLOAT(
            "body-float",
            "Body float",
            Asks::bodyFloat,
            ChassisChange.BodyFloat::of,
            CautionTopic.CUTTING,
            "A body that floats often makes a car easier to drive; no formula says by how much: measure it."),
    /** Other braids. */
    BRAID_FITTED(
            "braid-fitted",
            "Braids",
            Asks::braid,
            NoseChange.BraidFitted::of,
            "How well new braids feed the motor shows on the track: measure it."),
    /** Oiled or cleaned. */
    OILED(
            "oiled",
            "Oil",
            Asks::oiled,
            OtherChange.Oiled::of,
            CautionTopic.SOLVENTS,
            "What oil is worth depends on how dry the bearing was: measure it."),
    /** Anything else. */
    NOTED(
            "noted",
            "Something else",
            Asks::noted,
            OtherChange.Noted::of,
            "The numbers stay as they are; only laps show what this does.");

    private final String code;
    private final String label;
    private final Function<Build, List<Ask>> asks;
    private final Function<Values, Change> maker;
    private final Optional<CautionTopic> caution;
    private final String unforeseen;

    ChangeKind(
            String code,
            String label,
            Function<Build, List<Ask>> asks,
            Function<Values, Change> maker,
            CautionTopic caution,
            String unforeseen) {
        this(code, label, asks, maker, Optional.of(caution), unforeseen);
    }

    ChangeKind(
            String code,
            String label,
            Function<Build, List<Ask>> asks,
            Function<Values, Change> maker,
            String unforeseen) {
        this(code, label, asks, maker, Optional.empty(), unforeseen);
    }

    ChangeKind(
            String code,
            String label,
            Function<Build, List<Ask>> asks,
            Function<Values, Change> maker,
            Optional<CautionTopic> caution,
            String unforeseen) {
        this.code = code;
        this.label = label;
        this.asks = asks;
        this.maker = maker;
        this.caution = caution;
        this.unforeseen = unforeseen;
    }

    /** The word in files. */
    public String code() {
        return code;
    }

    /** The word for people. */
    public String label() {
        return label;
    }

    /** What it asks for, with what the car has now offered. */
    public List<Ask> asks(Build before) {
        return asks.apply(before);
    }

    /**
     * The change.
     *
     * @param values what was given, by the keys of {@link #asks}
     * @throws IllegalArgumentException naming the key, the value and what would be right
     */
    public Change of(Values values) {
        return maker.apply(values);
    }

    /** What to warn of before the first one. */
    public Optional<CautionTopic> caution() {
        return caution;
    }

    /** What the numbers do not show of it. */
    public Optional<String> unforeseen() {
        return unforeseen.isEmpty() ? Optional.empty() : Optional.of(unforeseen);
    }

    /** The kind with this word; empty for one that this version does not know. */
    public static Optional<ChangeKind> find(String code) {
        return Arrays.stream(values()).filter(kind -> kind.code.equals(code)).findFirst();
    }

    /** Not in the enum's own body, because its constants cannot see the enum's fields before they are made. */
    private static final class Unforeseen {
        static final String NOTHING = "";
    }
}
