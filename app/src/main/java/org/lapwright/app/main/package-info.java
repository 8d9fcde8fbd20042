/** Settings and wiring: the only room that sees all the others. */
@NullMarked
package org.lapwright.app.main;

import org.jspecify.annotations.NullMarked;
