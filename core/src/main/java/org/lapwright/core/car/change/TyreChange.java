package org.lapwright.core.car.change;

import java.util.Optional;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.units.Reading;

/** Other rear tyres, or the same ones ground true. The tail rises or sinks by half the difference in diameter. */
public sealed interface TyreChange extends Change {
    /**
     * Other tyres.
     *
     * @param name what the racer calls them; may be empty
     * @param tyre their numbers
     * @param heavierG how much more both weigh than those that came off
     */
    record Fitted(String name, RearTyre tyre, Optional<Reading> heavierG) implements TyreChange {
        static Fitted of(Values values) {
            return new Fitted(
                    values.text(ChangeKeys.NAME),
                    new RearTyre(values.require(RearTyre.DIAMETER), values.require(RearTyre.GRIP)),
                    values.find(ChangeKeys.HEAVIER));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.TYRES_FITTED;
        }

        @Override
        public Values values() {
            return Values.NONE
                    .with(ChangeKeys.NAME, name)
                    .with(RearTyre.DIAMETER, tyre.diameterMm())
                    .with(RearTyre.GRIP, tyre.grip())
                    .with(ChangeKeys.HEAVIER, heavierG);
        }

        @Override
        public Build apply(Build before) {
            Build fitted = resized(before, tyre);
            fitted = fitted.with(fitted.trim().withFitted(PartPlace.REAR_TYRES, name));
            return PartMass.added(
                    fitted, PartMass.TYRES, heavierG, 0, tyre.diameterMm().value() / 2);
        }

        @Override
        public String sentence(Build before) {
            return "tyres%s fitted, %s mm, grip %s"
                    .formatted(Say.named(name), Say.number(tyre.diameterMm()), Say.number(tyre.grip()));
        }
    }

    /**
     * The same tyres ground true.
     *
     * @param diameterMm diameter after
     */
    record Trued(Reading diameterMm) implements TyreChange {
        static Trued of(Values values) {
            return new Trued(values.require(RearTyre.DIAMETER));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.TYRES_TRUED;
        }

        @Override
        public Values values() {
            return Values.NONE.with(RearTyre.DIAMETER, diameterMm);
        }

        @Override
        public Build apply(Build before) {
            RearTyre was = before.setUp().rearTyre();
            if (diameterMm.value() >= was.diameterMm().value()) {
                throw new IllegalArgumentException(
                        "diameter_mm is %s mm, but the tyres have %s mm and truing makes them smaller; give less, or say that other tyres were fitted"
                                .formatted(Say.number(diameterMm), Say.number(was.diameterMm())));
            }
            return resized(before, new RearTyre(diameterMm, was.grip()));
        }

        @Override
        public String sentence(Build before) {
            return "tyres trued from %s to %s mm"
                    .formatted(Say.number(before.setUp().rearTyre().diameterMm()), Say.number(diameterMm));
        }
    }

    private static Build resized(Build before, RearTyre tyre) {
        double rise = (tyre.diameterMm().value()
                        - before.setUp().rearTyre().diameterMm().value())
                / 2;
        return before.with(before.setUp().withRearTyre(tyre)).raised(0, rise);
    }
}
