package org.lapwright.app.usecase.physics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

class CrossingsInWordsTest {
    /** Three quarters of a circle of 0.4 m each way; the straights between cross at right angles. */
    private static Track figureOfEight(double riseMm) {
        return new Track(
                "eight",
                new Surface(1, false),
                List.of(new Lane("one", 0)),
                new Power(12, 0.5, 0.1, List.of(0.0), OptionalDouble.empty()),
                new PieceLayout(List.of(
                        new Piece.Straight(400, 0),
                        new Piece.Turn(400, 270, true, 0, 0),
                        new Piece.Straight(400, riseMm),
                        new Piece.Straight(400, -riseMm),
                        new Piece.Turn(400, 270, false, 0, 0),
                        new Piece.Straight(400, 0))));
    }

    @Test
    void aBridgeIsSaidWithItsHeight() {
        assertThat(CrossingsInWords.of(figureOfEight(90)))
                .singleElement()
                .asString()
                .contains("passes over itself", "mm higher.")
                .doesNotContain("need some 70 mm");
        assertThat(CrossingsInWords.of(figureOfEight(40)))
                .singleElement()
                .asString()
                .contains("need some 70 mm");
    }

    @Test
    void aCrossingOnTheLevelIsAWarning() {
        assertThat(CrossingsInWords.of(figureOfEight(0)))
                .singleElement()
                .asString()
                .contains("cars can meet there");
    }
}
