/** Laps while they come in, as pages. */
@NullMarked
package org.lapwright.app.web.run;

import org.jspecify.annotations.NullMarked;
