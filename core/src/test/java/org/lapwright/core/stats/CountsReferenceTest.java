package org.lapwright.core.stats;

import org.junit.jupiter.api.Test;

/**
 * Rates of rare events against R 4.2.2: fisher.test, prop.test without correction (Wilson), qbeta (Jeffreys), and the
 * chance of a higher rate by integrate(). The binomial and chi-squared tests in the file are not something we compute.
 */
class CountsReferenceTest {
    @Test
    void offsBeforeAndAfter() {
        ReferenceCase c = ReferenceCase.load("counts-binomial");
        Proportion a = new Proportion((int) c.input("a_off"), (int) c.input("a_laps"));
        Proportion b = new Proportion((int) c.input("b_off"), (int) c.input("b_laps"));
        c.check(a.fisherExact(b), "fisher_p");
        c.check(a.wilson(0.95).low(), "wilson_a_low");
        c.check(a.wilson(0.95).high(), "wilson_a_high");
        c.check(a.jeffreys(0.95).low(), "jeffreys_a_low");
        c.check(a.jeffreys(0.95).high(), "jeffreys_a_high");
        c.check(b.chanceHigherThan(a), "prob_b_rate_higher_jeffreys");
    }
}
