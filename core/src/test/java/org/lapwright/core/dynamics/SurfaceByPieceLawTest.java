package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.SampleCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceExtras;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

/** Surfaces that change from piece to piece. */
final class SurfaceByPieceLawTest {
    private static final List<Piece> PIECES = List.of(
            new Piece.Straight(1500, 0),
            new Piece.Turn(300, 90, true, 0, 0),
            new Piece.Turn(300, 90, true, 0, 0),
            new Piece.Straight(700, 0),
            new Piece.Turn(250, 45, false, 5, 0),
            new Piece.Turn(250, 45, true, 0, 0),
            new Piece.Straight(800, 0),
            new Piece.Turn(300, 180, true, 0, 0));

    private static Track track(Surface surface, IntFunction<PieceExtras> extras) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < PIECES.size(); i++) {
            pieces.add(PIECES.get(i).with(extras.apply(i)));
        }
        return new Track(
                "by piece",
                surface,
                List.of(new Lane("left", 40), new Lane("right", -40)),
                new Power(12, 0.6, 0.08, List.of(0.0), OptionalDouble.of(0.2)),
                new PieceLayout(pieces));
    }

    private static PieceExtras grip(double factor) {
        return new PieceExtras(OptionalDouble.of(factor), Optional.empty(), List.of());
    }

    private static PieceExtras magnetic(boolean magnetic) {
        return new PieceExtras(OptionalDouble.empty(), Optional.of(magnetic), List.of());
    }

    private static SetUp pulled(double grams) {
        return SampleCar.setUp().withMagnet(Optional.of(new Magnet(Reading.exact(grams), Reading.exact(20))));
    }

    private static double lapS(Track track, SetUp car) {
        return new LapSolver(track.cells(track.lanes().get(0), 600))
                .solve(ResolvedCar.of(car, track.surface()))
                .lapS();
    }

    @Test
    void theSameGripOnEveryPieceIsThatOfTheTrack() {
        Track byPiece = track(new Surface(1.1, false), i -> grip(0.8));
        Track whole = track(new Surface(0.8, false), i -> PieceExtras.NONE);
        assertThat(lapS(byPiece, SampleCar.setUp())).isCloseTo(lapS(whole, SampleCar.setUp()), within(1e-9));
    }

    @Test
    void noRailsOnAnyPieceIsATrackWithoutRails() {
        Track byPiece = track(new Surface(1, true), i -> magnetic(false));
        Track whole = track(new Surface(1, false), i -> PieceExtras.NONE);
        for (double pull : new double[] {30, 60, 200}) {
            assertThat(lapS(byPiece, pulled(pull))).isCloseTo(lapS(whole, pulled(pull)), within(1e-9));
        }
    }

    /** One slippery or plastic piece costs something, and less than if all were so. */
    @Test
    void onePieceLiesBetweenNoneAndAll() {
        for (int one = 0; one < PIECES.size(); one++) {
            int odd = one;
            double good = lapS(track(new Surface(1, true), i -> PieceExtras.NONE), pulled(80));
            double slippery =
                    lapS(track(new Surface(1, true), i -> i == odd ? grip(0.7) : PieceExtras.NONE), pulled(80));
            double allSlippery = lapS(track(new Surface(1, true), i -> grip(0.7)), pulled(80));
            assertThat(slippery).isBetween(good - 1e-9, allSlippery + 1e-9);
            double plastic =
                    lapS(track(new Surface(1, true), i -> i == odd ? magnetic(false) : PieceExtras.NONE), pulled(80));
            double allPlastic = lapS(track(new Surface(1, true), i -> magnetic(false)), pulled(80));
            assertThat(plastic).isBetween(good - 1e-9, allPlastic + 1e-9);
        }
    }

    /** In the slippery turn the lap is slower just there and before it, not elsewhere. */
    @Test
    void theCarSlowsForTheSlipperyTurn() {
        Track good = track(new Surface(1, false), i -> PieceExtras.NONE);
        Track slippery = track(new Surface(1, false), i -> i == 2 ? grip(0.6) : PieceExtras.NONE);
        PredictedLap before = lap(good);
        PredictedLap after = lap(slippery);
        double middleM = 1.5 + Math.toRadians(135) * 0.26;
        double ratio = speedAt(after, middleM) / speedAt(before, middleM);
        assertThat(ratio).isCloseTo(Math.sqrt(0.6), within(0.05));
        double lastM = after.trace().placeM(after.trace().cells()) - 0.4;
        assertThat(speedAt(after, lastM)).isCloseTo(speedAt(before, lastM), within(1e-6));
    }

    private static PredictedLap lap(Track track) {
        return (PredictedLap) new LapSolver(track.cells(track.lanes().get(0), 600))
                .solve(ResolvedCar.of(SampleCar.setUp(), track.surface()));
    }

    private static double speedAt(PredictedLap lap, double placeM) {
        int i = 0;
        while (lap.trace().placeM(i) < placeM) {
            i++;
        }
        return lap.trace().speedMps(i);
    }

    @Test
    void manyCarsAtOnceComeOutAsOneByOne() {
        SplittableRandom chance = new SplittableRandom(4);
        for (int garage = 0; garage < 20; garage++) {
            SplittableRandom each = chance.split();
            Track track = track(
                    new Surface(1, true),
                    i -> new PieceExtras(
                            OptionalDouble.of(each.nextDouble(0.6, 1.2)), Optional.of(each.nextBoolean()), List.of()));
            List<ResolvedCar> cars = new ArrayList<>();
            for (int k = 0; k < 6; k++) {
                cars.add(ResolvedCar.of(pulled(each.nextDouble(10, 150)), track.surface()));
            }
            LapSolver solver = new LapSolver(track.cells(track.lanes().get(1), 600));
            double[] together = new double[cars.size()];
            solver.lapTimes(cars, 0, together.length, together);
            for (int k = 0; k < together.length; k++) {
                assertThat(together[k]).isCloseTo(solver.solve(cars.get(k)).lapS(), within(1e-9));
            }
        }
    }

    /** 600 cells and 6,000 agree where the surface jumps within a turn. */
    @Test
    void coarseAndFineCellsAgree() {
        Track track = track(new Surface(1, true), i -> i % 2 == 0 ? grip(0.75) : magnetic(false));
        Lane lane = track.lanes().get(0);
        ResolvedCar car = ResolvedCar.of(pulled(100), track.surface());
        double coarse = new LapSolver(track.cells(lane, 600)).solve(car).lapS();
        double fine = new LapSolver(track.cells(lane, 6000)).solve(car).lapS();
        assertThat(coarse).isCloseTo(fine, within(1e-3 * fine));
    }
}
