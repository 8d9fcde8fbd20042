/** The shelf: parts owned, where each is fitted, how worn it is, and what is due. */
@NullMarked
package org.lapwright.app.web.shelf;

import org.jspecify.annotations.NullMarked;
