package org.lapwright.core.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published force against gap: set A, bench measurements of two coaxial NdFeB cylinders (public Python scripts with the
 * measurements of a magnetic spring, ±0.6 mm, ±2 gf); set K2, the table "gripping capacity with an air gap" in the brochure of
 * a switchable magnetic gripper. The expected F₀, z₀, n are least squares on log force by another program.
 *
 * <p>The law has no unit of force of its own, so the newtons of the tables stand where a racer gives gram-force.
 */
class MagnetPullReferenceTest {
    @ParameterizedTest
    @CsvSource({"A,A_public", "K2,K2"})
    void theFitAgrees(String set, String fit) {
        JsonNode expected =
                PhysicsFiles.json("magnet_examples.json").get("fits").get(fit);
        List<PullReading> readings = readings(set);
        MagnetPull pull = MagnetPull.fit(readings);
        // The last printed digit.
        assertThat(pull.middle().contactG())
                .isCloseTo(expected.get("F0_N").asDouble(), within(set.equals("A") ? 0.006 : 0.6));
        assertThat(pull.middle().scaleMm())
                .isCloseTo(expected.get("z0_mm").asDouble(), within(set.equals("A") ? 6e-4 : 6e-5));
        assertThat(pull.middle().exponent()).isCloseTo(expected.get("n").asDouble(), within(6e-4));
        double squares = 0;
        double worst = 0;
        for (PullReading reading : readings) {
            double relative = pull.middle().atG(reading.distanceMm()) / reading.pullG() - 1;
            squares += relative * relative / readings.size();
            worst = Math.max(worst, Math.abs(relative));
        }
        assertThat(Math.sqrt(squares)).isCloseTo(expected.get("rms_rel").asDouble(), within(6e-5));
        assertThat(worst).isCloseTo(expected.get("max_rel").asDouble(), within(6e-5));
    }

    /** Two readings of either set: the band they leave open holds all the other readings, within the law's own misfit. */
    @ParameterizedTest
    @CsvSource({"A,7.88,23,0.06", "A,4.52,50,0.06", "K2,0.1,0.4,0.015", "K2,0,0.2,0.015"})
    void theBandOfTwoReadingsHoldsTheOthers(String set, double nearMm, double farMm, double misfit) {
        List<PullReading> all = readings(set);
        MagnetPull pull = MagnetPull.fit(all.stream()
                .filter(reading -> reading.distanceMm() == nearMm || reading.distanceMm() == farMm)
                .toList());
        for (PullReading reading : all) {
            MagnetPull.Band band = pull.at(reading.distanceMm());
            assertThat(reading.pullG())
                    .as("%s at %s mm", set, reading.distanceMm())
                    .isBetween(band.lowG() * (1 - misfit), band.highG() * (1 + misfit));
        }
    }

    /** The exponents at the ends of the band are those of the published magnets. */
    @Test
    void theExponentsOfTheBandArePublished() {
        JsonNode fits = PhysicsFiles.json("magnet_examples.json").get("fits");
        assertThat(fits.get("K2").get("n").asDouble())
                .isBetween(MagnetPull.LEAST_EXPONENT, MagnetPull.GREATEST_EXPONENT);
        assertThat(fits.get("A_public").get("n").asDouble()).isCloseTo(MagnetPull.GREATEST_EXPONENT, within(0.05));
    }

    private static List<PullReading> readings(String set) {
        return PhysicsFiles.rows("magnet_force_gap.csv").stream()
                .filter(row -> PhysicsFiles.text(row, "set").equals(set))
                .map(row -> new PullReading(PhysicsFiles.number(row, "gap_mm"), PhysicsFiles.number(row, "force_N")))
                .toList();
    }
}
