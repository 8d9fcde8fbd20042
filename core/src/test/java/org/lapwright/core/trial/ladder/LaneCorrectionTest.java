package org.lapwright.core.trial.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.stat.regression.GLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.lapwright.core.trial.ladder.LaneCorrection.Cell;

/** The mixed model by elimination, against generalised least squares with the full covariance by Hipparchus. */
class LaneCorrectionTest {
    private static final double S2 = LaneCorrection.LANES_DIFFER * LaneCorrection.LANES_DIFFER;

    /** Cars that were driven on one to three of four lanes. */
    private static List<Cell> cells(int cars, int lanes, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        List<Cell> cells = new ArrayList<>();
        for (int car = 0; car < cars; car++) {
            int first = car % lanes;
            int count = 1 + chance.nextInt(3);
            for (int k = 0; k < count; k++) {
                int lane = (first + k) % lanes;
                double error = 0.001 + 0.004 * chance.nextDouble();
                double log = 1.9 + 0.01 * car + 0.015 * (lane - 1.5) + error * chance.nextGaussian();
                cells.add(new Cell(car, lane, log, error));
            }
        }
        return cells;
    }

    private static double covariance(LaneCorrection corrected, int one, int other) {
        double sum = one == other ? corrected.ownError(one) * corrected.ownError(one) : 0;
        for (int k = 0; k < corrected.lanePart(one).length; k++) {
            sum += corrected.lanePart(one)[k] * corrected.lanePart(other)[k];
        }
        return sum;
    }

    @Test
    void theSameAsGeneralisedLeastSquaresWithTheFullCovariance() {
        for (int lanes = 1; lanes <= 4; lanes++) {
            int cars = 7;
            List<Cell> cells = cells(cars, lanes, 40 + lanes);
            LaneCorrection corrected = new LaneCorrection(cells, cars, lanes);
            double[] y = cells.stream().mapToDouble(Cell::log).toArray();
            double[][] x = new double[y.length][cars];
            double[][] covariance = new double[y.length][y.length];
            for (int i = 0; i < y.length; i++) {
                x[i][cells.get(i).car()] = 1;
                for (int j = 0; j < y.length; j++) {
                    boolean oneLane = cells.get(i).lane() == cells.get(j).lane();
                    covariance[i][j] = S2 * ((oneLane ? 1 : 0) - 1.0 / lanes)
                            + (i == j ? cells.get(i).error() * cells.get(i).error() : 0);
                }
            }
            GLSMultipleLinearRegression full = new GLSMultipleLinearRegression();
            full.setNoIntercept(true);
            full.newSampleData(y, x, covariance);
            double[] cars2 = full.estimateRegressionParameters();
            double[][] variance = full.estimateRegressionParametersVariance();
            for (int car = 0; car < cars; car++) {
                assertThat(corrected.car(car)).isCloseTo(cars2[car], within(1e-10));
                for (int other = 0; other < cars; other++) {
                    assertThat(covariance(corrected, car, other)).isCloseTo(variance[car][other], within(1e-10));
                }
            }
        }
    }

    /** Two cars that both know both lanes: the difference is the mean of their two differences, drawn in by one part in thousands. */
    @Test
    void lanesThatCarsHaveInCommonAreTold() {
        double error = 1e-4;
        LaneCorrection corrected = new LaneCorrection(
                List.of(
                        new Cell(0, 0, 2.00, error),
                        new Cell(0, 1, 2.03, error),
                        new Cell(1, 0, 2.10, error),
                        new Cell(1, 1, 2.13, error)),
                2,
                2);
        assertThat(corrected.lane(1) - corrected.lane(0)).isCloseTo(0.03, within(1e-5));
        assertThat(corrected.lane(0)).isCloseTo(-corrected.lane(1), within(1e-15));
        assertThat(corrected.car(0)).isCloseTo(2.015, within(1e-9));
        assertThat(corrected.laneError(0)).isCloseTo(error / 2, within(1e-6));
    }

    @Test
    void whereNoCarKnowsTwoLanesNothingIsTakenOffAndLessIsSure() {
        LaneCorrection corrected =
                new LaneCorrection(List.of(new Cell(0, 0, 2.00, 0.001), new Cell(1, 1, 2.03, 0.001)), 2, 2);
        assertThat(corrected.car(0)).isEqualTo(2.00);
        assertThat(corrected.car(1)).isEqualTo(2.03);
        assertThat(covariance(corrected, 0, 0)).isCloseTo(1e-6 + S2 / 2, within(1e-12));
        assertThat(covariance(corrected, 0, 1)).isCloseTo(-S2 / 2, within(1e-12));
    }

    @Test
    void oneLaneLeavesPacesAsTheyAre() {
        LaneCorrection corrected = new LaneCorrection(List.of(new Cell(0, 0, 2.00, 0.001)), 1, 1);
        assertThat(corrected.car(0)).isEqualTo(2.00);
        assertThat(corrected.ownError(0)).isCloseTo(0.001, within(1e-15));
        assertThat(corrected.lanePart(0)).isEmpty();
        assertThat(corrected.lane(0)).isZero();
        assertThat(corrected.laneError(0)).isZero();
    }
}
