package org.lapwright.core.track.closing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LanePath;
import org.lapwright.core.track.Piece.Straight;
import org.lapwright.core.track.Piece.Turn;
import org.lapwright.core.track.PieceLayout;

/** Closed forms of a stadium and of a figure of eight. */
class TapeScaleTest {
    private static final PieceLayout STADIUM = new PieceLayout(List.of(
            new Straight(1000, 0),
            new Turn(400, 180, true, 5, 0),
            new Straight(1000, 0),
            new Turn(400, 180, true, 0, 0)));

    /** A lane 50 mm inside measures 2000 f + 2π (400 f − 50). */
    @Test
    void aLaneOfAStadiumGetsItsLength() {
        Lane inner = new Lane("inner", 50);
        double tape = 2000 * 1.1 + 2 * Math.PI * (400 * 1.1 - 50);
        double factor = TapeScale.factor(STADIUM, LanePath.beside(inner.offsetM()), tape);
        assertThat(factor).isCloseTo(1.1, within(1e-12));
        PieceLayout scaled = (PieceLayout) TapeScale.scaled(STADIUM, factor);
        assertThat(1000 * scaled.lengthM(LanePath.beside(inner.offsetM()))).isCloseTo(tape, within(1e-9));
        assertThat(scaled.pieces().get(1)).isEqualTo(new Turn(400 * factor, 180, true, 5, 0));
        assertThat(scaled.closingGap().distanceM()).isLessThan(1e-12);
    }

    /** What turns as much left as right has lanes of one length, whatever their offset. */
    @Test
    void anEightScalesByThePlainRatio() {
        PieceLayout eight = new PieceLayout(List.of(
                new Straight(600, 0),
                new Turn(300, 270, true, 0, 0),
                new Straight(600, 0),
                new Turn(300, 270, false, 0, 0)));
        double centre = 1200 + 3 * Math.PI * 300;
        assertThat(TapeScale.factor(eight, LanePath.beside(-60 / 1000.0), 2 * centre))
                .isCloseTo(2, within(1e-12));
    }

    @Test
    void whatCannotBeIsNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TapeScale.factor(STADIUM, LanePath.beside(-300 / 1000.0), 1000))
                .withMessage("the lane is longer than 1000 mm however small the track");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TapeScale.factor(STADIUM, LanePath.beside(0 / 1000.0), 5))
                .withMessageContaining("tape_mm is 5 mm; it must be from 100");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TapeScale.scaled(STADIUM, 60))
                .withMessageContaining("pieces[0]: pieces.straight_mm is 60000 mm");
    }
}
