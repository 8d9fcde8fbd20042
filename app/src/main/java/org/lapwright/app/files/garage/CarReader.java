package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Drag;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Guide;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Trim;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/** Reads a car file, all of it, and names everything that is wrong in it. */
final class CarReader {
    /** What a piece of ballast is called that has no name. */
    static final String UNNAMED_BALLAST = "ballast";

    private CarReader() {}

    static FileReading<CarFile> read(String text) {
        Document.Read document = Document.read(text, CarFile.FORMAT);
        if (document.problem().isPresent()) {
            return FileReading.refused(document.problem().get());
        }
        ObjectNode json = document.object().orElseThrow();
        Findings findings = new Findings();
        Optional<Build> build = build(new JsonSection("", json, findings));
        return new FileReading<>(
                build.map(read -> new CarFile(read, json)),
                build.isPresent() ? List.of() : findings.problems(),
                findings.notes());
    }

    private static Optional<Build> build(JsonSection car) {
        car.text("format");
        car.texts(CarRemarks.NOT_MEASURED);
        String name = car.requiredText("name", "Dunlin");
        Optional<Chassis> chassis = chassis(car.requiredChild("chassis"));
        Optional<WeighedCar> mass = mass(car.requiredChild("mass"));
        List<Ballast> ballast = ballast(car.children("ballast"));
        Optional<Guide> guide = car.requiredChild("guide").build(Guide.KEYS, Guide::of);
        Optional<RearTyre> tyre = car.requiredChild("rear_tyre").build(RearTyre.KEYS, RearTyre::of);
        Optional<Gears> gears = car.requiredChild("gears").build(Gears.KEYS, Gears::of);
        Optional<Motor> motor = car.requiredChild("motor").build(Motor.KEYS, Motor::of);
        Optional<Magnet> magnet = car.child("magnet").flatMap(section -> section.build(Magnet.KEYS, Magnet::of));
        Drag drag = car.child("drag")
                .flatMap(section -> section.build(Drag.KEYS, Drag::of))
                .orElse(Drag.NONE);
        Reading pickup = car.readings(List.of(SetUp.PICKUP)).orZero(SetUp.PICKUP);
        Optional<Trim> trim = TrimJson.read(car);
        return car.build(() -> new Build(
                new SetUp(
                        name,
                        chassis.orElseThrow(),
                        mass.orElseThrow(),
                        ballast,
                        guide.orElseThrow(),
                        tyre.orElseThrow(),
                        gears.orElseThrow(),
                        motor.orElseThrow(),
                        magnet,
                        drag,
                        pickup),
                trim.orElseThrow()));
    }

    private static Optional<Chassis> chassis(JsonSection section) {
        Readings numbers = section.readings(Chassis.KEYS);
        String word = section.requiredText("front_wheels", FrontWheels.TOUCHING.word());
        return section.build(() -> Chassis.of(numbers, FrontWheels.of(word)));
    }

    private static Optional<WeighedCar> mass(JsonSection section) {
        Readings numbers = section.readings(WeighedCar.KEYS);
        Optional<Readings> scales =
                section.child("scales").flatMap(inner -> inner.build(WeighedCar.SCALE_KEYS, weights -> weights));
        return section.build(() -> WeighedCar.of(numbers, scales));
    }

    private static List<Ballast> ballast(List<JsonSection> sections) {
        List<Ballast> pieces = new ArrayList<>();
        for (JsonSection section : sections) {
            String name = section.text("name").orElse(UNNAMED_BALLAST);
            section.build(Ballast.KEYS, numbers -> Ballast.of(name, numbers)).ifPresent(pieces::add);
        }
        return pieces;
    }
}
