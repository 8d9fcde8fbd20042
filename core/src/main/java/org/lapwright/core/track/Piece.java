package org.lapwright.core.track;

import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/** One piece of track, in the direction of travel. */
public sealed interface Piece {
    /** Length of a straight. */
    NumberKey STRAIGHT = new NumberKey("pieces", "straight_mm", 1, 50_000);

    /** Plan radius of a turn's centre line. */
    NumberKey RADIUS = new NumberKey("pieces", "radius_mm", 30, 20_000);

    /** Angle of a turn. */
    NumberKey ANGLE = new NumberKey("pieces", "angle_deg", 0.5, 720);

    /** Bank of a turn. */
    NumberKey BANK = new NumberKey("pieces", "bank_deg", -60, 60);

    /** Rise of a piece's far end. */
    NumberKey RISE = new NumberKey("pieces", "rise_mm", -5000, 5000);

    /** The steepest slope that still counts as track: sine of the grade. */
    double STEEPEST = 0.8;

    /**
     * This piece along a lane.
     *
     * @param offsetM lane left of the centre line, m
     * @throws IllegalArgumentException if the lane does not fit inside the turn
     */
    Section along(double offsetM);

    /** How far the far end rises, mm. */
    double riseMm();

    /** What is different on it. */
    PieceExtras extras();

    /** The same piece with other things different on it. */
    Piece with(PieceExtras others);

    /**
     * A straight piece.
     *
     * @param lengthMm length along the surface
     * @param riseMm how far the far end rises
     * @param extras what is different on it
     */
    record Straight(double lengthMm, double riseMm, PieceExtras extras) implements Piece {
        /** Checks length and slope. */
        public Straight {
            lengthMm = STRAIGHT.check(lengthMm);
            riseMm = checkSlope(riseMm, lengthMm);
        }

        /** One on which nothing is different. */
        public Straight(double lengthMm, double riseMm) {
            this(lengthMm, riseMm, PieceExtras.NONE);
        }

        @Override
        public Straight with(PieceExtras others) {
            return new Straight(lengthMm, riseMm, others);
        }

        @Override
        public Section along(double offsetM) {
            return new Section(lengthMm / 1000, 0, 0, riseMm / lengthMm);
        }
    }

    /**
     * A turn of constant radius.
     *
     * @param radiusMm plan radius of the centre line
     * @param angleDeg angle turned through
     * @param left whether it turns left
     * @param bankDeg how far the outside is raised; negative when it falls off
     * @param riseMm how far the far end rises
     * @param extras what is different on it
     */
    record Turn(double radiusMm, double angleDeg, boolean left, double bankDeg, double riseMm, PieceExtras extras)
            implements Piece {
        /** Checks each number and the slope. */
        public Turn {
            radiusMm = RADIUS.check(radiusMm);
            angleDeg = ANGLE.check(angleDeg);
            bankDeg = BANK.check(bankDeg);
            riseMm = checkSlope(riseMm, radiusMm * Math.toRadians(angleDeg));
        }

        /** One on which nothing is different. */
        public Turn(double radiusMm, double angleDeg, boolean left, double bankDeg, double riseMm) {
            this(radiusMm, angleDeg, left, bankDeg, riseMm, PieceExtras.NONE);
        }

        @Override
        public Turn with(PieceExtras others) {
            return new Turn(radiusMm, angleDeg, left, bankDeg, riseMm, others);
        }

        @Override
        public Section along(double offsetM) {
            int sign = left ? 1 : -1;
            double radius = radiusMm / 1000 - sign * offsetM;
            if (radius < SMALLEST_LANE_RADIUS_M) {
                double inwards = Math.round(1e6 * sign * offsetM) / 1e3;
                throw new IllegalArgumentException(
                        "radius_mm is %s; a lane offset by %s mm to the inside needs a radius of at least %s mm"
                                .formatted(
                                        Check.number(radiusMm),
                                        Check.number(inwards),
                                        Check.number(inwards + 1000 * SMALLEST_LANE_RADIUS_M)));
            }
            double length = radius * Math.toRadians(angleDeg);
            checkSlope(riseMm, 1000 * length);
            return new Section(length, sign / radius, sign * Math.toRadians(bankDeg), riseMm / 1000 / length);
        }
    }

    /** The tightest lane that makes sense, m. */
    double SMALLEST_LANE_RADIUS_M = 0.02;

    private static double checkSlope(double riseMm, double lengthMm) {
        RISE.check(riseMm);
        double limit = STEEPEST * lengthMm;
        return Check.inRange(riseMm, -limit, limit, "rise_mm of a piece " + Math.round(lengthMm) + " mm long", "mm");
    }
}
