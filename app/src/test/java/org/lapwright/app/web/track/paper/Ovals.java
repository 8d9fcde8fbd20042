package org.lapwright.app.web.track.paper;

import java.util.List;
import java.util.OptionalDouble;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/** Invented ovals with two lanes, 50 mm to either side of the middle. */
final class Ovals {
    private Ovals() {}

    static Track oval(double straightMm, double radiusMm) {
        Piece straight = new Piece.Straight(straightMm, 0);
        Piece turn = new Piece.Turn(radiusMm, 180, true, 0, 0);
        return new Track(
                "Oval",
                new Surface(1, false),
                List.of(new Lane("in", 50), new Lane("out", -50)),
                new Power(12, 0.5, 0.1, List.of(0.0), OptionalDouble.empty()),
                new PieceLayout(List.of(straight, turn, straight, turn)));
    }
}
