package org.lapwright.core.car;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * The numbers of a set-up laid out in one row, in the order of the car file, and the way back from such a row to a set-up.
 * Laid out once, it makes many copies quickly.
 */
public final class NumberRow {
    private final SetUp setUp;
    private final Readings chassis;
    private final Readings mass;
    private final Optional<Readings> scales;
    private final List<Readings> ballast;
    private final Readings guide;
    private final Readings rearTyre;
    private final Readings gears;
    private final Readings motor;
    private final Optional<Readings> magnet;
    private final Readings drag;
    private final Readings pickup;
    private final List<NamedReading> all;

    /** Lays out the numbers of a set-up. */
    public NumberRow(SetUp setUp) {
        this.setUp = setUp;
        chassis = setUp.chassis().readings();
        mass = setUp.mass().readings();
        scales = setUp.mass().scales();
        ballast = setUp.ballast().stream().map(Ballast::readings).toList();
        guide = setUp.guide().readings();
        rearTyre = setUp.rearTyre().readings();
        gears = setUp.gears().readings();
        motor = setUp.motor().readings();
        magnet = setUp.magnet().map(Magnet::readings);
        drag = setUp.drag().readings();
        pickup = Readings.none().with(SetUp.PICKUP, setUp.pickupOhm());
        all = List.copyOf(laidOut());
    }

    /** Every number with its place. */
    public List<NamedReading> all() {
        return all;
    }

    /**
     * A copy with one number replaced.
     *
     * @param path its place, as {@link #all} gives it
     * @throws IllegalArgumentException if there is no such number, or the car would make no sense with it
     */
    public SetUp with(String path, Reading reading) {
        List<Reading> row =
                new ArrayList<>(all.stream().map(NamedReading::reading).toList());
        for (int i = 0; i < row.size(); i++) {
            if (all.get(i).path().equals(path)) {
                row.set(i, reading);
                return withAll(row);
            }
        }
        throw new IllegalArgumentException("the set-up has no number called " + path);
    }

    /**
     * A copy with all numbers replaced at once, so that only the car that comes out has to make sense.
     *
     * @param row as many as there are, in the order of {@link #all}
     * @throws IllegalArgumentException if their count is another, or the car would make no sense with them
     */
    public SetUp withAll(List<Reading> row) {
        if (row.size() != all.size()) {
            throw new IllegalArgumentException(
                    "%d numbers are to replace the %d of the set-up".formatted(row.size(), all.size()));
        }
        Cursor next = new Cursor(row);
        Chassis newChassis = Chassis.of(next.refill(chassis), setUp.chassis().frontWheels());
        WeighedCar newMass = WeighedCar.of(next.refill(mass), scales.map(next::refill));
        List<Ballast> newBallast = new ArrayList<>(ballast.size());
        for (int i = 0; i < ballast.size(); i++) {
            newBallast.add(Ballast.of(setUp.ballast().get(i).name(), next.refill(ballast.get(i))));
        }
        return new SetUp(
                setUp.name(),
                newChassis,
                newMass,
                newBallast,
                Guide.of(next.refill(guide)),
                RearTyre.of(next.refill(rearTyre)),
                Gears.of(next.refill(gears)),
                Motor.of(next.refill(motor)),
                magnet.map(numbers -> Magnet.of(next.refill(numbers))),
                Drag.of(next.refill(drag)),
                next.refill(pickup).require(SetUp.PICKUP));
    }

    private List<NamedReading> laidOut() {
        List<NamedReading> row = new ArrayList<>();
        lay(row, "chassis", chassis);
        lay(row, "mass", mass);
        scales.ifPresent(numbers -> lay(row, "mass.scales", numbers));
        for (int i = 0; i < ballast.size(); i++) {
            lay(row, "ballast[" + i + "]", ballast.get(i));
        }
        lay(row, "guide", guide);
        lay(row, "rear_tyre", rearTyre);
        lay(row, "gears", gears);
        lay(row, "motor", motor);
        magnet.ifPresent(numbers -> lay(row, "magnet", numbers));
        lay(row, "drag", drag);
        lay(row, "", pickup);
        return row;
    }

    private static void lay(List<NamedReading> row, String section, Readings numbers) {
        for (String name : numbers.names()) {
            String path = section.isEmpty() ? name : section + "." + name;
            row.add(new NamedReading(path, numbers.keyOf(name), numbers.get(name)));
        }
    }

    /** Hands the row out, section by section. */
    private static final class Cursor {
        private final List<Reading> row;
        private int next;

        Cursor(List<Reading> row) {
            this.row = row;
        }

        Readings refill(Readings section) {
            int from = next;
            next += section.names().size();
            return section.withAll(row.subList(from, next));
        }
    }
}
