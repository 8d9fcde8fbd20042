/**
 * Several changes tried at once: a plan of runs in which each is on in half of them, driven in an order drawn by lot, and what the
 * paces of the runs say of each.
 */
package org.lapwright.core.trial.screening;
