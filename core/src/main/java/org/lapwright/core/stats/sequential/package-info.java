/**
 * Looking at data again and again while they come in, without being fooled more often than promised.
 *
 * <p>{@link org.lapwright.core.stats.sequential.GroupSequentialBoundary} and
 * {@link org.lapwright.core.stats.sequential.RepeatedInterval} need a plan and keep most of the power;
 * {@link org.lapwright.core.stats.sequential.TMixtureEvidence} needs none and can be combined over many changes.
 */
package org.lapwright.core.stats.sequential;
