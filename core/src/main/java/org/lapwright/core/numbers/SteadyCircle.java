package org.lapwright.core.numbers;

import java.util.Optional;
import org.lapwright.core.dynamics.ResolvedCar;

/**
 * A steady left circle on flat ground, driven by the guide point as fast as the rear tyres hold; the motor is left out.
 *
 * <p>With u = 0, p = 0 and sin ψ = L κ the equations of the lap solver collapse: the yaw acceleration is 0, the wall pushes
 * inwards with F_n = m κ w x_c/L, the tyres sideways with Y = m κ w c l/L and along the car with X = D/c, and
 * N_r = m g l/L + F_M (1 − x_M/L) − m κ² w x_c h/L. Y and X grow with w and N_r does not, so X² + Y² = (μ N_r)² has exactly
 * one w ≥ 0 with a load on the tyres, the smaller positive root of a quadratic.
 */
final class SteadyCircle {
    /** Beyond this angle between car and slot the equations lose their meaning; the lap solver ends there too. */
    private static final double MOST_ACROSS = Math.sin(Math.toRadians(75));

    /**
     * Where the rear lets go.
     *
     * @param speedMps speed of the guide point, m/s
     * @param acrossG acceleration of the centre of gravity across the car, a_y, in units of standard gravity
     */
    record Slide(double speedMps, double acrossG) {}

    private SteadyCircle() {}

    /**
     * Where the rear lets go; at a standstill when the tyres cannot even pull the braids. Empty when the car is so long
     * that it would stand across the slot.
     *
     * @param body masses and lengths
     * @param contact what happens where the car touches the track
     * @param radiusM plan radius of the guide point's circle, m
     */
    static Optional<Slide> slide(ResolvedCar.Body body, ResolvedCar.Contact contact, double radiusM) {
        double curvature = 1 / radiusM;
        double across = body.lengthM() * curvature;
        if (across > MOST_ACROSS) {
            return Optional.empty();
        }
        double cos = Math.sqrt(1 - across * across);
        double w = greatestSquare(body, contact, curvature, cos);
        return Optional.of(new Slide(Math.sqrt(w), curvature * w * cos / ResolvedCar.GRAVITY));
    }

    /** The w at which (side w)² + (drag₀ + drag₁ w)² = (hold₀ − hold₁ w)². */
    private static double greatestSquare(
            ResolvedCar.Body body, ResolvedCar.Contact contact, double curvature, double cos) {
        double mass = body.massKg();
        double ahead = body.aheadM() / body.lengthM();
        double behind = 1 - ahead;
        double side = mass * curvature * cos * behind;
        double air = ResolvedCar.AIR_DENSITY * contact.dragAreaM2() / 2;
        double dragAtRest = contact.braidDragN() / cos;
        double drag = (contact.slotFriction() * mass * curvature * ahead + air) / cos;
        double pull = contact.magnetN() * (1 - contact.magnetAheadM() / body.lengthM());
        double holdAtRest = contact.grip() * (mass * ResolvedCar.GRAVITY * behind + pull);
        double lost = contact.grip() * mass * curvature * curvature * ahead * body.heightM();
        if (holdAtRest <= dragAtRest) {
            return 0;
        }
        double free = (holdAtRest - dragAtRest) * (holdAtRest + dragAtRest);
        // Root of (side² + drag² − lost²) w² + 2 half w − free, in the form that holds for either sign of the first
        // coefficient and stays exact at 0; its discriminant written as a sum of squares, which cannot be negative.
        double half = dragAtRest * drag + holdAtRest * lost;
        double root = Math.hypot(side * Math.sqrt(free), drag * holdAtRest + lost * dragAtRest);
        return free / (half + root);
    }
}
