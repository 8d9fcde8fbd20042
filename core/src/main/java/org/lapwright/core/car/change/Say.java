package org.lapwright.core.car.change;

import java.util.Locale;
import org.lapwright.core.units.Reading;

/** Numbers in the sentences of changes: as few digits as tell them apart on a bench. */
final class Say {
    private Say() {}

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        return text.equals("-0") ? "0" : text.replace('-', '\u2212');
    }

    static String number(Reading reading) {
        return number(reading.value());
    }

    /** Where a piece sits, as {@code 20 mm ahead of the axle, 12 mm left}. */
    static String place(Reading x, Reading y) {
        double ahead = x.value();
        double left = y.value();
        String along = ahead == 0
                ? "over the axle"
                : number(Math.abs(ahead)) + " mm " + (ahead > 0 ? "ahead of" : "behind") + " the axle";
        String across = left == 0 ? "" : ", " + number(Math.abs(left)) + " mm " + (left > 0 ? "left" : "right");
        return along + across;
    }

    static String named(String name) {
        return name.isEmpty() ? "" : " “" + name + "”";
    }
}
