/** Rails and wires as conductors: what they are made of, and how their resistance is measured. */
package org.lapwright.core.track.rails;
