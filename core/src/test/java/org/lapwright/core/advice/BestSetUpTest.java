package org.lapwright.core.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.BallastChange;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChangeKind;
import org.lapwright.core.car.change.ChassisChange;
import org.lapwright.core.car.change.DriveChange;
import org.lapwright.core.car.change.SampleCar;
import org.lapwright.core.car.change.TyreChange;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.car.rules.ClassNumber;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Reading;

/** The best set-up against brute force over a coarse grid of the same changes, driven here by themselves. */
class BestSetUpTest {
    private static final int MOST = 12_000;
    private static final Track TRACK = SampleTrack.OVAL;
    private static final List<Course> LEFT =
            List.of(new Course(TRACK, TRACK.lanes().get(0)));
    private static final List<Course> BOTH = Course.all(TRACK);

    private static Build car() {
        SetUp sample = SampleCar.setUp();
        return Build.of(sample.withMagnet(Optional.empty())
                .withRearTyre(new RearTyre(new Reading(20, 0.1), new Reading(1.05, 0.05))));
    }

    private static BestSetUp.Found found(Build car, List<Course> courses, List<Change> shelf, ClassLimits bounds) {
        return new BestSetUp(car, courses, shelf, bounds).search(MOST, 1, (predictions, lapS) -> true);
    }

    private static double lapS(Build car, List<Course> courses) {
        return courses.stream()
                .mapToDouble(course -> new LapSolver(course.track().cells(course.lane()))
                        .solve(ResolvedCar.of(car.setUp(), TRACK.surface()))
                        .lapS())
                .average()
                .orElseThrow();
    }

    private static Build applied(Build car, List<Change> changes) {
        Build build = car;
        for (Change change : changes) {
            build = change.apply(build);
        }
        return build;
    }

    /** Every combination of a coarse grid of ballast, gears, trued tyres and width. */
    private static double bruteForceS(Build car, ClassLimits bounds) {
        double pinion = car.setUp().gears().pinionTeeth().value();
        double axle = car.setUp().gears().axleTeeth().value();
        double rear = car.setUp().chassis().rearTrackMm().value();
        double front = car.setUp().chassis().frontTrackMm().value();
        double diameter = car.setUp().rearTyre().diameterMm().value();
        double best = lapS(car, LEFT);
        for (double mass : new double[] {0, 5, 10, 15}) {
            for (double x : new double[] {-8, 10, 40, 80}) {
                for (double y : new double[] {-20, 0, 20}) {
                    for (int teeth = -3; teeth <= 3; teeth += 1) {
                        for (double less : new double[] {0, 0.8}) {
                            List<Change> changes = new ArrayList<>();
                            if (mass > 0) {
                                changes.add(new BallastChange.Added(new Ballast(
                                        "lead",
                                        Reading.exact(mass),
                                        Reading.exact(x),
                                        Reading.exact(y),
                                        Reading.exact(3))));
                            }
                            changes.add(
                                    new ChassisChange.TrackWidth(Reading.exact(rear + 2), Reading.exact(front + 2)));
                            changes.add(
                                    new DriveChange.GearsFitted(Reading.exact(pinion + teeth), Reading.exact(axle)));
                            if (less > 0) {
                                changes.add(new TyreChange.Trued(Reading.exact(diameter - less)));
                            }
                            Build build = applied(car, changes);
                            if (bounds.allow(build)) {
                                best = Math.min(best, lapS(build, LEFT));
                            }
                        }
                    }
                }
            }
        }
        return best;
    }

    @Test
    void nothingOfACoarseGridIsFaster() {
        Build car = car();
        BestSetUp.Found found = found(car, LEFT, List.of(), ClassLimits.NONE);
        assertThat(found.lapS()).isLessThan(found.wasS() - 0.01);
        assertThat(found.lapS()).isLessThanOrEqualTo(bruteForceS(car, ClassLimits.NONE) + 0.001);
        // The lap that it tells is the lap of the car with its changes.
        assertThat(lapS(applied(car, found.changes()), LEFT)).isCloseTo(found.lapS(), within(1e-9));
        assertThat(found.wasS()).isCloseTo(lapS(car, LEFT), within(1e-9));
        assertThat(found(car, LEFT, List.of(), ClassLimits.NONE)).isEqualTo(found);
    }

    @Test
    void rulesAreKept() {
        Build car = car();
        double mass = car.setUp().massProperties().totalG();
        double width = Math.max(
                car.setUp().chassis().rearTrackMm().value(),
                car.setUp().chassis().frontTrackMm().value());
        ClassLimits tight = new ClassLimits(
                Map.of(
                        ClassNumber.LEAST_MASS,
                        mass - 1,
                        ClassNumber.MOST_MASS,
                        mass + 2.2,
                        ClassNumber.MOST_WIDTH,
                        width + 1),
                false,
                Map.of());
        BestSetUp.Found found = found(car, LEFT, List.of(), tight);
        Build after = applied(car, found.changes());
        assertThat(tight.allow(after)).isTrue();
        assertThat(after.setUp().massProperties().totalG()).isLessThanOrEqualTo(mass + 2.2);
        assertThat(found.lapS()).isLessThanOrEqualTo(bruteForceS(car, tight) + 0.001);
        assertThat(found.lapS())
                .isGreaterThan(found(car, LEFT, List.of(), ClassLimits.NONE).lapS());
    }

    @Test
    void ofTheShelfTheBetterPartIsTaken() {
        Build car = car();
        List<Change> shelf = List.of(tyres("hard", 0.9), tyres("soft", 1.2), tyres("medium", 1.1));
        BestSetUp.Found found = found(car, BOTH, shelf, ClassLimits.NONE);
        assertThat(found.changes())
                .filteredOn(change -> change.kind() == ChangeKind.TYRES_FITTED)
                .singleElement()
                .satisfies(change -> assertThat(change.sentence(car)).contains("soft"));
    }

    private static Change tyres(String name, double grip) {
        return new TyreChange.Fitted(name, new RearTyre(Reading.exact(20), Reading.exact(grip)), Optional.empty());
    }

    @Test
    void stepsAddUpAndTheBestForItsWorkComesFirst() {
        Build car = car();
        BestSetUp.Found found = found(car, BOTH, List.of(), ClassLimits.NONE);
        List<BestSteps.Step> steps = BestSteps.of(car, found.changes(), BOTH, ClassLimits.NONE, 40, 1);
        assertThat(steps).hasSameSizeAs(found.changes());
        double sum = steps.stream().mapToDouble(BestSteps.Step::gainS).sum();
        assertThat(sum).isCloseTo(found.wasS() - found.lapS(), within(1e-6));
        assertThat(steps.get(steps.size() - 1).lapS()).isCloseTo(found.lapS(), within(1e-6));
        double first = steps.get(0).gainS() / steps.get(0).minutes();
        for (Change change : found.changes()) {
            double alone = found.wasS() - lapS(change.apply(car), BOTH);
            assertThat(alone / Effort.of(change.kind()).minutes()).isLessThanOrEqualTo(first + 1e-9);
        }
        BestSteps.Step last = steps.get(steps.size() - 1);
        assertThat(last.allGainS().low()).isLessThan(found.wasS() - found.lapS());
        assertThat(last.allGainS().high()).isGreaterThan(found.wasS() - found.lapS());
        assertThat(last.chance()).isBetween(0.9, 1.0);
    }

    @Test
    void whoeverLooksOnMayEndIt() {
        List<Integer> seen = new ArrayList<>();
        BestSetUp.Found found = new BestSetUp(car(), LEFT, List.of(), ClassLimits.NONE)
                .search(MOST, 1, (predictions, lapS) -> {
                    seen.add(predictions);
                    return predictions < 500;
                });
        assertThat(found.predictions()).isEqualTo(500);
        assertThat(found.lapS()).isLessThanOrEqualTo(found.wasS());
        assertThat(seen).isSorted();
    }

    @Test
    void withoutALaneThereIsNoSearch() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BestSetUp(car(), List.of(), List.of(), ClassLimits.NONE))
                .withMessageContaining("at least one");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Course(TRACK, new Lane("third", 0)))
                .withMessage("loop has no lane 'third'");
    }

    @Test
    void aCarThatNothingBringsWithinTheRulesIsSaidToBeSo() {
        ClassLimits impossible = new ClassLimits(Map.of(ClassNumber.MOST_MASS, 1.0), true, Map.of());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> found(car(), LEFT, List.of(), impossible))
                .withMessageContaining("breaks a rule of the class as it is");
    }

    /** Too heavy as it is, with a piece of ballast that can come off: the search finds its way back within the rules. */
    @Test
    void aCarThatBreaksARuleIsBroughtWithinIt() {
        Build car = car();
        Ballast lead = new Ballast("lead", Reading.exact(10), Reading.exact(30), Reading.exact(0), Reading.exact(3));
        Build heavy = new BallastChange.Added(lead).apply(car);
        double mass = car.setUp().massProperties().totalG();
        ClassLimits bounds = new ClassLimits(Map.of(ClassNumber.MOST_MASS, mass + 1), true, Map.of());
        BestSetUp.Found found = found(heavy, LEFT, List.of(), bounds);
        assertThat(bounds.allow(applied(heavy, found.changes()))).isTrue();
        assertThat(BestSteps.of(heavy, found.changes(), LEFT, bounds, 10, 1)).hasSameSizeAs(found.changes());
    }
}
