/**
 * Many things at once: league tables of means known with different precision, and many changes tried one after the
 * other.
 */
package org.lapwright.core.stats.many;
