/** One class for each question a racer asks at the bench: log a change, see what it brings, go back, compare. */
@NullMarked
package org.lapwright.app.usecase.bench;

import org.jspecify.annotations.NullMarked;
