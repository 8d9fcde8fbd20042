package org.lapwright.app.web.view;

import org.lapwright.app.web.compare.Comparison.BoxReading;
import org.lapwright.core.trial.session.Side;

/**
 * One box on the page.
 *
 * @param number its number in the order driven, from 1
 * @param side before or after
 * @param text as pasted
 * @param hasChoice whether the racer chooses its side
 * @param preview what was read in it
 */
public record BoxView(int number, Side side, String text, boolean hasChoice, PreviewView preview) {
    static BoxView of(int number, BoxReading reading, boolean hasChoice) {
        return new BoxView(number, reading.box().side(), reading.box().text(), hasChoice, PreviewView.of(reading));
    }

    /** What stands above it. */
    public String title() {
        String name = name(side);
        return hasChoice ? "Run " + number : name;
    }

    /** A side as a heading. */
    public static String name(Side side) {
        return side == Side.BEFORE ? "Before" : "After";
    }
}
