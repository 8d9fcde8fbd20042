package org.lapwright.core.car;

/**
 * A piece so small that only its place counts; a negative mass is a piece taken out.
 *
 * @param massG mass, g
 * @param xMm ahead of the rear axle, mm
 * @param yMm left of the centre line, mm
 * @param zMm above the track, mm
 */
public record PointMass(double massG, double xMm, double yMm, double zMm) {}
