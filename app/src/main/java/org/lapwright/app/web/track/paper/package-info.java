/** A track on paper, and its lanes for a plotter or a saw: to scale, in millimetres. */
package org.lapwright.app.web.track.paper;
