package org.lapwright.app.web.track.editor;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they stand in a field of the form. */
final class Written {
    /** A tenth of a micrometre, or of a ten-thousandth of a degree, is finer than any track. */
    private static final int DECIMALS = 4;

    private Written() {}

    /** All digits of a number: read back it is the same. */
    static String exact(double value) {
        return text(new BigDecimal(Double.toString(value)));
    }

    /** A number with no more digits than a track is worth. */
    static String rounded(double value) {
        return text(BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN));
    }

    /** Three decimals might be taken for thousands, so there are never three. */
    private static String text(BigDecimal value) {
        BigDecimal plain = value.stripTrailingZeros();
        int decimals = Math.max(0, plain.scale());
        return plain.setScale(decimals == 3 ? 4 : decimals).toPlainString();
    }
}
