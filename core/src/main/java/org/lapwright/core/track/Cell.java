package org.lapwright.core.track;

/**
 * A short stretch of lane.
 *
 * @param section its length, mean curvature, bank and grade
 * @param afterJoint whether curvature, bank or grade jump at its near edge
 */
public record Cell(Section section, boolean afterJoint) {}
