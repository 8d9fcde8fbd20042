package org.lapwright.core.car.history;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.PartPlace;
import org.lapwright.core.car.change.Trim;
import org.lapwright.core.units.Reading;

/** What two cars, or one car at two times, have otherwise. Rows that are alike are left out. */
public final class Differences {
    private Differences() {}

    /** The rows, in the order of the car file. Ballast goes by its name, so that a piece gone shifts no other. */
    public static List<Difference> between(Build before, Build after) {
        Map<String, Row> left = rows(before);
        Map<String, Row> right = rows(after);
        Set<String> paths = new LinkedHashSet<>(left.keySet());
        paths.addAll(right.keySet());
        List<Difference> found = new ArrayList<>();
        for (String path : paths) {
            Optional<Row> was = Optional.ofNullable(left.get(path));
            Optional<Row> is = Optional.ofNullable(right.get(path));
            if (!was.equals(is)) {
                String unit = was.or(() -> is).map(Row::unit).orElse("");
                found.add(new Difference(path, unit, was.map(Row::side), is.map(Row::side)));
            }
        }
        return found;
    }

    private record Row(String unit, Difference.Side side) {
        static Row number(String unit, Reading reading) {
            return new Row(unit, new Difference.Side.Number(reading));
        }

        static Row word(String text) {
            return new Row("", new Difference.Side.Word(text));
        }
    }

    private static Map<String, Row> rows(Build build) {
        Map<String, Row> rows = new LinkedHashMap<>();
        SetUp setUp = build.setUp();
        for (NamedReading number : setUp.numbers()) {
            if (!number.path().startsWith("ballast[")) {
                rows.put(number.path(), Row.number(number.key().unit(), number.reading()));
            }
        }
        rows.put("chassis.front_wheels", Row.word(setUp.chassis().frontWheels().word()));
        addBallast(rows, setUp.ballast());
        addTrim(rows, build.trim());
        return rows;
    }

    private static void addBallast(Map<String, Row> rows, List<Ballast> pieces) {
        for (Ballast piece : pieces) {
            String place = "ballast " + piece.name();
            for (int k = 2; rows.containsKey(place + " " + Ballast.MASS.name()); k++) {
                place = "ballast " + piece.name() + " " + k;
            }
            for (String key : piece.readings().names()) {
                rows.put(
                        place + " " + key,
                        Row.number(
                                piece.readings().keyOf(key).unit(),
                                piece.readings().get(key)));
            }
        }
    }

    private static void addTrim(Map<String, Row> rows, Trim trim) {
        if (!trim.shimsMm().isEmpty()) {
            rows.put("shims under the guide", Row.number("mm", Reading.exact(trim.shimStackMm())));
        }
        if (trim.frontGapMm().isPresent()) {
            rows.put(
                    "front wheels above the track",
                    Row.number("mm", Reading.exact(trim.frontGapMm().getAsDouble())));
        }
        if (trim.bodyTurns().isPresent()) {
            rows.put(
                    "turns of the body screws",
                    Row.number("", Reading.exact(trim.bodyTurns().getAsDouble())));
        }
        for (PartPlace place : PartPlace.values()) {
            trim.fittedAt(place).ifPresent(name -> rows.put(place.label(), Row.word(name)));
        }
    }
}
