/**
 * Vector drawings in SVG and DXF, read into lines and curves.
 *
 * <p>Reading makes {@link org.lapwright.app.files.drawing.Outline}s of lines and Bézier curves; the
 * package {@code course} follows and joins them. Nothing is run or fetched; what was left out is said.
 */
package org.lapwright.app.files.drawing;
