package org.lapwright.app.files.drawing.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapwright.app.files.drawing.Drawing;

/**
 * The closed lines of a drawing.
 *
 * @param loops the longest first
 * @param remarks sentences: gaps that were closed, lines that stay open and by how much, pieces drawn twice
 */
public record Loops(List<Loop> loops, List<String> remarks) {
    /** How far strokes may be from a drawn curve, mm. */
    public static final double FLAT_MM = 0.01;

    private static final int MOST_SAID = 8;

    /** Copies the lists. */
    public Loops {
        loops = List.copyOf(loops);
        remarks = List.copyOf(remarks);
    }

    /**
     * Finds the closed lines.
     *
     * @param drawing the drawing
     * @param mmPerUnit what its unit is
     * @param joinMm how far two ends may be apart and still meet
     * @param flatMm how far strokes may be from a curve
     * @throws org.lapwright.app.files.drawing.Trouble if there is too much to follow
     */
    public static Loops find(Drawing drawing, double mmPerUnit, double joinMm, double flatMm) {
        List<Polyline> lines = new ArrayList<>();
        Set<List<Long>> seen = new HashSet<>();
        int twice = 0;
        for (Polyline line : Flattening.of(drawing, mmPerUnit, flatMm)) {
            if (seen.add(trace(line))) {
                lines.add(line);
            } else {
                twice++;
            }
        }
        Joining joining = new Joining(lines, joinMm);
        List<Loop> loops = new ArrayList<>(joining.loops());
        loops.sort(Comparator.comparingDouble((Loop loop) -> -loop.lengthMm()));
        List<String> remarks = new ArrayList<>(joining.remarks());
        remarks.addAll(said(joining.open()));
        if (twice > 0) {
            remarks.add("%d pieces are drawn twice; one of each was taken.".formatted(twice));
        }
        return new Loops(loops, remarks);
    }

    /** The loop with this number. */
    public Optional<Loop> numbered(int number) {
        return loops.stream().filter(loop -> loop.number() == number).findFirst();
    }

    /** Where a line goes, to a thousandth of a millimetre, the same from either end. */
    private static List<Long> trace(Polyline line) {
        Spot a = line.first();
        Spot b = line.last();
        boolean forward = a.x() < b.x() || a.x() == b.x() && a.y() <= b.y();
        List<Long> trace = new ArrayList<>();
        for (Spot spot : forward ? line.spots() : line.reversed().spots()) {
            trace.add(Math.round(1000 * spot.x()));
            trace.add(Math.round(1000 * spot.y()));
        }
        return trace;
    }

    private static List<String> said(List<Polyline> open) {
        List<Polyline> longest = new ArrayList<>(open);
        longest.sort(Comparator.comparingDouble((Polyline line) -> -line.length()));
        List<String> sentences = new ArrayList<>();
        for (Polyline line : longest.subList(0, Math.min(MOST_SAID, longest.size()))) {
            sentences.add("A line %d mm long stays open: it goes from %s to %s, %s mm apart."
                    .formatted(
                            Math.round(line.length()),
                            line.first().said(),
                            line.last().said(),
                            tenths(line.first().distance(line.last()))));
        }
        if (longest.size() > MOST_SAID) {
            sentences.add("%d shorter lines stay open too.".formatted(longest.size() - MOST_SAID));
        }
        return sentences;
    }

    static String tenths(double mm) {
        return String.format(java.util.Locale.ROOT, "%.1f", mm);
    }
}
