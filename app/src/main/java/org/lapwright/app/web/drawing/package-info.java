/** The page on which the centre line of a track is taken from a drawing. */
package org.lapwright.app.web.drawing;
