/** Parts owned, where each is fitted, how many laps it has run, and what is due to be done to it. */
package org.lapwright.core.car.shelf;
