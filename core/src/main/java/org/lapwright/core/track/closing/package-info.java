/** What makes the ends of a layout meet, and a drawing agree with a tape. */
package org.lapwright.core.track.closing;
