package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.closing.Change;
import org.lapwright.core.track.closing.Closing;
import org.lapwright.core.track.closing.Closing.Adjusted;
import org.lapwright.core.track.closing.Closing.Impossible;
import org.lapwright.core.track.closing.LeastAdjustment;

/**
 * A way to close the layout, to be had by a press.
 *
 * @param label what it does
 * @param wish the button's word
 */
public record ClosingOffer(String label, String wish) {
    /** More changes than this are told by their number and the greatest of them. */
    private static final int MOST_NAMED = 4;

    /** A gap below this is left by rounding, mm. */
    private static final double CLOSED_MM = 0.01;

    private static final double CLOSED_DEG = 0.001;

    /**
     * The ways to close a layout.
     *
     * @param offers none when it is closed, or cannot be
     * @param why why not; empty otherwise
     */
    public record Ways(List<ClosingOffer> offers, String why) {
        /** Copies the list. */
        public Ways {
            offers = List.copyOf(offers);
        }
    }

    static Ways of(PieceLayout layout) {
        double gapMm = 1000 * layout.closingGap().distanceM();
        double gapDeg = Math.toDegrees(layout.closingGap().headingRad());
        if (gapMm < CLOSED_MM && gapDeg < CLOSED_DEG) {
            return new Ways(List.of(), "");
        }
        Closing closing = LeastAdjustment.of(layout);
        if (closing instanceof Impossible impossible) {
            return new Ways(List.of(), why(impossible));
        }
        List<ClosingOffer> offers = new ArrayList<>();
        for (Adjusted alone : LeastAdjustment.alone(layout)) {
            offers.add(offer(alone));
        }
        if (closing instanceof Adjusted least) {
            ClosingOffer offer = offer(least);
            if (!offers.contains(offer)) {
                offers.add(offer);
            }
        }
        return new Ways(offers, "");
    }

    private static String why(Impossible impossible) {
        String amount = Figures.significant(Math.abs(impossible.amount()), 3);
        return switch (impossible.reason()) {
            case HEIGHT ->
                "The rises do not add up: the end lies %s mm %s the start. Change a rise; lengths cannot mend it."
                        .formatted(amount, impossible.amount() > 0 ? "above" : "below");
            case HEADING ->
                "The end points %s° to the %s of where it should: a turn is missing, or one is too many."
                        .formatted(amount, impossible.amount() > 0 ? "left" : "right");
            case REACH -> "These pieces cannot reach; one is missing, or one is too many.";
        };
    }

    private static ClosingOffer offer(Adjusted adjusted) {
        List<Change> changes = adjusted.changes();
        String wish = changes.stream()
                .map(change -> "%s:%d:%s"
                        .formatted(
                                change.quantity().name().toLowerCase(Locale.ROOT),
                                change.piece() + 1,
                                Written.rounded(change.to())))
                .collect(Collectors.joining("-", "set-", ""));
        String named = changes.stream()
                .limit(MOST_NAMED)
                .map(change -> inWords(change))
                .collect(Collectors.joining(", "));
        int more = changes.size() - MOST_NAMED;
        return new ClosingOffer("Close it: " + named + (more > 0 ? ", and %d more".formatted(more) : ""), wish);
    }

    private static String inWords(Change change) {
        String by = Figures.significant(Math.abs(change.by()), 3);
        String more = change.by() > 0 ? "more" : "less";
        return switch (change.quantity()) {
            case LENGTH ->
                "straight %d %s by %s mm".formatted(change.piece() + 1, change.by() > 0 ? "longer" : "shorter", by);
            case ANGLE -> "turn %d %s° %s".formatted(change.piece() + 1, by, more);
            case RADIUS -> "radius of turn %d %s mm %s".formatted(change.piece() + 1, by, more);
        };
    }
}
