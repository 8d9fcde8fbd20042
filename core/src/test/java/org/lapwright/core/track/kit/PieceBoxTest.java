package org.lapwright.core.track.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.lapwright.core.track.Piece;

class PieceBoxTest {
    private static PieceKind counted(Piece piece, int owned) {
        return new PieceKind("", piece, OptionalInt.of(owned));
    }

    @Test
    void aTurnIsTheSamePieceEitherWayAndOnASlope() {
        PieceKind kind = new PieceKind(" long ", new Piece.Turn(350, 45, false, 12, 30), OptionalInt.empty());
        assertThat(kind.name()).isEqualTo("long");
        assertThat(kind.inWords()).isEqualTo("turn, radius 350 mm, 45°, banked 12°");
        assertThat(kind.holds(new Piece.Turn(350, 45, true, 12, -20))).isTrue();
        assertThat(kind.holds(new Piece.Turn(350, 45, true, 0, 0))).isFalse();
        assertThat(kind.holds(new Piece.Straight(350, 0))).isFalse();
        assertThat(PieceKind.straight(350).holds(new Piece.Straight(350, 40))).isTrue();
    }

    @Test
    void onlyCountedKindsRunShort() {
        PieceBox box = new PieceBox(List.of(
                counted(new Piece.Straight(350, 0), 3),
                counted(new Piece.Turn(350, 90, true, 0, 0), 4),
                PieceKind.straight(175)));
        Piece straight = new Piece.Straight(350, 10);
        Piece left = new Piece.Turn(350, 90, true, 0, 0);
        Piece right = new Piece.Turn(350, 90, false, 0, 0);
        Piece half = new Piece.Straight(175, 0);
        assertThat(box.shortages(List.of(straight, straight, straight, left, left, right, right, half, half)))
                .isEmpty();
        assertThat(box.shortages(List.of(straight, left, right, left, right, left, straight)))
                .containsExactly(new PieceBox.Shortage(box.kinds().get(1), 5));
        assertThat(box.kindOf(right)).contains(box.kinds().get(1));
        assertThat(box.kindOf(new Piece.Straight(10, 0))).isEmpty();
    }

    @Test
    void whatCannotBeIsSaid() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PieceBox(List.of(
                        PieceKind.straight(350),
                        PieceKind.turn(350, 45),
                        counted(new Piece.Turn(350, 45, false, 0, 0), 2))))
                .withMessage("turn, radius 350 mm, 45° is there twice, as number 2 and number 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> counted(new Piece.Straight(350, 0), -1))
                .withMessageContaining("owned");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PieceKind("x".repeat(41), new Piece.Straight(350, 0), OptionalInt.empty()))
                .withMessageContaining("41 characters");
    }
}
