/** What the racer typed and fixed on the Before / After page, and what it amounts to. Knows no HTTP. */
package org.lapwright.app.web.compare;
