package org.lapwright.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.lapwright.core.units.Interval;

class FiguresTest {
    /** SI Brochure, 9th edition, 5.4.3: a space between number and unit symbol; 5.4.4: the decimal marker. */
    @Test
    void unitsStandAfterASpace() {
        assertThat(Figures.seconds(6.2141)).isEqualTo("6.214 s");
        assertThat(Figures.percent(0.003)).isEqualTo("0.3 %");
        assertThat(Figures.percent(0.05)).isEqualTo("5 %");
    }

    @Test
    void zeroHasNoSign() {
        assertThat(Figures.fixed(-0.0004, 3)).isEqualTo("0.000");
        assertThat(Figures.signed(0.0004, 3)).isEqualTo("0.000");
        assertThat(Figures.fixed(-0.0006, 3)).isEqualTo("−0.001");
        assertThat(Figures.signed(0.07, 2)).isEqualTo("+0.07");
        assertThat(Figures.significant(-0.0, 2)).isEqualTo("0");
    }

    @Test
    void significantDigitsNeedNoExponent() {
        assertThat(Figures.significant(1234567, 2)).isEqualTo("1200000");
        assertThat(Figures.significant(0.000123456, 3)).isEqualTo("0.000123");
        assertThat(Figures.significant(-20, 2)).isEqualTo("−20");
        assertThat(Figures.significant(Double.POSITIVE_INFINITY, 2)).isEqualTo("∞");
    }

    @Test
    void countsSpeakEnglish() {
        assertThat(Figures.laps(1)).isEqualTo("1 lap");
        assertThat(Figures.laps(0)).isEqualTo("0 laps");
        assertThat(Figures.laps(12_345)).isEqualTo("12,345 laps");
    }

    @Test
    void anIntervalGetsTheDecimalsThatTellItsEnds() {
        assertThat(Figures.decimals(new Interval(-0.12, -0.02))).isEqualTo(2);
        assertThat(Figures.decimals(new Interval(-0.12, -0.004))).isEqualTo(3);
        assertThat(Figures.decimals(new Interval(0.021, 0.024))).isEqualTo(3);
        assertThat(Figures.decimals(new Interval(Double.NEGATIVE_INFINITY, 0.2)))
                .isEqualTo(2);
    }
}
