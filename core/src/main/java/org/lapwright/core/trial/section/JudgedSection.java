package org.lapwright.core.trial.section;

import org.lapwright.core.trial.Verdict;

/**
 * A section of the lap, judged before against after.
 *
 * @param number its number, from 1 behind the timing line
 * @param verdict on its times; the chance of a wrong one is that of all sections together
 */
public record JudgedSection(int number, Verdict verdict) {}
