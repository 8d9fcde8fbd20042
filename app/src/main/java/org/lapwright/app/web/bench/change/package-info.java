/** Pages on which changes are logged, looked back on, undone and compared. */
@NullMarked
package org.lapwright.app.web.bench.change;

import org.jspecify.annotations.NullMarked;
