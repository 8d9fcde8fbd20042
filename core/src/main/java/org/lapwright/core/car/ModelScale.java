package org.lapwright.core.car;

import java.util.Optional;

/** How much smaller than a full-size car a model is, as far as usual numbers tell scales apart. */
public enum ModelScale {
    /** 1/24. */
    ONE_24(24),
    /** 1/32. */
    ONE_32(32),
    /** 1/43. */
    ONE_43(43),
    /** Any other, or nobody knows. */
    OTHER(0);

    private final int divisor;

    ModelScale(int divisor) {
        this.divisor = divisor;
    }

    /** What a full-size length is divided by; 0 for {@link #OTHER}. */
    public int divisor() {
        return divisor;
    }

    /** The scale with this divisor; empty when usual numbers do not know it. */
    public static Optional<ModelScale> of(int divisor) {
        for (ModelScale scale : values()) {
            if (scale.divisor == divisor && scale != OTHER) {
                return Optional.of(scale);
            }
        }
        return Optional.empty();
    }
}
