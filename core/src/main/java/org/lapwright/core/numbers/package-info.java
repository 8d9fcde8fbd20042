/**
 * What a set-up works out to, without a lap: where it balances, what presses on guide and tyres, gearing, the sideways
 * acceleration at which it slides or tips, and the motor's constants.
 *
 * <p>Everything is closed form from the equations of {@code docs/model/lap-solver.md}; nothing is searched for and nothing
 * is NaN. {@link org.lapwright.core.numbers.SetUpNumbers} is the door.
 */
package org.lapwright.core.numbers;
