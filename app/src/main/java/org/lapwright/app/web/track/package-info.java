/** The Track page: a lane drawn to scale, the best lap along it, and a track written down piece by piece. */
package org.lapwright.app.web.track;
