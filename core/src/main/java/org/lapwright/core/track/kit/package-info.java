/** The kinds of pieces that the owner has, by size, to lay tracks of. */
package org.lapwright.core.track.kit;
