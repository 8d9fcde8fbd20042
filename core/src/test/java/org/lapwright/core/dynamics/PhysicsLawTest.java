package org.lapwright.core.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Layout;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanPoint;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

/** What mechanics asks of any lap: symmetries, scaling, monotony, and closed forms of steady driving. */
class PhysicsLawTest {
    private static final int GARAGES = 60;

    /** In the mirror left is right and nothing else changes. */
    @Test
    void mirroredTrackAndCar() {
        int laps = 0;
        for (int seed = 0; seed < GARAGES; seed++) {
            RandomGarage garage = new RandomGarage(new SplittableRandom(1000 + seed));
            Track track = garage.track();
            SetUp car = garage.car();
            Track mirrored = mirrored(track);
            for (int k = 0; k < track.lanes().size(); k++) {
                double lapS = lapS(car, track, track.lanes().get(k));
                double inMirror = lapS(mirrored(car), mirrored, mirrored.lanes().get(k));
                if (Double.isInfinite(lapS)) {
                    assertThat(inMirror).as("garage %d", seed).isInfinite();
                } else {
                    laps++;
                    assertThat(inMirror).as("garage %d", seed).isCloseTo(lapS, within(1e-9 * lapS));
                }
            }
        }
        assertThat(laps).isGreaterThan(GARAGES / 3);
    }

    /** The timing line may lie at any joint; taps and pieces stay where they are. */
    @ParameterizedTest
    @CsvSource({"plain,loop", "magnet,loop", "soft,long", "tall,hill"})
    void timingLineElsewhere(String carName, String trackName) {
        Track track = LapFiles.track(trackName);
        SetUp car = LapFiles.car(carName);
        for (Lane lane : track.lanes()) {
            double lapS = lapS(car, track, lane);
            int pieces = ((PieceLayout) track.layout()).pieces().size();
            for (int first = 1; first < pieces; first++) {
                assertThat(lapS(car, startingAt(track, lane, first), lane))
                        .as("lane %s from piece %d", lane.name(), first)
                        .isCloseTo(lapS, within(1e-7 * lapS));
            }
        }
    }

    /** Where neither magnet nor motor's power has a say, all forces go with the mass, and the lap does not know it. */
    @ParameterizedTest
    @CsvSource({"plain,loop,0.3", "plain,hill,3", "soft,long,4", "tall,hill,0.5"})
    void massMakesNoDifferenceWithoutMagnetAndPower(String carName, String trackName, double factor) {
        Track wired = LapFiles.track(trackName);
        Power endless = new Power(12, 0, 0, List.of(0.0), OptionalDouble.of(0));
        Track track = new Track(wired.name(), wired.surface(), wired.lanes(), endless, wired.layout());
        ResolvedCar car = ResolvedCar.of(LapFiles.car(carName), track.surface());
        LapSolver solver = new LapSolver(track.cells(track.lanes().get(0)));
        double once = solver.solve(heavier(car, 1)).lapS();
        assertThat(once).isFinite();
        assertThat(solver.solve(heavier(car, factor)).lapS()).isCloseTo(once, within(1e-9 * once));
    }

    @Test
    void moreGripIsNeverSlower() {
        int faster = 0;
        for (int seed = 0; seed < GARAGES; seed++) {
            RandomGarage garage = new RandomGarage(new SplittableRandom(2000 + seed));
            Track track = garage.track();
            ResolvedCar car = ResolvedCar.of(garage.car(), track.surface());
            LapSolver solver = new LapSolver(track.cells(track.lanes().get(0)));
            double before = solver.solve(car).lapS();
            double after =
                    solver.solve(withGrip(car, 1.05 * car.contact().grip())).lapS();
            if (Double.isFinite(before)) {
                assertThat(after).as("garage %d", seed).isLessThanOrEqualTo(before * (1 + 1e-6));
                faster += after < 0.999 * before ? 1 : 0;
            }
        }
        assertThat(faster).isGreaterThan(GARAGES / 6);
    }

    /** A point on a circle: v² = μ g R; banked by β: v² = g R (tan β + μ) / (1 − μ tan β) (any textbook of dynamics). */
    @ParameterizedTest
    @CsvSource({"0.25,0.9,0", "0.4,0.6,20", "1.5,1.1,35", "0.3,0.5,-15"})
    void steadyCircleOfAPoint(double radius, double grip, double bankDeg) {
        LaneCells lane = PointCar.lane(List.of(new Piece.Turn(1000 * radius, 360, false, bankDeg, 0)), 600);
        double slope = Math.tan(Math.toRadians(bankDeg));
        double speed = Math.sqrt(ResolvedCar.GRAVITY * radius * (slope + grip) / (1 - grip * slope));
        ResolvedCar car = PointCar.of(grip, 50, PointCar.ENDLESS, 50);
        assertThat(new LapSolver(lane).solve(car).lapS())
                .isCloseTo(2 * Math.PI * radius / speed, within(1e-5 * radius / speed));
    }

    /**
     * A car of length L on a circle, flat, without losses: sin ψ = L/R; moments about the guide and about the rear axle give
     * v² κ l cos ψ = μ (g l − κ² v² x_c h).
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.3, 0.8})
    void steadyCircleOfALongCar(double radius) {
        double curve = 1 / radius;
        ResolvedCar car = freeOfLosses(LapFiles.car("plain"), 0.8);
        double cos = Math.sqrt(1 - Math.pow(car.body().lengthM() * curve, 2));
        double l = car.guideToCentreM();
        double leverage = curve * l * cos
                + 0.8 * curve * curve * car.body().aheadM() * car.body().heightM();
        double speed = Math.sqrt(0.8 * ResolvedCar.GRAVITY * l / leverage);
        LaneCells lane = PointCar.lane(List.of(PointCar.turn(2 * Math.PI * radius, radius)), 600);
        PredictedLap lap = (PredictedLap) new LapSolver(lane).solve(car);
        assertThat(lap.topMps()).isCloseTo(speed, within(1e-6 * speed));
        assertThat(lap.shares().get(Limit.SLIDE)).isCloseTo(1, within(1e-9));
    }

    /** Tipping on front wheels that touch: sideways acceleration g t/(2h), the static stability factor (NHTSA, DOT HS 809 868). */
    @Test
    void tippingOnACircle() {
        double radius = 0.3;
        ResolvedCar plain = freeOfLosses(LapFiles.car("plain"), 2);
        ResolvedCar.Body b = plain.body();
        ResolvedCar car = new ResolvedCar(
                new ResolvedCar.Body(b.massKg(), b.lengthM(), b.aheadM(), 0.03, b.yawInertiaKgM2(), 0.04, 0.02, 1),
                plain.contact(),
                plain.drive());
        double cos = Math.sqrt(1 - Math.pow(b.lengthM() / radius, 2));
        double speed = Math.sqrt(ResolvedCar.GRAVITY * 0.04 / (2 * 0.03) * radius / cos);
        LaneCells lane = PointCar.lane(List.of(PointCar.turn(2 * Math.PI * radius, radius)), 600);
        PredictedLap lap = (PredictedLap) new LapSolver(lane).solve(car);
        assertThat(lap.topMps()).isCloseTo(speed, within(1e-6 * speed));
        assertThat(lap.shares().get(Limit.TIP)).isCloseTo(1, within(1e-9));
    }

    /** On an endless straight the motor's line meets the drag: a (1 − v/v_m) = k v² + c_rr g + D_braid/m has one positive root. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 8, 80})
    void topSpeedOnAStraight(double dragAreaCm2) {
        double drive = 6;
        double top = 7;
        ResolvedCar point = PointCar.of(0.9, drive, top, 1);
        double mass = point.body().massKg();
        ResolvedCar car = new ResolvedCar(
                point.body(),
                new ResolvedCar.Contact(0.9, 0, 0.03 * mass, 0, 0, 0, 0.02, dragAreaCm2 / 1e4),
                point.drive());
        double square = ResolvedCar.AIR_DENSITY * dragAreaCm2 / 1e4 / (2 * mass);
        double rest = drive - 0.03 - 0.02 * ResolvedCar.GRAVITY;
        double slope = drive / top;
        double speed = 2 * rest / (slope + Math.sqrt(slope * slope + 4 * square * rest));
        PredictedLap lap = (PredictedLap) new LapSolver(PointCar.lane(List.of(PointCar.straight(5)), 600)).solve(car);
        assertThat(lap.topMps()).isCloseTo(speed, within(1e-5 * speed));
        assertThat(lap.slowestMps()).isCloseTo(speed, within(1e-5 * speed));
        assertThat(lap.lapS()).isCloseTo(5 / speed, within(1e-5 * 5 / speed));
    }

    private static double lapS(SetUp car, Track track, Lane lane) {
        return new LapSolver(track.cells(lane))
                .solve(ResolvedCar.of(car, track.surface()))
                .lapS();
    }

    private static SetUp mirrored(SetUp car) {
        WeighedCar mass = car.mass();
        WeighedCar other = new WeighedCar(
                mass.totalG(),
                mass.balance(),
                Reading.exact(-mass.cgLeftMm().value()),
                mass.cgHeightMm(),
                mass.yawInertiaGmm2());
        List<Ballast> pieces = car.ballast().stream()
                .map(b -> new Ballast(
                        b.name(), b.massG(), b.xMm(), Reading.exact(-b.yMm().value()), b.zMm()))
                .toList();
        return car.withMass(other).withBallast(pieces);
    }

    private static Track mirrored(Track track) {
        List<Lane> lanes = track.lanes().stream()
                .map(lane -> new Lane(lane.name(), -lane.offsetMm()))
                .toList();
        return new Track(track.name(), track.surface(), lanes, track.power(), mirrored(track.layout()));
    }

    private static Layout mirrored(Layout layout) {
        if (layout instanceof PointLayout points) {
            return new PointLayout(points.points().stream()
                    .map(p -> new PlanPoint(p.xMm(), -p.yMm()))
                    .toList());
        }
        return new PieceLayout(((PieceLayout) layout)
                .pieces().stream()
                        .map(piece -> piece instanceof Piece.Turn t
                                ? new Piece.Turn(t.radiusMm(), t.angleDeg(), !t.left(), t.bankDeg(), t.riseMm())
                                : piece)
                        .toList());
    }

    private static Track startingAt(Track track, Lane lane, int first) {
        List<Piece> pieces = ((PieceLayout) track.layout()).pieces();
        List<Piece> turned = new ArrayList<>(pieces.subList(first, pieces.size()));
        turned.addAll(pieces.subList(0, first));
        double shift = pieces.subList(0, first).stream()
                        .mapToDouble(piece -> piece.along(lane.offsetM()).lengthM())
                        .sum()
                / track.lengthM(lane);
        Power power = track.power();
        List<Double> taps =
                power.tapsAt().stream().map(tap -> (tap - shift + 1) % 1).toList();
        return new Track(
                track.name(),
                track.surface(),
                track.lanes(),
                new Power(power.supplyV(), power.sourceOhm(), power.railOhmPerM(), taps, power.brakeOhm()),
                new PieceLayout(turned));
    }

    /** The car with all that goes with the mass times a factor, no magnet, and a motor without end. */
    private static ResolvedCar heavier(ResolvedCar car, double factor) {
        ResolvedCar.Body b = car.body();
        ResolvedCar.Contact c = car.contact();
        ResolvedCar.Drive d = car.drive();
        return new ResolvedCar(
                new ResolvedCar.Body(
                        factor * b.massKg(),
                        b.lengthM(),
                        b.aheadM(),
                        b.heightM(),
                        factor * b.yawInertiaKgM2(),
                        b.rearTrackM(),
                        b.tippingEdgeM(),
                        b.frontShare()),
                new ResolvedCar.Contact(
                        c.grip(),
                        c.slotFriction(),
                        factor * c.braidDragN(),
                        factor * c.minGuideLoadN(),
                        0,
                        0,
                        c.rollingResistance(),
                        factor * c.dragAreaM2()),
                new ResolvedCar.Drive(new MotorLine(1e-5, 1e-9, 0), d.ratio(), d.efficiency(), d.tyreRadiusM(), 0, 0));
    }

    private static ResolvedCar withGrip(ResolvedCar car, double grip) {
        ResolvedCar.Contact c = car.contact();
        return new ResolvedCar(
                car.body(),
                new ResolvedCar.Contact(
                        grip,
                        c.slotFriction(),
                        c.braidDragN(),
                        c.minGuideLoadN(),
                        c.magnetN(),
                        c.magnetAheadM(),
                        c.rollingResistance(),
                        c.dragAreaM2()),
                car.drive());
    }

    private static ResolvedCar freeOfLosses(SetUp setUp, double grip) {
        ResolvedCar car = ResolvedCar.of(setUp, org.lapwright.core.track.Surface.BENCH);
        return new ResolvedCar(car.body(), new ResolvedCar.Contact(grip, 0, 0, 0, 0, 0, 0, 0), car.drive());
    }
}
