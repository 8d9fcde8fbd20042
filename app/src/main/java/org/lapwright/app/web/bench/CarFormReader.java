package org.lapwright.app.web.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.CarRemarks;
import org.lapwright.app.usecase.physics.NumberWords;
import org.lapwright.app.web.bench.CarForm.BallastFields;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.Drag;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.Gears;
import org.lapwright.core.car.Guide;
import org.lapwright.core.car.Magnet;
import org.lapwright.core.car.ModelScale;
import org.lapwright.core.car.Motor;
import org.lapwright.core.car.RearTyre;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.UsualNumbers;
import org.lapwright.core.car.WeighedCar;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/** Makes a car of what was typed: all that is wrong is found at once, and usual numbers stand in for what is left open. */
public final class CarFormReader {
    private final CarForm form;
    private final Map<String, String> problems = new LinkedHashMap<>();
    private final List<String> notices = new ArrayList<>();
    private final Map<String, Reading> readings = new LinkedHashMap<>();
    private final Set<String> notMeasured = new TreeSet<>();

    private CarFormReader(CarForm form) {
        this.form = form;
    }

    /**
     * Reads a form.
     *
     * @param form as typed
     * @param before the file that the car has; what else it says is kept
     */
    public static CarReading read(CarForm form, Optional<CarFile> before) {
        return new CarFormReader(form).read(before);
    }

    private CarReading read(Optional<CarFile> before) {
        String name = name();
        CarKeys.all().forEach(key -> take(key.path(), key, form.typed(key)));
        CarKeys.NEEDED.keys().forEach(this::require);
        either();
        List<Ballast> ballast = ballast();
        if (!problems.isEmpty()) {
            return new CarReading(Optional.empty(), problems, notices);
        }
        fill();
        try {
            SetUp car = car(name, ballast);
            CarFile file = before.map(kept -> kept.with(car)).orElseGet(() -> CarFile.of(car));
            return new CarReading(
                    Optional.of(file.with(new CarRemarks(scale(before), notMeasured))), problems, notices);
        } catch (IllegalArgumentException impossible) {
            explain(String.valueOf(impossible.getMessage()));
            return new CarReading(Optional.empty(), problems, notices);
        }
    }

    private String name() {
        try {
            return Check.text(form.name(), 80, "the name");
        } catch (IllegalArgumentException wrong) {
            problems.put("name", sentence(wrong));
            return "";
        }
    }

    private void take(String field, NumberKey key, Typed typed) {
        try {
            typed.reading(key).ifPresent(reading -> readings.put(field, reading));
        } catch (IllegalArgumentException wrong) {
            problems.put(field, sentence(wrong));
        }
    }

    private void require(NumberKey key) {
        if (!readings.containsKey(key.path()) && !problems.containsKey(key.path())) {
            problems.put(key.path(), "This number is needed; give one " + key.range() + ".");
        }
        Reading teeth = readings.get(key.path());
        if (teeth != null && key.name().endsWith("_teeth") && teeth.value() != Math.rint(teeth.value())) {
            problems.put(key.path(), "Teeth are counted; give a whole number " + key.range() + ".");
        }
    }

    /** Pairs of which one, both or none may be there. */
    private void either() {
        boolean guide = has(WeighedCar.GUIDE_SCALE);
        if (guide != has(WeighedCar.REAR_SCALE)) {
            missing(
                    guide ? WeighedCar.REAR_SCALE : WeighedCar.GUIDE_SCALE,
                    "Give what the other scale shows as well, or empty both.");
        } else if (guide && has(WeighedCar.CG_AHEAD)) {
            missing(WeighedCar.CG_AHEAD, "The two scales say this already; keep the one that you trust.");
        }
        if (has(Motor.STALL_TORQUE) && has(Motor.STALL_CURRENT)) {
            missing(Motor.STALL_CURRENT, "There is a stall torque already; keep the one that was measured.");
        }
        if (has(Magnet.DOWNFORCE) != has(Magnet.X)) {
            missing(
                    has(Magnet.DOWNFORCE) ? Magnet.X : Magnet.DOWNFORCE,
                    "A magnet needs its pull and its place; give both, or empty both.");
        }
    }

    private void missing(NumberKey key, String sentence) {
        problems.putIfAbsent(key.path(), sentence);
    }

    private List<Ballast> ballast() {
        List<Ballast> pieces = new ArrayList<>();
        for (int i = 0; i < form.ballast().size(); i++) {
            BallastFields typed = form.ballast().get(i);
            if (!typed.isBlank()) {
                piece(i, typed).ifPresent(pieces::add);
            }
        }
        return pieces;
    }

    private Optional<Ballast> piece(int row, BallastFields typed) {
        int before = problems.size();
        Readings numbers = Readings.none();
        for (NumberKey key : Ballast.KEYS) {
            String field = "ballast-" + row + "." + key.name();
            take(field, key, typed.typed(key));
            if (!readings.containsKey(field) && !problems.containsKey(field)) {
                problems.put(field, "Give a number " + key.range() + ", or empty the whole row to take the piece out.");
            }
            numbers = numbers.with(key, Optional.ofNullable(readings.get(field)));
        }
        if (problems.size() > before) {
            return Optional.empty();
        }
        try {
            String name = typed.name().isBlank() ? "ballast" : typed.name();
            return Optional.of(Ballast.of(name, numbers));
        } catch (IllegalArgumentException wrong) {
            problems.put("ballast-" + row + ".name", sentence(wrong));
            return Optional.empty();
        }
    }

    /** Usual numbers for what nobody measured. */
    private void fill() {
        UsualNumbers usual = UsualNumbers.of(
                modelScale(),
                new UsualNumbers.Measured(
                        value(WeighedCar.TOTAL),
                        value(Chassis.GUIDE_TO_REAR_AXLE),
                        value(Chassis.REAR_TRACK),
                        value(RearTyre.DIAMETER),
                        value(Motor.TEST_VOLTAGE),
                        value(Motor.NO_LOAD_RPM)));
        CarKeys.all()
                .filter(key -> !has(key) && !standsIn(key))
                .forEach(key -> usual.find(key).ifPresent(reading -> use(key, reading)));
        if (has(Motor.STALL_CURRENT) && notMeasured.contains(Motor.NO_LOAD_CURRENT.path())) {
            use(Motor.NO_LOAD_CURRENT, UsualNumbers.noLoadCurrentA(value(Motor.STALL_CURRENT)));
        }
        if (form.frontWheels().isEmpty()) {
            notMeasured.add(CarForm.FRONT_WHEELS);
        }
    }

    /** Whether another number says the same. */
    private boolean standsIn(NumberKey key) {
        return (key.equals(WeighedCar.CG_AHEAD) && has(WeighedCar.GUIDE_SCALE))
                || (key.equals(Motor.STALL_TORQUE) && has(Motor.STALL_CURRENT));
    }

    private void use(NumberKey key, Reading reading) {
        readings.put(key.path(), reading);
        notMeasured.add(key.path());
    }

    private SetUp car(String name, List<Ballast> ballast) {
        Optional<Readings> scales =
                has(WeighedCar.GUIDE_SCALE) ? Optional.of(numbers(WeighedCar.SCALE_KEYS)) : Optional.empty();
        return new SetUp(
                name,
                Chassis.of(
                        numbers(Chassis.KEYS),
                        form.frontWheels().isEmpty() ? FrontWheels.TOUCHING : FrontWheels.of(form.frontWheels())),
                WeighedCar.of(numbers(WeighedCar.KEYS), scales),
                ballast,
                Guide.of(numbers(Guide.KEYS)),
                RearTyre.of(numbers(RearTyre.KEYS)),
                Gears.of(numbers(Gears.KEYS)),
                Motor.of(numbers(Motor.KEYS)),
                has(Magnet.DOWNFORCE) ? Optional.of(Magnet.of(numbers(Magnet.KEYS))) : Optional.empty(),
                Drag.of(numbers(Drag.KEYS)),
                numbers(List.of(SetUp.PICKUP)).orZero(SetUp.PICKUP));
    }

    private Readings numbers(List<NumberKey> keys) {
        Readings numbers = Readings.none();
        for (NumberKey key : keys) {
            numbers = numbers.with(key, Optional.ofNullable(readings.get(key.path())));
        }
        return numbers;
    }

    /** A car that makes no sense as a whole: told at the first field that the sentence names, in the form's words. */
    private void explain(String message) {
        Optional<String> field =
                CarKeys.all().map(NumberKey::path).filter(message::contains).findFirst();
        String words = message.replace(CarForm.FRONT_WHEELS, "“Front wheels”").replace("mass.scales", "the two scales");
        for (NumberKey key : CarKeys.all().toList()) {
            words = words.replace(key.path(), "“" + NumberWords.of(key).label() + "”");
        }
        String said = Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
        if (field.isPresent()) {
            problems.put(field.get(), said);
        } else {
            notices.add(said);
        }
    }

    private boolean has(NumberKey key) {
        return readings.containsKey(key.path());
    }

    private double value(NumberKey key) {
        return readings.getOrDefault(key.path(), Reading.exact(key.min())).value();
    }

    private ModelScale modelScale() {
        return Typed.number(form.scale())
                .flatMap(divisor -> ModelScale.of(divisor.intValue()))
                .orElse(ModelScale.OTHER);
    }

    /** A scale that the form does not offer stays as the file has it. */
    private OptionalInt scale(Optional<CarFile> before) {
        ModelScale chosen = modelScale();
        if (chosen != ModelScale.OTHER) {
            return OptionalInt.of(chosen.divisor());
        }
        OptionalInt kept = before.map(file -> file.remarks().scale()).orElse(OptionalInt.empty());
        return kept.isPresent() && ModelScale.of(kept.getAsInt()).isPresent() ? OptionalInt.empty() : kept;
    }

    private static String sentence(IllegalArgumentException wrong) {
        String said = String.valueOf(wrong.getMessage());
        return Character.toUpperCase(said.charAt(0)) + said.substring(1) + ".";
    }
}
