/**
 * Car and track files ({@code lapwright-car/1}, {@code lapwright-track/1}): read with every problem named by its key, and
 * written so that keys which this version does not know stay as they are.
 */
package org.lapwright.app.files.garage;
