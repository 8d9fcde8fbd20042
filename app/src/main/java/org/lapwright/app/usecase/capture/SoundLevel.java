package org.lapwright.app.usecase.capture;

/**
 * How loud a lane was for a moment.
 *
 * @param loudest greatest height, in full scale, 0 to 1
 * @param needed height that a pass needed, in full scale
 * @param passes how many became certain in it
 */
public record SoundLevel(double loudest, double needed, int passes) {}
