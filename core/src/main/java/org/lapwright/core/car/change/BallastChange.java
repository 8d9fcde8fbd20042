package org.lapwright.core.car.change;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.units.Reading;

/** A piece of ballast comes on, goes elsewhere, or comes off. */
public sealed interface BallastChange extends Change {
    /**
     * A piece stuck on.
     *
     * @param piece what and where; on a car that has one of that name it gets a number
     */
    record Added(Ballast piece) implements BallastChange {
        /** Checks that it is no piece taken out. */
        public Added {
            ChangeKeys.MASS.check(piece.massG());
        }

        static Added of(Values values) {
            String name = values.text(ChangeKeys.NAME);
            return new Added(new Ballast(
                    name.isEmpty() ? "ballast" : name,
                    values.require(ChangeKeys.MASS),
                    values.require(ChangeKeys.X),
                    values.find(ChangeKeys.Y).orElse(Reading.exact(0)),
                    values.require(ChangeKeys.Z)));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.BALLAST_ADDED;
        }

        @Override
        public Values values() {
            return at(Values.NONE.with(ChangeKeys.NAME, piece.name()).with(ChangeKeys.MASS, piece.massG()), piece);
        }

        @Override
        public Build apply(Build before) {
            return before.plus(piece);
        }

        @Override
        public String sentence(Build before) {
            return "%s g added %s".formatted(Say.number(piece.massG()), Say.place(piece.xMm(), piece.yMm()));
        }
    }

    /**
     * A piece put elsewhere.
     *
     * @param piece its name
     * @param xMm ahead of the rear axle
     * @param yMm left of the centre line
     * @param zMm above the track
     */
    record Moved(String piece, Reading xMm, Reading yMm, Reading zMm) implements BallastChange {
        static Moved of(Values values) {
            return new Moved(
                    values.requireText(ChangeKeys.PIECE, "the name of the piece"),
                    values.require(ChangeKeys.X),
                    values.require(ChangeKeys.Y),
                    values.require(ChangeKeys.Z));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.BALLAST_MOVED;
        }

        @Override
        public Values values() {
            return Values.NONE
                    .with(ChangeKeys.PIECE, piece)
                    .with(ChangeKeys.X, xMm)
                    .with(ChangeKeys.Y, yMm)
                    .with(ChangeKeys.Z, zMm);
        }

        @Override
        public Build apply(Build before) {
            Ballast was = found(before, piece);
            return replaced(before, was, List.of(new Ballast(was.name(), was.massG(), xMm, yMm, zMm)));
        }

        @Override
        public String sentence(Build before) {
            return "%s g%s moved to %s"
                    .formatted(Say.number(found(before, piece).massG()), Say.named(piece), Say.place(xMm, yMm));
        }
    }

    /**
     * A piece taken off.
     *
     * @param piece its name
     */
    record Removed(String piece) implements BallastChange {
        static Removed of(Values values) {
            return new Removed(values.requireText(ChangeKeys.PIECE, "the name of the piece"));
        }

        @Override
        public ChangeKind kind() {
            return ChangeKind.BALLAST_REMOVED;
        }

        @Override
        public Values values() {
            return Values.NONE.with(ChangeKeys.PIECE, piece);
        }

        @Override
        public Build apply(Build before) {
            return replaced(before, found(before, piece), List.of());
        }

        @Override
        public String sentence(Build before) {
            return "%s g%s taken off".formatted(Say.number(found(before, piece).massG()), Say.named(piece));
        }
    }

    private static Values at(Values values, Ballast piece) {
        return values.with(ChangeKeys.X, piece.xMm())
                .with(ChangeKeys.Y, piece.yMm())
                .with(ChangeKeys.Z, piece.zMm());
    }

    private static Ballast found(Build build, String name) {
        return build.setUp().ballast().stream()
                .filter(piece -> piece.name().equals(name))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("piece is '%s', and no ballast on the car has that name; it has %s"
                                .formatted(
                                        name,
                                        build.setUp().ballast().isEmpty()
                                                ? "none"
                                                : String.join(
                                                        ", ",
                                                        build.setUp().ballast().stream()
                                                                .map(Ballast::name)
                                                                .toList()))));
    }

    private static Build replaced(Build before, Ballast was, List<Ballast> by) {
        List<Ballast> pieces = new ArrayList<>(before.setUp().ballast());
        int place = pieces.indexOf(was);
        pieces.remove(place);
        pieces.addAll(place, by);
        return before.with(before.setUp().withBallast(pieces));
    }
}
