package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.car.rules.ClassNumber;
import org.lapwright.core.car.rules.RaceClass;
import org.lapwright.core.car.rules.RaceClasses;

/**
 * The owner's classes, {@code lapwright-classes/1}: a list {@code classes}, each with its {@code name}, the limits it sets under the
 * names of {@link ClassNumber}, {@code "magnet": false} where none is allowed, lists of the parts allowed at a place (as
 * {@code rear_tyres}, {@code motor}), and the {@code cars} that are run in it.
 *
 * @param classes what it says
 */
public record ClassListFile(RaceClasses classes) {
    /** The format that this version reads and writes. */
    public static final String FORMAT = "lapwright-classes/1";

    private static final String MAGNET = "magnet";
    private static final String CARS = "cars";

    /** Reads a file. */
    public static FileReading<ClassListFile> read(String text) {
        return FileReading.of(text, FORMAT, ClassListFile::content);
    }

    private static Optional<ClassListFile> content(JsonSection file) {
        List<RaceClass> classes = new ArrayList<>();
        for (JsonSection section : file.children("classes")) {
            raceClass(section).ifPresent(classes::add);
        }
        return file.build(() -> new ClassListFile(new RaceClasses(classes)));
    }

    private static Optional<RaceClass> raceClass(JsonSection section) {
        String name = section.requiredText("name", "Club 32");
        Map<ClassNumber, Double> numbers = new EnumMap<>(ClassNumber.class);
        for (ClassNumber number : ClassNumber.values()) {
            section.number(number.key()).ifPresent(limit -> numbers.put(number, limit));
        }
        boolean magnet = section.flag(MAGNET).orElse(true);
        Map<PartPlace, List<String>> parts = new EnumMap<>(PartPlace.class);
        for (PartPlace place : PartPlace.values()) {
            // A magnet is allowed or not; which one, no class of home racers asks.
            if (place != PartPlace.MAGNET) {
                parts.put(place, section.texts(place.code()));
            }
        }
        List<String> cars = section.texts(CARS);
        return section.build(() -> new RaceClass(name, new ClassLimits(numbers, magnet, parts), cars));
    }

    /** The file's text. */
    public String text() {
        ObjectNode json = Document.empty();
        json.put("format", FORMAT);
        json.putArray("classes");
        for (RaceClass one : classes.classes()) {
            ObjectNode entry = json.withArrayProperty("classes").addObject();
            entry.put("name", one.name());
            one.limits()
                    .numbers()
                    .forEach((number, limit) ->
                            entry.set(number.key().name(), DecimalNode.valueOf(JsonPart.decimal(limit))));
            if (!one.limits().magnetAllowed()) {
                entry.put(MAGNET, false);
            }
            one.limits().parts().forEach((place, names) -> list(entry, place.code(), names));
            list(entry, CARS, one.cars());
        }
        return Document.text(json);
    }

    private static void list(ObjectNode entry, String key, List<String> names) {
        if (!names.isEmpty()) {
            names.forEach(entry.putArray(key)::add);
        }
    }
}
