package org.lapwright.app.web.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.bench.PlanView.Box;
import org.lapwright.app.web.bench.PlanView.GuideMark;
import org.lapwright.app.web.bench.PlanView.Kind;
import org.lapwright.app.web.bench.PlanView.Label;
import org.lapwright.app.web.bench.PlanView.Line;
import org.lapwright.app.web.bench.PlanView.Mark;
import org.lapwright.app.web.bench.PlanView.Point;
import org.lapwright.app.web.bench.PlanView.ScaleBar;
import org.lapwright.app.web.bench.PlanView.Tyre;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.MassProperties;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.numbers.SetUpNumbers;

/**
 * Draws a car from above. To scale: axles, tracks, tyre diameter at the rear, guide, ballast, magnet, centre of gravity. Not
 * measured and therefore schematic: the body's outline, the tyres' widths, the front tyres' diameter.
 */
public final class PlanDrawing {
    private static final double TOP = 46;
    private static final double BOTTOM = 34;
    private static final double MOST_ACROSS = 146;
    private static final double MOST_ALONG = 400;

    /** More pieces than this are marked, and listed below, but have no label of their own. */
    private static final int MOST_LABELLED = 6;

    private final SetUp car;
    private final SetUpNumbers.Standing standing;
    private final Chassis chassis;
    private final MassProperties mass;
    private final double tyreMm;
    private final double tyreWidthMm;
    private final double noseMm;
    private final double halfMm;
    private final double scale;
    private final double height;
    private final PlanLabels leftLabels = new PlanLabels(true);
    private final PlanLabels rightLabels = new PlanLabels(false);

    private PlanDrawing(SetUp car, SetUpNumbers numbers) {
        this.car = car;
        standing = numbers.standing();
        chassis = car.chassis();
        mass = car.massProperties();
        tyreMm = car.rearTyre().diameterMm().value();
        tyreWidthMm = 0.2 * Math.min(chassis.rearTrackMm().value(), 60);
        noseMm = farthest(true, Math.max(lengthMm() + 8, chassis.wheelbaseMm().value() + 0.6 * tyreMm));
        double tailMm = -farthest(false, 0.75 * tyreMm);
        halfMm = DoubleStream.concat(
                        DoubleStream.of((Math.max(
                                                chassis.rearTrackMm().value(),
                                                chassis.frontTrackMm().value())
                                        + tyreWidthMm)
                                / 2),
                        car.ballast().stream()
                                .mapToDouble(piece -> Math.abs(piece.yMm().value()) + 3))
                .max()
                .orElseThrow();
        scale = Math.min(MOST_ACROSS / (2 * halfMm), MOST_ALONG / (noseMm - tailMm));
        label();
        double drawn = (noseMm - tailMm) * scale;
        height = TOP + Math.max(drawn, Math.max(leftLabels.height(), rightLabels.height())) + BOTTOM;
    }

    /** The drawing of a car whose loads are these. */
    public static PlanView of(SetUp car, SetUpNumbers numbers) {
        return new PlanDrawing(car, numbers).drawn();
    }

    private PlanView drawn() {
        List<Label> labels = new ArrayList<>(leftLabels.place(TOP, height - BOTTOM));
        labels.addAll(rightLabels.place(TOP, height - BOTTOM));
        return new PlanView(
                rounded(height),
                scale,
                at(0, 0),
                body(),
                tyres(),
                axles(),
                guide(),
                stands(),
                marks(),
                tipping(),
                labels,
                bar(),
                summary());
    }

    private double lengthMm() {
        return chassis.guideToRearAxleMm().value();
    }

    private boolean touching() {
        return chassis.frontWheels() == FrontWheels.TOUCHING;
    }

    /** How far things reach ahead of the rear axle, or behind it. */
    private double farthest(boolean ahead, double atLeast) {
        double sign = ahead ? 1 : -1;
        DoubleStream pieces =
                car.ballast().stream().mapToDouble(piece -> sign * piece.xMm().value() + 4);
        DoubleStream magnet =
                car.magnet().stream().mapToDouble(fitted -> sign * fitted.xMm().value() + 4);
        return DoubleStream.concat(DoubleStream.of(atLeast), DoubleStream.concat(pieces, magnet))
                .max()
                .orElseThrow();
    }

    private Point at(double aheadMm, double leftMm) {
        return new Point(rounded(PlanView.WIDTH / 2 - leftMm * scale), rounded(TOP + (noseMm - aheadMm) * scale));
    }

    private Box box(double aheadMm, double leftMm, double alongMm, double acrossMm) {
        Point corner = at(aheadMm + alongMm / 2, leftMm + acrossMm / 2);
        return new Box(corner.x(), corner.y(), rounded(acrossMm * scale), rounded(alongMm * scale));
    }

    private Box body() {
        double tail = -0.6 * tyreMm;
        double nose = lengthMm() + 5;
        double across =
                Math.max(chassis.rearTrackMm().value(), chassis.frontTrackMm().value()) + 0.6 * tyreWidthMm;
        return box((nose + tail) / 2, 0, nose - tail, across);
    }

    private List<Tyre> tyres() {
        double rear = chassis.rearTrackMm().value() / 2;
        double front = chassis.frontTrackMm().value() / 2;
        double ahead = chassis.wheelbaseMm().value();
        double frontWidth = Math.min(0.7 * tyreWidthMm, 0.8 * 2 * front);
        double rearWidth = Math.min(tyreWidthMm, 0.8 * 2 * rear);
        return List.of(
                new Tyre(box(0, rear, tyreMm, rearWidth), true),
                new Tyre(box(0, -rear, tyreMm, rearWidth), true),
                new Tyre(box(ahead, front, 0.85 * tyreMm, frontWidth), touching()),
                new Tyre(box(ahead, -front, 0.85 * tyreMm, frontWidth), touching()));
    }

    private List<Line> axles() {
        return List.of(
                axle(0, chassis.rearTrackMm().value() / 2),
                axle(chassis.wheelbaseMm().value(), chassis.frontTrackMm().value() / 2));
    }

    private Line axle(double aheadMm, double halfTrackMm) {
        return between(at(aheadMm, halfTrackMm), at(aheadMm, -halfTrackMm));
    }

    private GuideMark guide() {
        double braid = Math.min(3, chassis.frontTrackMm().value() / 4);
        return new GuideMark(
                at(lengthMm(), 0),
                rounded(Math.max(3, 1.6 * scale)),
                between(at(lengthMm() + 4, braid), at(lengthMm() - 10, braid)),
                between(at(lengthMm() + 4, -braid), at(lengthMm() - 10, -braid)));
    }

    private List<Point> stands() {
        double rear = chassis.rearTrackMm().value() / 2;
        double front = chassis.frontTrackMm().value() / 2;
        double ahead = chassis.wheelbaseMm().value();
        return touching()
                ? List.of(at(0, rear), at(ahead, front), at(ahead, -front), at(0, -rear))
                : List.of(at(0, rear), at(lengthMm(), 0), at(0, -rear));
    }

    /** From the centre of gravity square to the tipping line on the side it leans to. */
    private Line tipping() {
        double side = mass.leftMm() >= 0 ? 1 : -1;
        double rear = side * chassis.rearTrackMm().value() / 2;
        double ahead = touching() ? chassis.wheelbaseMm().value() : lengthMm();
        double front = touching() ? side * chassis.frontTrackMm().value() / 2 : 0;
        double across = front - rear;
        double along = (mass.aheadMm() * ahead + (mass.leftMm() - rear) * across) / (ahead * ahead + across * across);
        return between(at(mass.aheadMm(), mass.leftMm()), at(along * ahead, rear + along * across));
    }

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        car.magnet()
                .ifPresent(magnet -> marks.add(
                        new Mark(Kind.MAGNET, at(magnet.xMm().value(), 0), rounded(Math.max(7, 4 * scale)), "")));
        for (int i = 0; i < car.ballast().size(); i++) {
            Ballast piece = car.ballast().get(i);
            double grams = piece.massG().value();
            marks.add(new Mark(
                    grams < 0 ? Kind.TAKEN_OUT : Kind.BALLAST,
                    at(piece.xMm().value(), piece.yMm().value()),
                    rounded(half(grams)),
                    String.valueOf(i + 1)));
        }
        marks.add(new Mark(Kind.CENTRE, at(mass.aheadMm(), mass.leftMm()), 9, ""));
        return marks;
    }

    /** A square of lead, 2 mm thick, to scale; never so small that it cannot be seen nor so large that it hides the car. */
    private double half(double grams) {
        double sideMm = Math.sqrt(Math.abs(grams) * 1000 / (11.3 * 2));
        return Math.max(5, Math.min(22, sideMm * scale / 2));
    }

    private void label() {
        double carried = standing.guideLoadG() + standing.rearLoadG();
        loadLabel(at(lengthMm(), 0), touching() ? "nose" : "guide", standing.guideLoadG(), carried);
        loadLabel(at(0, chassis.rearTrackMm().value() / 2), "rear tyres", standing.rearLoadG(), carried);
        leftLabels.add(
                at(chassis.wheelbaseMm().value(), chassis.frontTrackMm().value() / 2),
                "front wheels",
                touching() ? "touch" : "hang clear");
        rightLabels.add(at(mass.aheadMm(), mass.leftMm()), "balances at", Figures.fixed(mass.aheadMm(), 1) + " mm");
        Line edge = tipping();
        rightLabels.add(
                new Point(rounded((edge.x1() + edge.x2()) / 2), rounded((edge.y1() + edge.y2()) / 2)),
                "to tip line",
                Figures.fixed(car.tippingEdgeMm(), 1) + " mm");
        car.magnet()
                .ifPresent(magnet -> rightLabels.add(
                        at(magnet.xMm().value(), 0),
                        "magnet",
                        Figures.significant(magnet.downforceG().value(), 4) + " g"));
        heaviest().forEach(i -> {
            Ballast piece = car.ballast().get(i);
            (piece.yMm().value() > 0 ? leftLabels : rightLabels)
                    .add(
                            at(piece.xMm().value(), piece.yMm().value()),
                            (i + 1) + " · " + Figures.significant(piece.massG().value(), 3) + " g");
        });
    }

    private IntStream heaviest() {
        return IntStream.range(0, car.ballast().size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> -Math.abs(car.ballast().get(i).massG().value())))
                .limit(MOST_LABELLED)
                .mapToInt(i -> i);
    }

    private void loadLabel(Point at, String name, double grams, double carried) {
        double share = Math.max(0, Math.min(1, grams / carried));
        leftLabels.add(
                at,
                List.of(name, Figures.fixed(grams, 1) + " g, " + Figures.fixed(100 * grams / carried, 0) + " %"),
                share);
    }

    private ScaleBar bar() {
        double mm = 50 * scale <= 110 ? 50 : 20 * scale <= 110 ? 20 : 10;
        double from = PlanView.WIDTH / 2 - mm * scale / 2;
        double y = rounded(height - 20);
        return new ScaleBar(new Line(rounded(from), y, rounded(from + mm * scale), y), Figures.fixed(mm, 0) + " mm");
    }

    private String summary() {
        String pieces = car.ballast().isEmpty()
                ? ""
                : car.ballast().size() == 1
                        ? " One piece of ballast."
                        : " %d pieces of ballast.".formatted(car.ballast().size());
        return "%s from above, nose up: guide %s mm ahead of the rear axle, it balances %s mm ahead of it; %s g on the %s, %s g on the rear tyres; front wheels %s.%s"
                .formatted(
                        car.name(),
                        Figures.significant(lengthMm(), 4),
                        Figures.fixed(mass.aheadMm(), 1),
                        Figures.fixed(standing.guideLoadG(), 1),
                        touching() ? "guide and front wheels" : "guide",
                        Figures.fixed(standing.rearLoadG(), 1),
                        touching() ? "touch" : "hang clear",
                        pieces);
    }

    private static Line between(Point from, Point to) {
        return new Line(from.x(), from.y(), to.x(), to.y());
    }

    /** To a hundredth of a unit, so that the page stays small. */
    static double rounded(double place) {
        return Math.rint(100 * place) / 100;
    }
}
