/** Laps while they come in, judged as they do. */
@NullMarked
package org.lapwright.app.usecase.run;

import org.jspecify.annotations.NullMarked;
