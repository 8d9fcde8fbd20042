package org.lapwright.core.track;

import java.util.ArrayList;
import java.util.List;

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
    public double lengthM(double offsetM) {
        return sections(offsetM).stream().mapToDouble(Section::lengthM).sum();
    }

    @Override
    public List<Cell> cut(double offsetM, int cells) {
        List<Section> sections = sections(offsetM);
        double lap = sections.stream().mapToDouble(Section::lengthM).sum();
        List<Cell> row = new ArrayList<>();
        Section before = sections.get(sections.size() - 1);
        for (Section section : sections) {
            int parts = Math.max(FEWEST_CELLS, (int) Math.round(cells * section.lengthM() / lap));
            Section cell =
                    new Section(section.lengthM() / parts, section.curvature(), section.bankRad(), section.gradeSine());
            boolean joint = section.curvature() != before.curvature()
                    || section.bankRad() != before.bankRad()
                    || section.gradeSine() != before.gradeSine();
            for (int i = 0; i < parts; i++) {
                row.add(new Cell(cell, joint && i == 0));
            }
            before = section;
        }
        return row;
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
    public List<PlanPose> course(double offsetM, int cells) {
        List<PlanPose> poses = new ArrayList<>();
        PlanPose here = new PlanPose(0, offsetM, 0, 0);
        poses.add(here);
        for (Cell cell : cut(offsetM, cells)) {
            here = here.after(cell.section());
            poses.add(here);
        }
        return poses;
    }

    private List<Section> sections(double offsetM) {
        List<Section> sections = new ArrayList<>(pieces.size());
        for (int i = 0; i < pieces.size(); i++) {
            try {
                sections.add(pieces.get(i).along(offsetM));
            } catch (IllegalArgumentException unfit) {
                throw new IllegalArgumentException("pieces[" + i + "]: " + unfit.getMessage(), unfit);
            }
        }
        return sections;
    }
}
