/**
 * Planning: how many runs, laps or information it takes to prove a gain, and several changes tried at once.
 */
package org.lapwright.core.stats.design;
