/**
 * Answers by shuffling and redrawing the data themselves, with whole runs as the units, because laps of one run are not
 * independent. The generator comes from the caller, so that one seed gives one answer.
 */
package org.lapwright.core.stats.resampling;
