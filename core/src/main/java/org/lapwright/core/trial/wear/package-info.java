/** Pace against the laps that a part has run: tyres go off, braid wears flat. */
package org.lapwright.core.trial.wear;
