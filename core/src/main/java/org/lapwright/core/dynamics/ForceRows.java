package org.lapwright.core.dynamics;

import static org.lapwright.core.dynamics.TrailedLane.COS;
import static org.lapwright.core.dynamics.TrailedLane.CURVE;
import static org.lapwright.core.dynamics.TrailedLane.CURVE_COS;
import static org.lapwright.core.dynamics.TrailedLane.CURVE_SIN;
import static org.lapwright.core.dynamics.TrailedLane.CURVE_TAN;
import static org.lapwright.core.dynamics.TrailedLane.FEED;
import static org.lapwright.core.dynamics.TrailedLane.GRAV_N;
import static org.lapwright.core.dynamics.TrailedLane.GRAV_X;
import static org.lapwright.core.dynamics.TrailedLane.GRAV_Y;
import static org.lapwright.core.dynamics.TrailedLane.GRAV_Z;
import static org.lapwright.core.dynamics.TrailedLane.HILL;
import static org.lapwright.core.dynamics.TrailedLane.INV_COS;
import static org.lapwright.core.dynamics.TrailedLane.PRESS;
import static org.lapwright.core.dynamics.TrailedLane.SIN;
import static org.lapwright.core.dynamics.TrailedLane.SIN_TURN;
import static org.lapwright.core.dynamics.TrailedLane.SWING;
import static org.lapwright.core.dynamics.TrailedLane.SWING_COS;
import static org.lapwright.core.dynamics.TrailedLane.SWING_SIN;
import static org.lapwright.core.dynamics.TrailedLane.TAN;
import static org.lapwright.core.dynamics.TrailedLane.YAW_U;
import static org.lapwright.core.dynamics.TrailedLane.YAW_W;

import org.lapwright.core.track.Power;

/**
 * The forces on one car at every element of a lane, for unit mass, as affine forms in u (acceleration along the slot) and
 * w (square of the speed): three rows each, the coefficient of u, the coefficient of w, and what is free of both.
 *
 * <p>The friction of the slot goes with the absolute value of the wall force. {@link #SIGN} says for which side of the slot it
 * was put in; a sweep that finds the blade on the other side reckons that step anew ({@link StepRows#turnedStep}).
 *
 * <p>Equations: {@code docs/model/lap-solver.md}, section 1. Signs as ISO 8855: x forward, y left, z up. The loops have one
 * plain counter and no branch, the form that the compiler turns into vector instructions.
 */
final class ForceRows {
    /** Sideways force of the rear tyres. */
    static final int SIDE = 0;

    /** Force of the slot wall on the blade. */
    static final int WALL = 3 * Rows.STRIDE;

    /** Force of the rear tyres along the car. */
    static final int PUSH = 6 * Rows.STRIDE;

    /** Load on the rear tyres. */
    static final int REAR = 9 * Rows.STRIDE;

    /** What the motor must deliver at the tyre. */
    static final int MOTOR = 12 * Rows.STRIDE;

    /** Acceleration across the car: the rows of u and w only, the free one is what gravity takes off. */
    static final int LEAN = 15 * Rows.STRIDE;

    /** Most drive at standstill, what each m/s takes off it, what each m/s adds to the motor's braking. */
    static final int DRIVE = 17 * Rows.STRIDE;

    static final int DRIVE_SLOPE = 18 * Rows.STRIDE;
    static final int BRAKE_SLOPE = 19 * Rows.STRIDE;

    /** Square of the speed just above which the motor only holds the car back. */
    static final int FREE = 20 * Rows.STRIDE;

    /** +1 where the wall is taken to push to the left, −1 to the right, 0 where it does not push. */
    static final int SIGN = 21 * Rows.STRIDE;

    private static final int ROWS = 22;

    /** From the row of u to the row of w, and to the free row. */
    static final int W = Rows.STRIDE;

    static final int FREE_OF_BOTH = 2 * Rows.STRIDE;

    /** Stands for the resistance of a brake that is not there, ohm. */
    private static final double OPEN = 1e12;

    private static final double SPARE = 1.03;
    private static final double STEEP = 1e200;

    final Rows rows;

    /** The lane as the car in hand follows it. */
    TrailedLane lane;

    /** Friction of the blade in the slot. */
    double slotFriction;

    /** Grip on the track's surface, squared. */
    double gripSquared;

    /** Least load on the guide. */
    double leastNose;

    /** Half the rear track over the height of the centre of gravity. */
    double stance;

    /** 1 when the front wheels touch, 0 when they hang clear. */
    double frontShare;

    /** The motor's braking at standstill. */
    double brake;

    /** No steady lap has a speed whose square is above this. */
    double fastestSquared;

    /** Magnet's pull where it pulls. */
    double magnet;

    /** Height of the centre of gravity over the car's length, and the most drive anywhere; for a first guess. */
    double height;

    double mostDrive;

    private double centre;
    private double lever;
    private double spin;
    private double ahead;
    private double magnetOnNose;
    private double braid;
    private double air;
    private double rolling;
    private double rotor;
    private double stall;
    private double idle;
    private double driveFall;
    private double brakeRise;
    private double sourceOhm;
    private double brakeOhm;
    private double railOhm;

    ForceRows(TrailedLane lane) {
        this.lane = lane;
        rows = new Rows(ROWS, lane.elements);
    }

    /** Takes a car's numbers; {@link #fill} then works out its forces. The lane must be as this car follows it. */
    void take(TrailedLane followed, ResolvedCar car) {
        lane = followed;
        double mass = car.body().massKg();
        slotFriction = car.contact().slotFriction();
        gripSquared = car.contact().grip() * car.contact().grip();
        leastNose = car.contact().minGuideLoadN() / mass;
        stance = car.body().rearTrackM() / (2 * car.body().heightM());
        frontShare = car.body().frontShare();
        centre = car.guideToCentreM();
        lever = centre / lane.lengthM;
        spin = car.body().yawInertiaKgM2() / (mass * lane.lengthM);
        height = car.body().heightM() / lane.lengthM;
        ahead = car.body().aheadM() / lane.lengthM;
        magnet = car.contact().magnetN() / mass;
        magnetOnNose = magnet * car.contact().magnetAheadM() / lane.lengthM;
        braid = car.contact().braidDragN() / mass;
        air = ResolvedCar.AIR_DENSITY * car.contact().dragAreaM2() / (2 * mass);
        rolling = car.contact().rollingResistance();
        rotor = car.drive().rotorMassKg() / mass;
        takeMotor(car);
    }

    private void takeMotor(ResolvedCar car) {
        Power power = lane.lane.power();
        MotorLine line = car.drive().motor();
        double k = line.constantVs();
        double gearing = car.drive().gearing();
        double forward = gearing * car.drive().efficiency() / car.body().massKg();
        double backward = gearing / car.drive().efficiency() / car.body().massKg();
        double fixed = line.resistanceOhm() + car.drive().pickupOhm();
        sourceOhm = fixed + power.sourceOhm();
        brakeOhm = fixed + power.brakeOhm().orElse(OPEN);
        railOhm = power.railOhmPerM();
        stall = forward * k * power.supplyV();
        idle = forward * k * line.noLoadCurrentA();
        driveFall = forward * k * k * gearing;
        brakeRise = backward * k * k * gearing;
        brake = backward * k * line.noLoadCurrentA();
        mostDrive = stall / sourceOhm - idle;
        double free = Math.max(stall - idle * sourceOhm, 0);
        double pulled = free + lane.steepestPull * (sourceOhm + railOhm * lane.longestFeed);
        double fastest = SPARE * SPARE * pulled * lane.mostInvCos / driveFall;
        fastestSquared = fastest * fastest;
    }

    /** Least load on guide and front wheels at rest on the flat. */
    double restingNose() {
        return ResolvedCar.GRAVITY * ahead + (lane.pullsEverywhere ? magnetOnNose : Math.min(magnetOnNose, 0));
    }

    /** Works out the forces in one block. */
    void fill(int block) {
        double[] g = lane.rows.blocks[block];
        double[] v = rows.blocks[block];
        fillSideways(g, v);
        fillWall(g, v);
        fillRear(g, v);
        guessSide(g, v);
        fillPush(g, v);
        fillMotor(g, v);
        fillDrive(g, v);
    }

    private void fillSideways(double[] g, double[] v) {
        double l = centre;
        double a = lever;
        double b = spin;
        for (int i = 0; i < Rows.BLOCK; i++) {
            double leanU = g[SIN + i] - l * g[YAW_U + i];
            double leanW = g[CURVE_COS + i] - l * g[YAW_W + i];
            v[LEAN + i] = leanU;
            v[LEAN + W + i] = leanW;
            v[SIDE + i] = a * leanU - b * g[YAW_U + i];
            v[SIDE + W + i] = a * leanW - b * g[YAW_W + i];
        }
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[SIDE + FREE_OF_BOTH + i] = -a * g[GRAV_Y + i];
        }
    }

    private void fillWall(double[] g, double[] v) {
        double l = centre;
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[WALL + i] = -g[COS + i] * (l * g[YAW_U + i] + v[SIDE + i]);
            v[WALL + W + i] = g[CURVE + i] - l * g[SWING_SIN + i] - g[COS + i] * (l * g[YAW_W + i] + v[SIDE + W + i]);
            v[WALL + FREE_OF_BOTH + i] = -g[GRAV_N + i] - g[COS + i] * v[SIDE + FREE_OF_BOTH + i];
        }
    }

    private void fillRear(double[] g, double[] v) {
        double l = centre;
        double h = height;
        double behind = 1 - ahead;
        double pulled = magnet - magnetOnNose;
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[REAR + i] = h * g[COS + i];
            v[REAR + W + i] = behind * g[PRESS + i] - h * (g[CURVE_SIN + i] - l * g[SWING + i]);
            v[REAR + FREE_OF_BOTH + i] = behind * g[GRAV_Z + i] - h * g[GRAV_X + i] + pulled * g[TrailedLane.PULL + i];
        }
    }

    /** Guesses the side of the slot from the wall force near the speed at which the tyres let go. */
    private void guessSide(double[] g, double[] v) {
        double grip = Math.sqrt(gripSquared);
        for (int i = 0; i < Rows.BLOCK; i++) {
            double wall = v[WALL + W + i] * grip * g[TrailedLane.GRIP + i] * v[REAR + FREE_OF_BOTH + i]
                    + v[WALL + FREE_OF_BOTH + i] * Math.abs(v[SIDE + W + i]);
            v[SIGN + i] = Math.max(-1, Math.min(1, wall * STEEP));
        }
    }

    private void fillPush(double[] g, double[] v) {
        double l = centre;
        double friction = slotFriction;
        double inAir = air;
        double onBraid = braid;
        for (int i = 0; i < Rows.BLOCK; i++) {
            double aslant = g[TAN + i] + friction * v[SIGN + i];
            v[PUSH + i] = g[INV_COS + i] * (1 + aslant * v[WALL + i]);
            v[PUSH + W + i] =
                    g[INV_COS + i] * (aslant * v[WALL + W + i] + inAir - g[CURVE_TAN + i] + l * g[SWING_COS + i]);
            v[PUSH + FREE_OF_BOTH + i] = g[INV_COS + i] * (aslant * v[WALL + FREE_OF_BOTH + i] + onBraid + g[HILL + i]);
        }
    }

    private void fillMotor(double[] g, double[] v) {
        double rolls = rolling;
        double turns = rotor;
        for (int i = 0; i < Rows.BLOCK; i++) {
            v[MOTOR + i] = v[PUSH + i] + rolls * v[REAR + i] + turns * g[COS + i];
            v[MOTOR + W + i] = v[PUSH + W + i] + rolls * v[REAR + W + i] - turns * g[SIN_TURN + i];
            v[MOTOR + FREE_OF_BOTH + i] = v[PUSH + FREE_OF_BOTH + i] + rolls * v[REAR + FREE_OF_BOTH + i];
        }
    }

    private void fillDrive(double[] g, double[] v) {
        double source = sourceOhm;
        double brakes = brakeOhm;
        double rail = railOhm;
        double most = stall;
        double none = idle;
        double fall = driveFall;
        double rise = brakeRise;
        for (int i = 0; i < Rows.BLOCK; i++) {
            double driven = source + rail * g[FEED + i];
            double braked = brakes + rail * g[FEED + i];
            double both = 1 / (driven * braked);
            v[DRIVE + i] = most * both * braked - none;
            v[DRIVE_SLOPE + i] = fall * g[COS + i] * both * braked;
            v[BRAKE_SLOPE + i] = rise * g[COS + i] * both * driven;
        }
        double spare = SPARE / fall;
        for (int i = 0; i < Rows.BLOCK; i++) {
            double free = Math.max(most - none * (source + rail * g[FEED + i]), 0) * g[INV_COS + i] * spare;
            v[FREE + i] = free * free;
        }
    }
}
