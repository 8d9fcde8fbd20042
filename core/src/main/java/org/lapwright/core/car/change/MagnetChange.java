package org.lapwright.core.car.change;

import java.util.Optional;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.units.Reading;

/** A magnet goes in, elsewhere, or out. */
public sealed interface MagnetChange extends Change {
    /**
     * A magnet fitted, or the one there put at another height or place.
     *
     * @param name what the racer calls it; may be empty
     * @param magnet its pull at the height it has now, and where it acts
     * @param heavierG how much the car is heavier for it
     */
    record Fitted(String name, Magnet magnet, Optional<Reading> heavierG) implements MagnetChange {
        static Fitted of(Values values) {
            return new Fitted(
                    values.text(ChangeKeys.NAME),
                    new Magnet(values.require(Magnet.DOWNFORCE), values.require(Magnet.X)),
                    values.find(ChangeKeys.HEAVIER));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.MAGNET_FITTED;
        }

        @Override
        public Values values() {
            return Values.NONE
                    .with(ChangeKeys.NAME, name)
                    .with(Magnet.DOWNFORCE, magnet.downforceG())
                    .with(Magnet.X, magnet.xMm())
                    .with(ChangeKeys.HEAVIER, heavierG);
        }

        @Override
        public Build apply(Build before) {
            Build fitted = new Build(
                    before.setUp().withMagnet(Optional.of(magnet)),
                    before.trim().withFitted(PartPlace.MAGNET, name));
            return PartMass.added(
                    fitted, PartMass.MAGNET, heavierG, magnet.xMm().value(), LOW_MM);
        }

        @Override
        public String sentence(Build before) {
            String verb = before.setUp().magnet().isPresent() ? "set" : "fitted";
            return "magnet%s %s, pull %s g".formatted(Say.named(name), verb, Say.number(magnet.downforceG()));
        }
    }

    /**
     * The magnet taken out.
     *
     * @param massG what it weighs, if known
     */
    record Removed(Optional<Reading> massG) implements MagnetChange {
        static Removed of(Values values) {
            return new Removed(values.find(ChangeKeys.MASS));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.MAGNET_REMOVED;
        }

        @Override
        public Values values() {
            return Values.NONE.with(ChangeKeys.MASS, massG);
        }

        @Override
        public Build apply(Build before) {
            Magnet was = before.setUp()
                    .magnet()
                    .orElseThrow(() ->
                            new IllegalArgumentException("no magnet is noted on the car; there is none to take out"));
            Build without = new Build(
                    before.setUp().withMagnet(Optional.empty()), before.trim().withFitted(PartPlace.MAGNET, ""));
            if (massG.isEmpty()) {
                return without;
            }
            Reading gone = new Reading(-massG.get().value(), massG.get().plusMinus());
            return without.plus(
                    new Ballast(PartMass.MAGNET_OUT, gone, was.xMm(), Reading.exact(0), Reading.exact(LOW_MM)));
        }

        @Override
        public String sentence(Build before) {
            return "magnet taken out";
        }
    }

    /** Magnets sit just above the rails (common practice, no source). */
    double LOW_MM = 2;
}
