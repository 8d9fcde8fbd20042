/**
 * From a drawing to the centre line of a track: its curves are flattened, pieces whose ends meet are joined into closed loops, and
 * one loop is laid out as the points of a periodic spline.
 */
package org.lapwright.app.files.drawing.course;
