package org.lapwright.core.track.closing;

import java.util.List;
import org.lapwright.core.track.PieceLayout;

/** What it takes to make the end of a layout meet its start. */
public sealed interface Closing {
    /** Nothing: the ends meet within a millionth of a millimetre. */
    record Closed() implements Closing {}

    /**
     * Some pieces changed.
     *
     * @param layout with the changes made
     * @param changes in the order of travel; what moves by rounding only is left out
     * @param norm root of the sum of the squared changes, each in millimetres of straight
     */
    record Adjusted(PieceLayout layout, List<Change> changes, double norm) implements Closing {
        /** Copies the list. */
        public Adjusted {
            changes = List.copyOf(changes);
        }
    }

    /**
     * No change of lengths, angles and radii does it.
     *
     * @param reason why
     * @param amount what is left: mm of height, degrees of heading, or mm of plan
     */
    record Impossible(Reason reason, double amount) implements Closing {}

    /** Why a layout cannot be closed by small changes. */
    enum Reason {
        /** The rises do not add up to nothing; only a rise can mend that. */
        HEIGHT,
        /** The end points so far away from the start that a turn is missing, or one is too many. */
        HEADING,
        /** The pieces there are cannot reach, within the ranges of their numbers. */
        REACH
    }
}
