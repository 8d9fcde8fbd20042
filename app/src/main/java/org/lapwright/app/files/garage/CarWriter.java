package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Drag;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.units.Readings;

/** Brings the JSON of a car file up to a set-up, touching only what is different. */
final class CarWriter {
    private CarWriter() {}

    static ObjectNode updated(ObjectNode json, SetUp setUp) {
        JsonPart car = new JsonPart(json);
        car.text("format", CarFile.FORMAT);
        car.text("name", setUp.name());
        JsonPart chassis = car.child("chassis");
        chassis.readings(setUp.chassis().readings());
        chassis.text("front_wheels", setUp.chassis().frontWheels().word());
        mass(car.child("mass"), setUp.mass());
        ballast(json, setUp.ballast());
        car.child("guide").readings(setUp.guide().readings());
        car.child("rear_tyre").readings(setUp.rearTyre().readings());
        car.child("gears").readings(setUp.gears().readings());
        JsonPart motor = car.child("motor");
        motor.readings(setUp.motor().readings());
        motor.dropUnless(setUp.motor().readings(), List.of(Motor.STALL_TORQUE, Motor.STALL_CURRENT));
        magnet(car, setUp.magnet());
        if (json.has("drag") || !setUp.drag().equals(Drag.NONE)) {
            car.child("drag").readings(setUp.drag().readings());
        }
        car.readingUnlessZero(SetUp.PICKUP.name(), setUp.pickupOhm());
        return json;
    }

    private static void mass(JsonPart mass, WeighedCar weighed) {
        Readings numbers = weighed.readings();
        for (String key : numbers.names()) {
            if (key.equals(WeighedCar.CG_LEFT.name())) {
                mass.readingUnlessZero(key, numbers.get(key));
            } else {
                mass.reading(key, numbers.get(key));
            }
        }
        mass.dropUnless(numbers, List.of(WeighedCar.CG_AHEAD, WeighedCar.YAW_INERTIA));
        if (weighed.scales().isPresent()) {
            mass.child("scales").readings(weighed.scales().get());
        } else {
            mass.drop("scales");
        }
    }

    private static void magnet(JsonPart car, Optional<Magnet> magnet) {
        if (magnet.isPresent()) {
            car.child("magnet").readings(magnet.get().readings());
        } else {
            car.drop("magnet");
        }
    }

    /** Each piece goes on in the entry that has its name, so that what else the entry says stays with it. */
    private static void ballast(ObjectNode json, List<Ballast> pieces) {
        if (pieces.isEmpty() && !json.has("ballast")) {
            return;
        }
        ArrayNode before = json.withArrayProperty("ballast").deepCopy();
        ArrayNode after = json.putArray("ballast");
        for (Ballast piece : pieces) {
            ObjectNode entry = Entries.takeOut(before, piece.name(), CarReader.UNNAMED_BALLAST)
                    .orElseGet(json::objectNode);
            JsonPart part = new JsonPart(entry);
            if (entry.has("name") || !piece.name().equals(CarReader.UNNAMED_BALLAST)) {
                part.text("name", piece.name());
            }
            part.readings(piece.readings());
            after.add(entry);
        }
    }
}
