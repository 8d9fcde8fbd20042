/** The page on which the owner says which kinds of track pieces there are. */
@NullMarked
package org.lapwright.app.web.track.kit;

import org.jspecify.annotations.NullMarked;
