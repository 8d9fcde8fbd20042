/** What to try next, and why. */
@NullMarked
package org.lapwright.app.usecase.advice;

import org.jspecify.annotations.NullMarked;
