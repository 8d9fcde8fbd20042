/**
 * Guided measurements: what to read, how often, and what it works out to, with how sure that is. Repeated readings are evaluated by type
 * A, the instrument by type B (JCGM 100:2008, 4.2, 4.3), and carried on by the law of propagation (5.1).
 */
package org.lapwright.core.car.measure;
