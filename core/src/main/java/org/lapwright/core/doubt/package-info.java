/**
 * How sure a computed number is, given how sure the numbers are that went into it. No word of cars or tracks here.
 *
 * <p>Two methods that check each other. {@link org.lapwright.core.doubt.LinearPropagation} is the law of propagation of
 * uncertainty (JCGM 100:2008, GUM, clause 5): quick, and it says which input brings how much. It takes the computation for a
 * straight line over the width of the doubt. {@link org.lapwright.core.doubt.MonteCarlo} draws the inputs again and again
 * (JCGM 101:2008, Supplement 1): slower, and right for bends and kinks too.
 *
 * <p>{@code docs/model/uncertainty.md} says where the two part.
 */
package org.lapwright.core.doubt;
