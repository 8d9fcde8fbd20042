/** The cars on one track, ranked by pace, with how sure the order is. */
package org.lapwright.core.trial.ladder;
