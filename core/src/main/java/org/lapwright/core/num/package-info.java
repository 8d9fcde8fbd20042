/**
 * Numerical tools that Hipparchus does not have. No word of cars or tracks here.
 */
package org.lapwright.core.num;
