/**
 * What to try next: changes that could be made to a car, ranked by what they would bring on a lane ({@code
 * docs/model/advice.md}).
 *
 * <p>Every candidate is tried on the same cars drawn from what is known of this one, so that what nobody knows cancels in the
 * differences.
 */
package org.lapwright.core.advice;
