/** Where on the lap a change brings or costs time, where more gates than the timing line saw the car. */
package org.lapwright.core.trial.section;
