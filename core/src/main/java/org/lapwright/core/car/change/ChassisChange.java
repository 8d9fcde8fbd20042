package org.lapwright.core.car.change;

import java.util.Optional;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.units.Reading;

/** Wheels, track width, and how freely the body sits. */
public sealed interface ChassisChange extends Change {
    /**
     * Other wheels, axles or spacers: another track width.
     *
     * @param rearTrackMm between the centres of the rear tyres' contacts
     * @param frontTrackMm the same in front
     */
    record TrackWidth(Reading rearTrackMm, Reading frontTrackMm) implements ChassisChange {
        static TrackWidth of(Values values) {
            return new TrackWidth(values.require(Chassis.REAR_TRACK), values.require(Chassis.FRONT_TRACK));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.TRACK_WIDTH;
        }

        @Override
        public Values values() {
            return Values.NONE.with(Chassis.REAR_TRACK, rearTrackMm).with(Chassis.FRONT_TRACK, frontTrackMm);
        }

        @Override
        public Build apply(Build before) {
            Chassis was = before.setUp().chassis();
            return before.with(before.setUp()
                    .withChassis(new Chassis(
                            was.guideToRearAxleMm(), was.wheelbaseMm(), rearTrackMm, frontTrackMm, was.frontWheels())));
        }

        @Override
        public String sentence(Build before) {
            return "track width %s mm rear, %s mm front".formatted(Say.number(rearTrackMm), Say.number(frontTrackMm));
        }
    }

    /**
     * The body freed, or held again.
     *
     * @param turns turns by which the body screws are backed off
     * @param edges which edges of chassis or body were relieved, in the racer's words; may be empty
     */
    record BodyFloat(Optional<Reading> turns, String edges) implements ChassisChange {
        static BodyFloat of(Values values) {
            return new BodyFloat(values.find(Trim.BODY_TURNS), values.text(ChangeKeys.EDGES));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.BODY_FLOAT;
        }

        @Override
        public Values values() {
            return Values.NONE.with(Trim.BODY_TURNS, turns).with(ChangeKeys.EDGES, edges);
        }

        @Override
        public Build apply(Build before) {
            return turns.map(given -> before.with(before.trim().withBodyTurns(given.value())))
                    .orElse(before);
        }

        @Override
        public String sentence(Build before) {
            String screws = turns.map(given -> given.value() == 0
                            ? "body screws tight"
                            : "body screws backed off %s turns".formatted(Say.number(given)))
                    .orElse("body freed");
            return screws + (edges.isEmpty() ? "" : ", relieved: " + edges);
        }
    }
}
