/**
 * Before against after: did the change help, on pace and on consistency, and how sure is that.
 *
 * <p>Start at {@link org.lapwright.core.trial.Judge}. The measured evidence never depends on a model of the car.
 * Methods and sources: docs/model/verdict.md.
 */
package org.lapwright.core.trial;
