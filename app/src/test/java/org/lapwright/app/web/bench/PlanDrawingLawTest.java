package org.lapwright.app.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.web.bench.PlanView.Box;
import org.lapwright.app.web.bench.PlanView.Kind;
import org.lapwright.app.web.bench.PlanView.Label;
import org.lapwright.app.web.bench.PlanView.Line;
import org.lapwright.app.web.bench.PlanView.Mark;
import org.lapwright.app.web.bench.PlanView.Point;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.units.Reading;

/** Whatever the car, its drawing is true to scale and its labels can be read. */
class PlanDrawingLawTest {
    /** Places are rounded to a hundredth of a unit. */
    private static final double ROUNDING = 0.02;

    static Stream<SetUp> cars() {
        Stream<SetUp> reference = Stream.of("plain", "magnet", "soft", "tall").map(name -> setUp(name + ".car.json"));
        return Stream.concat(reference, IntStream.range(0, 60).mapToObj(PlanDrawingLawTest::oddCar));
    }

    private static SetUp setUp(String file) {
        return CarFile.read(Reference.text(file)).accepted().orElseThrow().setUp();
    }

    /** Legal, but seldom seen: ballast outside, long, wide, off centre. */
    private static SetUp oddCar(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        SetUp plain = setUp("plain.car.json");
        double length = random.nextDouble(60, 250);
        Chassis chassis = new Chassis(
                Reading.exact(length),
                Reading.exact(length * random.nextDouble(0.6, 1.1)),
                Reading.exact(random.nextDouble(20, 150)),
                Reading.exact(random.nextDouble(6, 150)),
                random.nextBoolean() ? FrontWheels.CLEAR : FrontWheels.TOUCHING);
        List<Ballast> pieces = new ArrayList<>();
        for (int i = 0; i < seed % 12; i++) {
            pieces.add(new Ballast(
                    "piece " + i,
                    Reading.exact(random.nextDouble(-0.5, 2)),
                    Reading.exact(random.nextDouble(-60, 260)),
                    Reading.exact(random.nextDouble(-100, 100)),
                    Reading.exact(5)));
        }
        Optional<Magnet> magnet = random.nextBoolean()
                ? Optional.of(new Magnet(Reading.exact(80), Reading.exact(random.nextDouble(-20, length))))
                : Optional.empty();
        SetUp bare = plain.withChassis(chassis).withMagnet(magnet);
        try {
            return bare.withBallast(pieces);
        } catch (IllegalArgumentException wouldFallOver) {
            return bare;
        }
    }

    private static PlanView drawn(SetUp car) {
        return PlanDrawing.of(car, SetUpNumbers.onBench(car));
    }

    private static double middle(Box box) {
        return box.y() + box.height() / 2;
    }

    @ParameterizedTest
    @MethodSource("cars")
    void lengthsAreToScale(SetUp car) {
        PlanView plan = drawn(car);
        Line rear = plan.axles().get(0);
        Line front = plan.axles().get(1);
        Chassis chassis = car.chassis();
        assertThat(rear.y1() - front.y1()).isCloseTo(chassis.wheelbaseMm().value() * plan.scale(), within(ROUNDING));
        assertThat(rear.y1() - plan.guide().pivot().y())
                .isCloseTo(chassis.guideToRearAxleMm().value() * plan.scale(), within(ROUNDING));
        assertThat(rear.x2() - rear.x1()).isCloseTo(chassis.rearTrackMm().value() * plan.scale(), within(ROUNDING));
        assertThat(front.x2() - front.x1()).isCloseTo(chassis.frontTrackMm().value() * plan.scale(), within(ROUNDING));
        Box tyre = plan.tyres().get(0).box();
        assertThat(tyre.height()).isCloseTo(car.rearTyre().diameterMm().value() * plan.scale(), within(ROUNDING));
        assertThat(middle(tyre)).isCloseTo(rear.y1(), within(ROUNDING));
        Line bar = plan.bar().line();
        double barMm = Double.parseDouble(plan.bar().label().replace(" mm", ""));
        assertThat(bar.x2() - bar.x1()).isCloseTo(barMm * plan.scale(), within(ROUNDING));
    }

    @ParameterizedTest
    @MethodSource("cars")
    void ballastLiesWhereItIsAndLeftIsLeft(SetUp car) {
        PlanView plan = drawn(car);
        double rear = plan.axles().get(0).y1();
        List<Mark> pieces =
                plan.marks().stream().filter(mark -> !mark.number().isEmpty()).toList();
        assertThat(pieces).hasSameSizeAs(car.ballast());
        for (int i = 0; i < pieces.size(); i++) {
            Ballast piece = car.ballast().get(i);
            Point at = pieces.get(i).at();
            assertThat(rear - at.y()).isCloseTo(piece.xMm().value() * plan.scale(), within(ROUNDING));
            assertThat(PlanView.WIDTH / 2 - at.x()).isCloseTo(piece.yMm().value() * plan.scale(), within(ROUNDING));
            assertThat(pieces.get(i).kind()).isEqualTo(piece.massG().value() < 0 ? Kind.TAKEN_OUT : Kind.BALLAST);
        }
    }

    /** The drawn distance from the centre of gravity to the nearest edge of the drawn area is the edge that tips. */
    @ParameterizedTest
    @MethodSource("cars")
    void theAreaIsThatWhoseEdgeTips(SetUp car) {
        PlanView plan = drawn(car);
        Point centre = plan.marks().get(plan.marks().size() - 1).at();
        List<Point> corners = plan.stands();
        double nearest = Math.min(
                distance(centre, corners.get(0), corners.get(1)),
                distance(centre, corners.get(corners.size() - 2), corners.get(corners.size() - 1)));
        double expected = car.tippingEdgeMm() * plan.scale();
        assertThat(nearest).isCloseTo(expected, within(2 * ROUNDING));
        Line drawn = plan.tipping();
        assertThat(Math.hypot(drawn.x2() - drawn.x1(), drawn.y2() - drawn.y1()))
                .isCloseTo(expected, within(2 * ROUNDING));
    }

    private static double distance(Point from, Point a, Point b) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        return Math.abs(dx * (from.y() - a.y()) - dy * (from.x() - a.x())) / Math.hypot(dx, dy);
    }

    @ParameterizedTest
    @MethodSource("cars")
    void labelsNeitherOverlapNorLeaveTheDrawing(SetUp car) {
        PlanView plan = drawn(car);
        for (boolean left : List.of(true, false)) {
            double free = 0;
            List<Label> column = plan.labels().stream()
                    .filter(label -> (label.x() < PlanView.WIDTH / 2) == left)
                    .sorted(java.util.Comparator.comparingDouble(Label::y))
                    .toList();
            for (Label label : column) {
                assertThat(label.y() - 13).isGreaterThanOrEqualTo(free);
                free = label.y() + 16 * (label.lines().size() - 1) + 4 + (label.share() >= 0 ? 9 : 0);
            }
            assertThat(free).isLessThanOrEqualTo(plan.height() - 20);
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    void theCarStaysBetweenItsLabels(SetUp car) {
        PlanView plan = drawn(car);
        plan.tyres().forEach(tyre -> {
            assertThat(tyre.box().x()).isGreaterThan(PlanView.COLUMN);
            assertThat(tyre.box().x() + tyre.box().width()).isLessThan(PlanView.WIDTH - PlanView.COLUMN);
            assertThat(tyre.box().y()).isPositive();
            assertThat(tyre.box().y() + tyre.box().height()).isLessThan(plan.height());
        });
    }
}
