package org.lapwright.app.web.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ScaleTest {
    @Test
    void endsGoToEnds() {
        Scale scale = new Scale(6, 7, 240, 40);
        assertThat(scale.at(6)).isEqualTo(240);
        assertThat(scale.at(7)).isEqualTo(40);
        assertThat(scale.at(6.5)).isEqualTo(140);
        assertThat(scale.clamped(99)).isEqualTo(40);
    }

    @Test
    void ticksAreRound() {
        assertThat(new Scale(-0.23, 0.23, 0, 100).ticks(4)).containsExactly(-0.2, -0.1, 0.0, 0.1, 0.2);
        assertThat(new Scale(6.31, 6.79, 0, 100).ticks(4))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
                .containsExactly(6.4, 6.5, 6.6, 6.7);
        assertThat(Scale.decimals(0.05)).isEqualTo(2);
        assertThat(Scale.decimals(0.1)).isEqualTo(1);
        assertThat(Scale.decimals(20)).isZero();
    }

    @Test
    void placesAreWrittenShortAndWithAPointInEveryCountry() {
        assertThat(Scale.percent(12.5)).isEqualTo("12.5%");
        assertThat(Scale.percent(100)).isEqualTo("100%");
        assertThat(Scale.percent(20)).isEqualTo("20%");
        assertThat(Scale.pixels(33.333)).isEqualTo("33.33");
    }
}
