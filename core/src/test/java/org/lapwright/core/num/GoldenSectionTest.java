package org.lapwright.core.num;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GoldenSectionTest {
    /** A smooth top can be told to the root of a double's precision only. */
    @Test
    void itFindsTheTopOfAParabolaAndOfAKink() {
        assertThat(GoldenSection.greatest(x -> -(x - 2) * (x - 2), 0, 5)).isCloseTo(2, within(3e-8));
        assertThat(GoldenSection.greatest(x -> -Math.abs(x - 2), 0, 5)).isCloseTo(2, within(1e-12));
        assertThat(GoldenSection.greatest(Math::sin, 0, 3, 1e-3)).isCloseTo(Math.PI / 2, within(1e-3));
    }

    @Test
    void theTopMayBeAtAnEnd() {
        assertThat(GoldenSection.greatest(x -> x, 1, 4)).isCloseTo(4, within(1e-11));
        assertThat(GoldenSection.highest(x -> x, 1, 4)).isEqualTo(4);
        assertThat(GoldenSection.highest(x -> -x, 1, 4)).isEqualTo(-1);
    }

    @Test
    void itEndsWhereNothingIsLeftBetween() {
        double from = 1e9;
        double to = Math.nextUp(from);
        assertThat(GoldenSection.greatest(x -> x, from, to)).isBetween(from, to);
        assertThat(GoldenSection.greatest(x -> x, from, from)).isEqualTo(from);
    }
}
