/** The guided measurement of rails: voltages under a known load become the resistances of supply and rails. */
package org.lapwright.app.web.track.rails;
