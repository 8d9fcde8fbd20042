package org.lapwright.core.car.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.lapwright.core.units.Reading;

/** Type A evaluation and propagation against the worked examples of JCGM 100:2008. */
final class RepeatedReferenceTest {
    /** JCGM 100:2008, 4.4.3 and table 1: twenty temperatures, mean 100.145 °C, standard deviation of the mean 0.333 °C. */
    @Test
    void twentyTemperatures() {
        List<Double> readings = Stream.of(
                        96.90, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68,
                        100.95, 101.11, 101.20, 101.57, 101.84, 102.36, 102.72)
                .toList();
        Reading reading = Repeated.of(readings, 0);
        assertThat(reading.value()).isCloseTo(100.145, within(5e-4));
        assertThat(reading.plusMinus()).isCloseTo(0.333, within(5e-4));
        assertThat(Repeated.of(readings, 0.444).plusMinus()).isCloseTo(0.555, within(1e-3));
    }

    /** JCGM 100:2008, 5.1.6, equation 12: for a product of powers the relative variances add up times the powers squared. */
    @Test
    void aProductOfPowers() {
        Reading mass = new Reading(14, 0.3);
        Reading diameter = new Reading(12, 0.05);
        Reading inertia = Derived.of(List.of(mass, diameter), at -> at[0] * at[1] * at[1] / 8);
        double relative = Math.hypot(0.3 / 14, 2 * 0.05 / 12);
        assertThat(inertia.value()).isCloseTo(252, within(1e-12));
        assertThat(inertia.plusMinus()).isCloseTo(252 * relative, within(1e-6));
    }

    @Test
    void aSingleReadingHasTheInstrumentsDoubt() {
        assertThat(Repeated.of(List.of(20.0), 0.03)).isEqualTo(new Reading(20, 0.03));
        assertThatThrownBy(() -> Repeated.of(List.of(), 0.03)).hasMessageContaining("at least one reading");
    }
}
