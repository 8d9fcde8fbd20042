/**
 * Robust estimates and tests: where the laps of a stint lie, how far they scatter, how they hang together in time, and
 * whether two sets of them differ.
 *
 * <p>Here is only what Hipparchus lacks; distributions, t tests and analysis of variance come from there. Models with
 * run effects are in {@code stats.model}, looking after every lap in {@code stats.sequential}, many changes and league
 * tables in {@code stats.many}, planned experiments in {@code stats.design}. Nothing here knows a lap: arrays are plain
 * numbers, and units are the caller's.
 *
 * <p>Every function is pure, leaves its arrays alone and gives the same answer for the same input; chance comes in as a
 * {@link java.util.random.RandomGenerator}. Bad input is refused with {@link java.lang.IllegalArgumentException}.
 */
package org.lapwright.core.stats;
