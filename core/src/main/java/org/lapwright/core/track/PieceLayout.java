package org.lapwright.core.track;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A layout of straights and turns, laid one after the other from the timing line.
 *
 * @param pieces in the direction of travel
 */
public record PieceLayout(List<Piece> pieces) implements Layout {
    private static final int MOST_PIECES = 2000;
    private static final int FEWEST_CELLS = 2;

    /** Checks that there is something to drive on. */
    public PieceLayout {
        pieces = List.copyOf(pieces);
        if (pieces.isEmpty() || pieces.size() > MOST_PIECES) {
            throw new IllegalArgumentException(
                    "pieces has %d entries; it needs from 1 to %d".formatted(pieces.size(), MOST_PIECES));
        }
    }

    @Override
    public double lengthM(LanePath lane) {
        return stretches(lane).stream().mapToDouble(Along::lengthM).sum();
    }

    @Override
    public List<Cell> cut(LanePath lane, int cells) {
        List<Along> stretches = stretches(lane);
        double lap = stretches.stream().mapToDouble(Along::lengthM).sum();
        List<Cell> row = new ArrayList<>();
        Along before = stretches.get(stretches.size() - 1);
        for (Along stretch : stretches) {
            boolean joint = stretch.jumpsAfter(before);
            for (Section cell : stretch.cells(parts(stretch, cells, lap))) {
                row.add(new Cell(cell, joint, stretch.piece.extras()));
                joint = false;
            }
            before = stretch;
        }
        return row;
    }

    private static int parts(Along stretch, int cells, double lap) {
        return Math.max(FEWEST_CELLS, (int) Math.round(cells * stretch.lengthM() / lap));
    }

    @Override
    public ClosingGap closingGap() {
        PlanPose end = new PlanPose(0, 0, 0, 0);
        for (Piece piece : pieces) {
            end = end.after(piece.along(0));
        }
        double distance = Math.sqrt(end.xM() * end.xM() + end.yM() * end.yM() + end.zM() * end.zM());
        return new ClosingGap(distance, Math.abs(Math.IEEEremainder(end.headingRad(), 2 * Math.PI)));
    }

    @Override
    public List<PlanPose> course(LanePath lane, int cells) {
        List<Along> stretches = stretches(lane);
        double lap = stretches.stream().mapToDouble(Along::lengthM).sum();
        List<PlanPose> poses = new ArrayList<>();
        PlanPose centre = new PlanPose(0, 0, 0, 0);
        poses.add(centre.leftBy(lane.offsetM()));
        for (Along stretch : stretches) {
            stretch.lay(centre, parts(stretch, cells, lap), poses);
            centre = centre.after(stretch.piece.along(0));
        }
        return poses;
    }

    /** How far a lane is left of the centre line at the end of the lap, m. */
    double endOffsetM(LanePath lane) {
        double offset = lane.offsetM();
        for (Piece piece : pieces) {
            offset = piece.extras().endM(lane, offset);
        }
        return offset;
    }

    private List<Along> stretches(LanePath lane) {
        List<Along> stretches = new ArrayList<>(pieces.size());
        double offset = lane.offsetM();
        for (int i = 0; i < pieces.size(); i++) {
            double end = pieces.get(i).extras().endM(lane, offset);
            try {
                stretches.add(new Along(pieces.get(i), offset, end));
            } catch (IllegalArgumentException unfit) {
                throw new IllegalArgumentException("pieces[" + i + "]: " + unfit.getMessage(), unfit);
            }
            offset = end;
        }
        return stretches;
    }

    /** A piece along a lane. */
    private static final class Along {
        private final Piece piece;
        private final Section near;
        private final Optional<LaneShift> shift;
        private final double lengthM;

        Along(Piece piece, double fromM, double toM) {
            this.piece = piece;
            near = piece.along(fromM);
            shift = fromM == toM ? Optional.empty() : Optional.of(moving(piece, fromM, toM));
            lengthM = shift.map(LaneShift::lengthM).orElse(near.lengthM());
        }

        private static LaneShift moving(Piece piece, double fromM, double toM) {
            // Both ends must fit inside a turn; between them the lane lies between.
            if (piece.along(toM).lengthM() > 0) {
                return new LaneShift(piece.along(0), fromM, toM);
            }
            throw new IllegalArgumentException("the lane has no length");
        }

        double lengthM() {
            return lengthM;
        }

        List<Section> cells(int parts) {
            return shift.map(moving -> moving.cells(parts))
                    .orElseGet(() -> Collections.nCopies(
                            parts,
                            new Section(near.lengthM() / parts, near.curvature(), near.bankRad(), near.gradeSine())));
        }

        boolean jumpsAfter(Along before) {
            return near.curvature() != before.near.curvature()
                    || near.bankRad() != before.near.bankRad()
                    || near.gradeSine() != before.near.gradeSine()
                    || !piece.extras().gripFactor().equals(before.piece.extras().gripFactor())
                    || !piece.extras().magnetic().equals(before.piece.extras().magnetic());
        }

        /** Adds the places at the far edges of the cells. */
        void lay(PlanPose centre, int parts, List<PlanPose> poses) {
            if (shift.isEmpty()) {
                PlanPose here = poses.get(poses.size() - 1);
                for (Section cell : cells(parts)) {
                    here = here.after(cell);
                    poses.add(here);
                }
                return;
            }
            LaneShift moving = shift.get();
            Section whole = piece.along(0);
            int count = moving.cells(parts).size();
            for (int i = 1; i <= count; i++) {
                double u = (double) i / count;
                PlanPose beside = centre.after(
                                new Section(u * whole.lengthM(), whole.curvature(), whole.bankRad(), whole.gradeSine()))
                        .leftBy(moving.offsetM(u));
                poses.add(new PlanPose(beside.xM(), beside.yM(), beside.zM(), beside.headingRad() + moving.aside(u)));
            }
        }
    }
}
