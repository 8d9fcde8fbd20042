package org.lapwright.core.car;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Learning a magnet from readings. */
class MagnetPullTest {
    /** Readings taken off a curve give the curve back. */
    @Property(tries = 300)
    void aCurveIsFoundAgain(
            @ForAll @DoubleRange(min = 200, max = 800) double contactG,
            @ForAll @DoubleRange(min = 0.5, max = 10) double scaleMm,
            @ForAll @DoubleRange(min = 1.2, max = 4) double exponent) {
        PullCurve curve = new PullCurve(contactG, scaleMm, exponent);
        List<PullReading> readings = new ArrayList<>();
        for (double z : new double[] {4, 0.5, 3, 1, 2}) {
            readings.add(new PullReading(z, curve.atG(z)));
        }
        MagnetPull pull = MagnetPull.fit(readings);
        assertThat(pull.scatter()).isLessThan(1e-6);
        for (double z = 0.5; z < 6; z += 0.5) {
            assertThat(pull.at(z).middleG()).isCloseTo(curve.atG(z), within(1e-5 * curve.atG(z)));
        }
    }

    /** Through both readings whatever the exponent, open elsewhere, and in order. */
    @Property(tries = 300)
    void twoReadingsLeaveABand(
            @ForAll @DoubleRange(min = 0, max = 3) double nearMm,
            @ForAll @DoubleRange(min = 0.2, max = 5) double spanMm,
            @ForAll @DoubleRange(min = 1.05, max = 40) double fall) {
        PullReading near = new PullReading(nearMm, 200);
        PullReading far = new PullReading(nearMm + spanMm, 200 / fall);
        MagnetPull pull;
        try {
            pull = MagnetPull.fit(List.of(far, near));
        } catch (IllegalArgumentException tooSteep) {
            assertThat(Math.log(fall) / Math.log((nearMm + spanMm + 0.05) / (nearMm + 0.05)))
                    .isGreaterThan(3.9);
            return;
        }
        for (PullReading reading : List.of(near, far)) {
            MagnetPull.Band band = pull.at(reading.distanceMm());
            assertThat(band.lowG()).isCloseTo(reading.pullG(), within(1e-9 * reading.pullG()));
            assertThat(band.highG()).isCloseTo(reading.pullG(), within(1e-9 * reading.pullG()));
        }
        MagnetPull.Band outside = pull.at(nearMm + 2 * spanMm);
        assertThat(outside.middleG()).isBetween(outside.lowG(), outside.highG());
        assertThat(outside.highG()).isFinite();
        assertThat(pull.gentle().exponent()).isBetween(1.4, 3.9);
        assertThat(pull.steep().exponent()).isEqualTo(3.9);
    }

    /** Scatter of 5 % either way about a curve shows as scatter of that size and as width of the band. */
    @Test
    void scatteredReadingsWidenTheBand() {
        PullCurve curve = new PullCurve(300, 2, 2);
        List<PullReading> readings = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            readings.add(new PullReading(0.5 * i, curve.atG(0.5 * i) * (i % 2 == 0 ? 1.05 : 0.95)));
        }
        MagnetPull pull = MagnetPull.fit(readings);
        assertThat(pull.scatter()).isBetween(0.045, 0.065);
        MagnetPull.Band band = pull.at(1.3);
        assertThat(band.highG() / band.lowG()).isCloseTo(Math.exp(2 * pull.scatter()), within(1e-12));
    }

    @Test
    void readingsThatAreNoMagnetAreRefused() {
        assertRefused("1 readings of the pull; it needs from 2 to 1000, each at its own distance", 1, 90);
        assertRefused("two readings of the pull at 1.0 mm; give their mean as one", 1, 90, 2, 40, 1, 92);
        assertRefused(
                "the pull is 90.0 g at 1.0 mm and 95.0 g at 2.0 mm; it must fall with distance: measure again",
                1,
                90,
                2,
                95);
        assertRefused(
                "the pull is 90.0 g at 1.0 mm and 95.0 g at 3.0 mm; it must fall with distance: measure again",
                1,
                90,
                2,
                40,
                3,
                95);
        assertRefused(
                "the pull falls from 900.0 g at 3.0 mm to 1.0 g at 3.5 mm, faster than a magnet's does; distances are"
                        + " counted from the rails to the magnet itself: measure again",
                3,
                900,
                3.5,
                1);
        assertRefused("pull.distance_mm is -1 mm; it must be from 0 to 100 mm", -1, 90, 2, 40);
        assertRefused("pull.pull_g is 0 g; it must be from 0.01 to 3000 g", 1, 0, 2, 40);
        // First above last, and yet rising on the whole.
        assertRefused(
                "the pull is 50.0 g at 1.0 mm and 49.0 g at 5.0 mm; it must fall with distance: measure again",
                1,
                50,
                2,
                10,
                4,
                90,
                5,
                49);
    }

    @Test
    void aDistanceOutOfRangeIsRefused() {
        MagnetPull pull = MagnetPull.fit(List.of(new PullReading(1, 90), new PullReading(2, 40)));
        assertThatThrownBy(() -> pull.at(Double.NaN)).hasMessageContaining("pull.distance_mm is NaN mm");
    }

    private static void assertRefused(String message, double... pairs) {
        assertThatThrownBy(() -> {
                    List<PullReading> readings = new ArrayList<>();
                    for (int i = 0; i < pairs.length; i += 2) {
                        readings.add(new PullReading(pairs[i], pairs[i + 1]));
                    }
                    MagnetPull.fit(readings);
                })
                .as(Arrays.toString(pairs))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message);
    }
}
