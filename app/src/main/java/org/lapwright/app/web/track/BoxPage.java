package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.track.ClosingGap;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Track;
import org.lapwright.core.track.kit.PieceBox;

/**
 * Tracks made of pieces, side by side: what each looks like, and how many pieces of each size it takes out of the box.
 *
 * @param shell around it
 * @param layouts one for each track
 * @param rows one for each size of piece
 */
public record BoxPage(Shell shell, List<Layout> layouts, List<Row> rows) {
    /** Copies the lists. */
    public BoxPage {
        layouts = List.copyOf(layouts);
        rows = List.copyOf(rows);
    }

    /**
     * One track.
     *
     * @param name what it is called
     * @param address its page
     * @param says how long it is, and whether it closes
     * @param map from above
     */
    public record Layout(String name, String address, String says, LaneMap map) {
        static Layout of(Track track) {
            ClosingGap gap = track.layout().closingGap();
            return new Layout(
                    track.name(),
                    TrackChoice.page(track.name()),
                    "lane %s %s m, %d pieces%s"
                            .formatted(
                                    track.lanes().get(0).name(),
                                    Figures.fixed(track.lengthM(track.lanes().get(0)), 2),
                                    pieces(track).size(),
                                    gap.isOpen() ? ", does not close" : ""),
                    LaneMap.plain(track, track.lanes().get(0)));
        }
    }

    /**
     * One size of piece.
     *
     * @param piece what it is
     * @param counts how many each track takes, in the order of the tracks
     * @param most how many the box must hold to lay any one of them
     * @param owned how many the owner has; empty when not counted
     */
    public record Row(String piece, List<Integer> counts, int most, OptionalInt owned) {
        /** Copies the list. */
        public Row {
            counts = List.copyOf(counts);
        }

        /** How many the owner has, and whether that is too few for one of the tracks. */
        public String has() {
            return owned.isEmpty()
                    ? "–"
                    : owned.getAsInt() + (owned.getAsInt() < most ? ", " + (most - owned.getAsInt()) + " short" : "");
        }
    }

    /** The page of tracks; those that are drawn lines are left out. */
    public static BoxPage of(Shell shell, List<Track> tracks, PieceBox box) {
        List<Track> laid = tracks.stream()
                .filter(track -> track.layout() instanceof PieceLayout)
                .toList();
        Map<String, int[]> counts = new TreeMap<>();
        Map<String, OptionalInt> owned = new HashMap<>();
        for (int i = 0; i < laid.size(); i++) {
            for (Piece piece : pieces(laid.get(i))) {
                counts.computeIfAbsent(size(piece), size -> new int[laid.size()])[i]++;
                owned.put(
                        size(piece), box.kindOf(piece).map(kind -> kind.owned()).orElse(OptionalInt.empty()));
            }
        }
        return new BoxPage(shell, laid.stream().map(Layout::of).toList(), rows(counts, owned));
    }

    private static List<Row> rows(Map<String, int[]> counts, Map<String, OptionalInt> owned) {
        List<Row> rows = new ArrayList<>();
        for (Map.Entry<String, int[]> each : new LinkedHashMap<>(counts).entrySet()) {
            List<Integer> of = Arrays.stream(each.getValue()).boxed().toList();
            rows.add(new Row(
                    each.getKey(), of, Collections.max(of), owned.getOrDefault(each.getKey(), OptionalInt.empty())));
        }
        return rows;
    }

    /** A turn lies to the left or to the right: it is one piece. */
    private static String size(Piece piece) {
        if (piece instanceof Piece.Turn turn) {
            return "Turn, radius %s mm, %s°%s"
                    .formatted(
                            Figures.significant(turn.radiusMm(), 5),
                            Figures.significant(turn.angleDeg(), 5),
                            turn.bankDeg() == 0 ? "" : ", banked " + Figures.significant(turn.bankDeg(), 3) + "°");
        }
        return "Straight, %s mm".formatted(Figures.significant(((Piece.Straight) piece).lengthMm(), 5));
    }

    private static List<Piece> pieces(Track track) {
        return ((PieceLayout) track.layout()).pieces();
    }
}
