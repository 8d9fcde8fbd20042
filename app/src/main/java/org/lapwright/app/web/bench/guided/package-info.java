/** Measuring one thing of a car at a time: what to read, and what it works out to. */
package org.lapwright.app.web.bench.guided;
