package org.lapwright.core.advice;

import java.util.List;
import java.util.OptionalDouble;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/** An invented oval with two lanes on which mostly the tyres are the limit. */
final class SampleTrack {
    static final Track OVAL = new Track(
            "loop",
            new Surface(1, true),
            List.of(new Lane("left", 50), new Lane("right", -50)),
            new Power(12, 0.6, 0.08, List.of(0.0), OptionalDouble.of(0.2)),
            new PieceLayout(List.of(
                    new Piece.Straight(1500, 0),
                    new Piece.Turn(300, 180, true, 0, 0),
                    new Piece.Straight(1500, 0),
                    new Piece.Turn(300, 180, true, 0, 0))));

    private SampleTrack() {}
}
