/**
 * What a timing gate saw, and the laps that follow from it.
 *
 * <p>A pass is raw and never altered; a lap is the difference of two stamps of one clock in one boot.
 */
package org.lapwright.core.laps.pass;
