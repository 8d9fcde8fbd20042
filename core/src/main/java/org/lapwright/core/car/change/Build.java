package org.lapwright.core.car.change;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.units.Reading;

/**
 * A car as it stands: its set-up, and what is adjustable beside it.
 *
 * @param setUp the numbers that physics reckons with
 * @param trim the rest
 */
public record Build(SetUp setUp, Trim trim) {
    /** A set-up with nothing else noted. */
    public static Build of(SetUp setUp) {
        return new Build(setUp, Trim.NONE);
    }

    /** A copy with another set-up. */
    public Build with(SetUp other) {
        return new Build(other, trim);
    }

    /** A copy with another trim. */
    public Build with(Trim other) {
        return new Build(setUp, other);
    }

    /**
     * The car after some changes, in their order.
     *
     * @throws IllegalArgumentException if one of them cannot be done to what the others leave
     */
    public Build after(List<? extends Change> changes) {
        Build build = this;
        for (Change change : changes) {
            build = change.apply(build);
        }
        return build;
    }

    /** The ballast that can be moved or taken off: what a swapped part weighs more or less is none. */
    public List<Ballast> looseBallast() {
        return setUp.ballast().stream()
                .filter(piece -> piece.massG().value() > 0 && !PartMass.isOne(piece))
                .toList();
    }

    /** A copy with one more piece of ballast, under a name that no other piece has. */
    Build plus(Ballast piece) {
        List<Ballast> pieces = new ArrayList<>(setUp.ballast());
        pieces.add(new Ballast(freeName(piece.name()), piece.massG(), piece.xMm(), piece.yMm(), piece.zMm()));
        return with(setUp.withBallast(pieces));
    }

    /**
     * The car when its guide end stands {@code noseMm} higher and its rear axle {@code tailMm}: everything between is raised in
     * proportion to where it sits, the front gap with it.
     */
    Build raised(double noseMm, double tailMm) {
        Chassis chassis = setUp.chassis();
        double length = chassis.guideToRearAxleMm().value();
        WeighedCar mass = setUp.mass();
        double centre = mass.balance().aheadOfRearAxleMm(length);
        Reading height = mass.cgHeightMm();
        WeighedCar lifted = new WeighedCar(
                mass.totalG(),
                mass.balance(),
                mass.cgLeftMm(),
                height.withValue(height.value() + riseMm(centre, length, noseMm, tailMm)),
                mass.yawInertiaGmm2());
        List<Ballast> pieces = setUp.ballast().stream()
                .map(piece -> lifted(piece, riseMm(piece.xMm().value(), length, noseMm, tailMm)))
                .toList();
        double front = riseMm(chassis.wheelbaseMm().value(), length, noseMm, tailMm);
        OptionalDouble gap = trim.frontGapMm().isPresent()
                ? OptionalDouble.of(trim.frontGapMm().getAsDouble() + front)
                : OptionalDouble.empty();
        return new Build(setUp.withMass(lifted).withBallast(pieces), trim).withFrontGap(gap);
    }

    /** A copy with other shims noted. */
    Build withShims(List<Double> shimsMm) {
        return with(trim.withShims(shimsMm));
    }

    /** A copy with another front gap, which says whether the front wheels touch. */
    public Build withFrontGap(OptionalDouble gapMm) {
        Trim other = trim.withFrontGap(gapMm);
        if (gapMm.isEmpty()) {
            return with(other);
        }
        FrontWheels wheels = gapMm.getAsDouble() > Trim.JUST_TOUCHING_MM ? FrontWheels.CLEAR : FrontWheels.TOUCHING;
        Chassis chassis = setUp.chassis();
        return new Build(
                setUp.withChassis(new Chassis(
                        chassis.guideToRearAxleMm(),
                        chassis.wheelbaseMm(),
                        chassis.rearTrackMm(),
                        chassis.frontTrackMm(),
                        wheels)),
                other);
    }

    private static double riseMm(double aheadMm, double lengthMm, double noseMm, double tailMm) {
        return tailMm + (noseMm - tailMm) * aheadMm / lengthMm;
    }

    /** A piece cannot sink into the track. */
    private static Ballast lifted(Ballast piece, double riseMm) {
        double z = Math.max(0, piece.zMm().value() + riseMm);
        return new Ballast(
                piece.name(),
                piece.massG(),
                piece.xMm(),
                piece.yMm(),
                piece.zMm().withValue(z));
    }

    private String freeName(String wanted) {
        String name = wanted;
        for (int k = 2; isTaken(name); k++) {
            name = wanted + " " + k;
        }
        return name;
    }

    private boolean isTaken(String name) {
        return setUp.ballast().stream().anyMatch(piece -> piece.name().equals(name));
    }
}
