package org.lapwright.core.stats;

/**
 * A distribution-free interval for a quantile between two values of the sample.
 *
 * @param lower lower end, the value of rank {@code lowerRank}
 * @param upper upper end, the value of rank {@code upperRank}
 * @param lowerRank rank of the lower end, from 1
 * @param upperRank rank of the upper end, from 1
 * @param coverage exact confidence for a continuous distribution, at least the level asked for
 */
public record OrderStatisticInterval(double lower, double upper, int lowerRank, int upperRank, double coverage) {}
