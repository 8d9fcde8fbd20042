package org.lapwright.app.web.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.CarRemarks;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.units.NumberKey;

/**
 * A car as typed.
 *
 * @param name of the car
 * @param scale what a full-size length is divided by; {@code other} when it is another or unknown
 * @param frontWheels {@code touching}, {@code clear}, or empty when nobody looked
 * @param numbers what was typed by the place of the number
 * @param ballast pieces
 */
public record CarForm(
        String name, String scale, String frontWheels, Map<String, Typed> numbers, List<BallastFields> ballast) {
    /** Where whether the front wheels touch stands in the file. */
    static final String FRONT_WHEELS = "chassis.front_wheels";

    static final String OTHER_SCALE = "other";
    static final String DOUBT = ".plus_minus";

    private static final int LONGEST_NAME = 200;
    private static final int EMPTY_ROWS = 2;
    private static final int MOST_ROWS = 202;

    /** Copies map and list. */
    public CarForm {
        numbers = Map.copyOf(numbers);
        ballast = List.copyOf(ballast);
    }

    /**
     * A piece of ballast as typed.
     *
     * @param name what it is called
     * @param numbers what was typed by the name of the number
     */
    record BallastFields(String name, Map<String, Typed> numbers) {
        BallastFields {
            numbers = Map.copyOf(numbers);
        }

        static BallastFields empty() {
            return new BallastFields("", Map.of());
        }

        boolean isBlank() {
            return name.isBlank() && numbers.values().stream().allMatch(typed -> typed.equals(Typed.NOTHING));
        }

        Typed typed(NumberKey key) {
            return numbers.getOrDefault(key.name(), Typed.NOTHING);
        }
    }

    /** Nothing typed yet. */
    public static CarForm empty() {
        return new CarForm("", "32", "", Map.of(), rows(List.of()));
    }

    /** As posted. */
    public static CarForm from(Fields fields) {
        Map<String, Typed> numbers = new LinkedHashMap<>();
        CarKeys.all().map(NumberKey::path).forEach(path -> numbers.put(path, typed(fields, path)));
        List<BallastFields> pieces = new ArrayList<>();
        for (int i = 0; i < MOST_ROWS && fields.has("ballast-" + i + ".name"); i++) {
            Map<String, Typed> piece = new LinkedHashMap<>();
            for (NumberKey key : Ballast.KEYS) {
                piece.put(key.name(), typed(fields, "ballast-" + i + "." + key.name()));
            }
            pieces.add(new BallastFields(shortened(fields.text("ballast-" + i + ".name")), piece));
        }
        return new CarForm(
                shortened(fields.text("name")),
                fields.text("scale"),
                fields.text(FRONT_WHEELS),
                numbers,
                rows(pieces.stream().filter(piece -> !piece.isBlank()).toList()));
    }

    /** A car that is on file; what nobody measured is left open, so that it follows what is measured now. */
    public static CarForm of(CarFile file) {
        SetUp car = file.setUp();
        CarRemarks remarks = file.remarks();
        Map<String, Typed> numbers = new LinkedHashMap<>();
        for (NamedReading number : car.numbers()) {
            if (!remarks.notMeasured().contains(number.path())) {
                numbers.put(number.path(), Typed.of(number.reading()));
            }
        }
        String scale =
                remarks.scale().isPresent() ? String.valueOf(remarks.scale().getAsInt()) : OTHER_SCALE;
        return new CarForm(
                car.name(),
                scale,
                remarks.notMeasured().contains(FRONT_WHEELS)
                        ? ""
                        : car.chassis().frontWheels().word(),
                numbers,
                rows(car.ballast().stream().map(CarForm::typed).toList()));
    }

    /** What was typed for a number. */
    Typed typed(NumberKey key) {
        return numbers.getOrDefault(key.path(), Typed.NOTHING);
    }

    private static Typed typed(Fields fields, String name) {
        return new Typed(fields.text(name), fields.text(name + DOUBT));
    }

    private static BallastFields typed(Ballast piece) {
        Map<String, Typed> numbers = new LinkedHashMap<>();
        for (NumberKey key : Ballast.KEYS) {
            numbers.put(key.name(), Typed.of(piece.readings().require(key)));
        }
        return new BallastFields(piece.name(), numbers);
    }

    private static List<BallastFields> rows(List<BallastFields> pieces) {
        List<BallastFields> rows = new ArrayList<>(pieces);
        for (int i = 0; i < EMPTY_ROWS; i++) {
            rows.add(BallastFields.empty());
        }
        return rows;
    }

    private static String shortened(String text) {
        return text.length() > LONGEST_NAME ? text.substring(0, LONGEST_NAME) : text;
    }
}
