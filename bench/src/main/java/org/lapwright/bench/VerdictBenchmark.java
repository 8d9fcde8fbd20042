package org.lapwright.bench;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.lapwright.core.trial.Judge;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.TrialSettings;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A whole verdict, a look after every lap included; beside it the peer: one dense generalised least-squares fit by
 * Hipparchus of the last look alone.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class VerdictBenchmark {
    private static final double PHI = 0.25;
    private static final double RUN_SHARE = 0.1;

    /** The runs driven. */
    @Param({"AB x 60", "ABBAAB x 10"})
    private String plan = "AB x 60";

    private Session session = InventedLaps.session(RunPlan.parse("AB x 60"));

    /** Makes the session. */
    @Setup
    public void drive() {
        session = InventedLaps.session(RunPlan.parse(plan));
    }

    /** Ours. */
    @Benchmark
    public Verdict verdict() {
        return Judge.judge(session, TrialSettings.DEFAULT);
    }

    /** The peer: no cleaning, no looks, no consistency. */
    @Benchmark
    public double[] denseFitOfTheLastLookByHipparchus() {
        int n = session.laps();
        double[] y = new double[n];
        double[][] x = new double[n][3];
        double[][] covariance = new double[n][n];
        int[] run = new int[n];
        int[] position = new int[n];
        fill(y, x, run, position);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance[i][j] =
                        run[i] == run[j] ? Math.pow(PHI, Math.abs(position[i] - position[j])) + RUN_SHARE : 0;
            }
        }
        GLSMultipleLinearRegression regression = new GLSMultipleLinearRegression();
        regression.newSampleData(y, x, covariance);
        return regression.estimateRegressionParameters();
    }

    private void fill(double[] y, double[][] x, int[] run, int[] position) {
        int i = 0;
        for (int r = 0; r < session.runs().size(); r++) {
            double[] seconds = session.runs().get(r).run().laps().stream()
                    .mapToDouble(lap -> Math.log(lap.seconds()))
                    .toArray();
            for (int k = 0; k < seconds.length; k++) {
                y[i] = seconds[k];
                run[i] = r;
                position[i] = k;
                Arrays.setAll(x[i], column -> 0);
                x[i][0] = i / 60.0;
                x[i][1] = Math.exp(-k / 3.0);
                x[i][2] = session.runs().get(r).side().ordinal();
                i++;
            }
        }
    }
}
