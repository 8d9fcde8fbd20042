/** JMH benchmarks of what has to be fast; the figures stand in docs/performance.md. */
package org.lapwright.bench;
