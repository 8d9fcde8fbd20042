package org.lapwright.core.track;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/**
 * One slot.
 *
 * @param name what it is called, most often a colour
 * @param offsetMm left of the centre line, mm, −1,000 to 1,000
 * @param painted the colour it is painted in, where its name does not say so already
 */
public record Lane(String name, double offsetMm, Optional<Colour> painted) {
    /** Offset of a lane. */
    public static final NumberKey OFFSET = new NumberKey("lanes", "offset_mm", -1000, 1000);

    private static final int LONGEST_NAME = 40;

    /** Checks name and offset. */
    public Lane {
        name = Check.text(name, LONGEST_NAME, "lanes.name");
        offsetMm = OFFSET.check(offsetMm);
    }

    /** One whose colour is what its name says, if it says one. */
    public Lane(String name, double offsetMm) {
        this(name, offsetMm, Optional.empty());
    }

    /** Colours that lanes are painted in. */
    public enum Colour {
        WHITE,
        GREY,
        BLACK,
        RED,
        ORANGE,
        YELLOW,
        GREEN,
        BLUE,
        VIOLET,
        BROWN;

        /** Its word. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The colour of a word, whatever its case. */
        public static Optional<Colour> of(String word) {
            return Arrays.stream(values())
                    .filter(colour -> colour.word().equalsIgnoreCase(word.strip()))
                    .findFirst();
        }

        /** The colour of a word. */
        public static Colour named(String word) {
            return of(word).orElseThrow(() -> new IllegalArgumentException("colour is '%s'; it must be one of %s"
                    .formatted(word, Arrays.stream(values()).map(Colour::word).collect(Collectors.joining(", ")))));
        }
    }

    /** As painted, else as its name says, if it says one. */
    public Optional<Colour> colour() {
        return painted.isPresent() ? painted : Colour.of(name);
    }

    /** Offset in metres. */
    public double offsetM() {
        return offsetMm / 1000;
    }
}
