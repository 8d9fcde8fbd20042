/** Pages for paper: XHTML and drawings become PDF. */
@NullMarked
package org.lapwright.app.sheet;

import org.jspecify.annotations.NullMarked;
