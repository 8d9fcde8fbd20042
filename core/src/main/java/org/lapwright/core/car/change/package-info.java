/**
 * What a racer does to a car between two runs: changes of known kinds, each from one {@link
 * org.lapwright.core.car.change.Build} to the next.
 *
 * <p>A change does the arithmetic that follows from it: masses and moments, the lean of the chassis on other tyres or shims,
 * gearing. Where physics does not know the effect it says so ({@link org.lapwright.core.car.change.Change#unforeseen}) instead
 * of guessing.
 */
package org.lapwright.core.car.change;
