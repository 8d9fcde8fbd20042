/** The bench: a car from above, its numbers, and the form that measures it. Knows no HTTP. */
package org.lapwright.app.web.bench;
