package org.lapwright.app.files.drawing.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.lapwright.app.files.drawing.Trouble;

/**
 * Joins pieces of line whose ends meet. The nearest ends are joined first, each end once; a gap is closed at its middle.
 * End {@code 2 k} is the beginning of piece {@code k}, end {@code 2 k + 1} its end.
 */
final class Joining {
    private static final int MOST_PAIRS = 500_000;

    /** A piece that is not several gaps long is not closed on itself. */
    private static final double SHORTEST_IN_GAPS = 4;

    private final List<Polyline> pieces = new ArrayList<>();
    private final List<Loop> loops = new ArrayList<>();
    private final List<Polyline> open = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final double gapMm;
    private final int[] mate;

    Joining(List<Polyline> lines, double gapMm) {
        this.gapMm = Math.max(gapMm, Polyline.SAME);
        for (Polyline line : lines) {
            if (line.closed()) {
                close(line.spots(), 1);
            } else {
                pieces.add(line);
            }
        }
        mate = new int[2 * pieces.size()];
        java.util.Arrays.fill(mate, -1);
        pairUp();
        walk();
    }

    List<Loop> loops() {
        return loops;
    }

    List<Polyline> open() {
        return open;
    }

    List<String> remarks() {
        return remarks;
    }

    private record Pair(int a, int b, double gap) {}

    private record Square(long x, long y) {}

    private Spot spot(int end) {
        Polyline piece = pieces.get(end / 2);
        return end % 2 == 0 ? piece.first() : piece.last();
    }

    private void pairUp() {
        List<Pair> near = near();
        near.sort(Comparator.comparingDouble((Pair pair) -> pair.gap()));
        int[] meeting = new int[mate.length];
        int closed = 0;
        Pair widest = new Pair(0, 0, 0);
        for (Pair pair : near) {
            meeting[pair.a()]++;
            meeting[pair.b()]++;
            if (mate[pair.a()] < 0 && mate[pair.b()] < 0) {
                mate[pair.a()] = pair.b();
                mate[pair.b()] = pair.a();
                closed += pair.gap() > 100 * Polyline.SAME ? 1 : 0;
                widest = pair.gap() > widest.gap() ? pair : widest;
            }
        }
        if (closed > 0) {
            remarks.add("Gaps closed: %d, the widest %s mm at %s."
                    .formatted(
                            closed, hundredths(widest.gap()), spot(widest.a()).said()));
        }
        for (int end = 0; end < meeting.length; end++) {
            if (meeting[end] > 1) {
                remarks.add(
                        "More than two lines meet at %s; those whose ends lie nearest were joined. Leave out what is not the"
                                        .formatted(spot(end).said())
                                + " centre line.");
                return;
            }
        }
    }

    private static String hundredths(double mm) {
        return String.format(java.util.Locale.ROOT, "%.2f", mm);
    }

    /** All pairs of ends that meet, by squares as wide as the gap. */
    private List<Pair> near() {
        Map<Square, List<Integer>> squares = new HashMap<>();
        List<Pair> near = new ArrayList<>();
        for (int end = 0; end < mate.length; end++) {
            long column = (long) Math.floor(spot(end).x() / gapMm);
            long row = (long) Math.floor(spot(end).y() / gapMm);
            for (int i = 0; i < 9; i++) {
                for (int other : squares.getOrDefault(new Square(column + i / 3 - 1, row + i % 3 - 1), List.of())) {
                    double gap = spot(end).distance(spot(other));
                    if (gap <= gapMm && mayMeet(end, other)) {
                        near.add(new Pair(other, end, gap));
                    }
                }
            }
            if (near.size() > MOST_PAIRS) {
                throw Trouble.ofWhole(
                        "Too many lines end at %s".formatted(spot(end).said()),
                        "Save the centre line alone, or let ends meet within less");
            }
            squares.computeIfAbsent(new Square(column, row), square -> new ArrayList<>())
                    .add(end);
        }
        return near;
    }

    private boolean mayMeet(int end, int other) {
        return end / 2 != other / 2 || pieces.get(end / 2).length() > SHORTEST_IN_GAPS * gapMm;
    }

    private void walk() {
        boolean[] used = new boolean[pieces.size()];
        for (int end = 0; end < mate.length; end++) {
            if (mate[end] < 0 && !used[end / 2]) {
                follow(end, used);
            }
        }
        for (int piece = 0; piece < used.length; piece++) {
            if (!used[piece]) {
                follow(2 * piece, used);
            }
        }
    }

    /** From an end through its piece to the next, until an end is free or the piece was there before. */
    private void follow(int from, boolean[] used) {
        List<Spot> spots = new ArrayList<>();
        int count = 0;
        int end = from;
        while (end >= 0 && !used[end / 2]) {
            used[end / 2] = true;
            count++;
            add(spots, end % 2 == 0 ? pieces.get(end / 2) : pieces.get(end / 2).reversed());
            end = mate[end ^ 1];
        }
        if (end < 0) {
            open.add(new Polyline(spots, false));
            return;
        }
        int last = spots.size() - 1;
        spots.set(0, spots.get(0).middle(spots.get(last)));
        spots.remove(last);
        close(spots, count);
    }

    private static void add(List<Spot> spots, Polyline piece) {
        if (spots.isEmpty()) {
            spots.addAll(piece.spots());
            return;
        }
        int last = spots.size() - 1;
        spots.set(last, spots.get(last).middle(piece.first()));
        spots.addAll(piece.spots().subList(1, piece.spots().size()));
    }

    private void close(List<Spot> spots, int count) {
        Polyline line = new Polyline(spots, true);
        if (line.spots().size() > 2) {
            loops.add(new Loop(loops.size() + 1, line.spots(), count));
        }
    }
}
