/** What to try next, as a page. */
@NullMarked
package org.lapwright.app.web.next;

import org.jspecify.annotations.NullMarked;
