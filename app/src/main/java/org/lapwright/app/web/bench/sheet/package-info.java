/** The set-up sheet: one printed page about a car, with the cautions on its back, and the same as a table. */
@NullMarked
package org.lapwright.app.web.bench.sheet;

import org.jspecify.annotations.NullMarked;
