package org.lapwright.app.files.garage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.Problem;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.kit.PieceBox;
import org.lapwright.core.track.kit.PieceKind;

class PieceBoxFileTest {
    @Test
    void aListGoesRoundUnchanged() {
        PieceBox box = new PieceBox(List.of(
                new PieceKind("long one", new Piece.Straight(349.5, 0), OptionalInt.of(12)),
                new PieceKind("", new Piece.Turn(350, 22.5, true, -8, 0), OptionalInt.of(0)),
                PieceKind.turn(450, 60)));
        assertThat(PieceBoxFile.read(new PieceBoxFile(box).text()).accepted()).contains(new PieceBoxFile(box));
        assertThat(PieceBoxFile.read(new PieceBoxFile(new PieceBox(List.of())).text())
                        .accepted())
                .contains(new PieceBoxFile(new PieceBox(List.of())));
    }

    @Test
    void allThatIsWrongIsSaidAtOnce() {
        FileReading<PieceBoxFile> reading = PieceBoxFile.read(
                "{\"format\":\"lapwright-pieces/1\",\"pieces\":["
                        + "{\"straight_mm\":0},{\"radius_mm\":350},{\"straight_mm\":10,\"owned\":-2},{\"name\":7,\"straight_mm\":1}]}");
        assertThat(reading.accepted()).isEmpty();
        assertThat(reading.problems().stream().map(Problem::sentence).toList().toString())
                .contains("straight_mm", "angle_deg", "owned", "name");
        assertThat(PieceBoxFile.read("{\"format\":\"lapwright-track/1\"}").accepted())
                .isEmpty();
        assertThat(PieceBoxFile.read("").problems()).hasSize(1);
    }
}
