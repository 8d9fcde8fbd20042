/**
 * Linear models of values measured in runs: neighbours in a run hang together, a run has a level of its own, and runs
 * do not know of each other.
 *
 * <p>Everything is O(n) in the number of values: the covariance is undone run by run, never formed.
 */
package org.lapwright.core.stats.model;
