/** The page on which several tweaks are screened at once. */
@NullMarked
package org.lapwright.app.web.screening;

import org.jspecify.annotations.NullMarked;
