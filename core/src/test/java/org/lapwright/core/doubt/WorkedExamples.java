package org.lapwright.core.doubt;

/** What the worked examples compute. */
final class WorkedExamples {
    private WorkedExamples() {}

    static double sum(double[] x) {
        return x[0] + x[1] + x[2] + x[3];
    }

    /** JCGM 101 9.3: mass of a weight above 100 g, mg. */
    static double mass(double[] x) {
        return (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000;
    }

    /** Linear expansion of a bar from L0, T0 to L1, T1, 1/K. */
    static double expansion(double[] x) {
        return (x[2] - x[0]) / (x[0] * (x[3] - x[1]));
    }
}
