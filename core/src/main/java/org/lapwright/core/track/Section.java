package org.lapwright.core.track;

/**
 * A stretch of lane along which nothing changes.
 *
 * @param lengthM length along the surface, m
 * @param curvature plan curvature, 1/m, left positive
 * @param bankRad bank, rad, positive leans into a left turn
 * @param gradeSine sine of the grade, uphill positive
 */
public record Section(double lengthM, double curvature, double bankRad, double gradeSine) {}
