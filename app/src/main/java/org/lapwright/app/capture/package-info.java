/** Timing sources: what comes over a wire becomes passes. */
@NullMarked
package org.lapwright.app.capture;

import org.jspecify.annotations.NullMarked;
