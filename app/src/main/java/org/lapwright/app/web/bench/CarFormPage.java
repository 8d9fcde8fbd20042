package org.lapwright.app.web.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.lapwright.app.usecase.physics.NumberWords;
import org.lapwright.app.web.bench.CarForm.BallastFields;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.units.NumberKey;

/**
 * The form that measures a car.
 *
 * @param shell around it
 * @param form as typed
 * @param was the name that the car has on file; empty for a new one
 * @param sections the fields
 * @param ballast the pieces
 * @param errors what is wrong, each with the field it is about
 * @param notices what is wrong with the whole
 */
public record CarFormPage(
        Shell shell,
        CarForm form,
        String was,
        List<Section> sections,
        List<Piece> ballast,
        List<Fault> errors,
        List<String> notices) {
    /** Copies the lists. */
    public CarFormPage {
        sections = List.copyOf(sections);
        ballast = List.copyOf(ballast);
        errors = List.copyOf(errors);
        notices = List.copyOf(notices);
    }

    /** Lays out a form with what came of reading it. */
    public static CarFormPage of(Shell shell, CarForm form, String was, CarReading reading) {
        List<Section> sections = new ArrayList<>();
        for (CarKeys group : CarKeys.values()) {
            sections.add(section(group, form, reading.problems()));
        }
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < form.ballast().size(); i++) {
            pieces.add(piece(i, form.ballast().get(i), reading.problems()));
        }
        return new CarFormPage(
                shell, form, was, sections, pieces, faults(reading, sections, pieces), reading.notices());
    }

    /** Whether a car that is on file is changed. */
    public boolean isChange() {
        return !was.isEmpty();
    }

    /** What is wrong with a field; empty when nothing is. */
    public String problem(String field) {
        return errors.stream()
                .filter(fault -> fault.field().equals(field))
                .map(Fault::text)
                .findFirst()
                .orElse("");
    }

    /** The fields that always show. */
    public Section needed() {
        return sections.get(0);
    }

    /** The fields that are opened on demand. */
    public List<Section> others() {
        return sections.subList(1, sections.size());
    }

    /** Whether the scale is one that the form does not offer. */
    public boolean otherScale() {
        return !Set.of("24", "32", "43").contains(form.scale());
    }

    /** Whether the ballast has to be seen. */
    public boolean ballastOpen() {
        return ballast.stream().anyMatch(piece -> piece.fields().stream().anyMatch(field -> field.isWrong()));
    }

    /** How many pieces there are. */
    public long pieces() {
        return form.ballast().stream().filter(piece -> !piece.isBlank()).count();
    }

    private static Section section(CarKeys group, CarForm form, Map<String, String> problems) {
        boolean needed = group == CarKeys.NEEDED;
        List<Field> fields = group.keys().stream()
                .map(key -> field(key.path(), key, form.typed(key), problems, hint(key, needed)))
                .toList();
        long given = fields.stream().filter(field -> !field.value().isEmpty()).count();
        return new Section(
                group.name().toLowerCase(java.util.Locale.ROOT),
                group.title(),
                group.hint(),
                fields,
                group == CarKeys.FRONT,
                given + " of " + fields.size() + " given",
                fields.stream().anyMatch(Field::isWrong));
    }

    private static String hint(NumberKey key, boolean needed) {
        NumberWords words = NumberWords.of(key);
        return needed || words.usual().isEmpty()
                ? words.measure()
                : words.measure() + " Left empty: " + words.usual() + ".";
    }

    private static Field field(String name, NumberKey key, Typed typed, Map<String, String> problems, String hint) {
        return new Field(
                name,
                NumberWords.of(key).label(),
                key.unit(),
                typed.value(),
                typed.plusMinus(),
                !key.name().endsWith("_teeth"),
                key.min() < 0,
                hint,
                problems.getOrDefault(name, ""));
    }

    private static Piece piece(int row, BallastFields typed, Map<String, String> problems) {
        String prefix = "ballast-" + row + ".";
        return new Piece(
                row,
                typed.name(),
                problems.getOrDefault(prefix + "name", ""),
                Ballast.KEYS.stream()
                        .map(key -> field(prefix + key.name(), key, typed.typed(key), problems, ""))
                        .toList());
    }

    private static List<Fault> faults(CarReading reading, List<Section> sections, List<Piece> pieces) {
        List<Fault> faults = new ArrayList<>();
        reading.problems()
                .forEach((field, problem) -> faults.add(new Fault(field, label(field, sections, pieces), problem)));
        return faults;
    }

    private static String label(String name, List<Section> sections, List<Piece> pieces) {
        for (Section section : sections) {
            for (Field field : section.fields()) {
                if (field.name().equals(name)) {
                    return field.label();
                }
            }
        }
        for (Piece piece : pieces) {
            for (Field field : piece.fields()) {
                if (field.name().equals(name)) {
                    return "Piece %d, %s".formatted(piece.row() + 1, field.label());
                }
            }
        }
        return name.equals("name") ? "Name of the car" : "Ballast";
    }

    /** A name that may stand in {@code id} and in a link. */
    static String id(String name) {
        return name.replace('.', '-');
    }

    /**
     * Fields that belong together.
     *
     * @param code in the page
     * @param title above them
     * @param hint on all of them
     * @param fields each number
     * @param front whether the question about the front wheels belongs here
     * @param given how many are filled in
     * @param open whether it has to be seen
     */
    public record Section(
            String code, String title, String hint, List<Field> fields, boolean front, String given, boolean open) {}

    /**
     * One number.
     *
     * @param name of the field
     * @param label what people call it
     * @param unit after it
     * @param value as typed
     * @param plusMinus as typed
     * @param doubted whether it may have a doubt
     * @param signed whether it may be negative, for which some phones' number pads have no key
     * @param hint how to measure it, and what stands in for it
     * @param problem what is wrong; empty when nothing is
     */
    public record Field(
            String name,
            String label,
            String unit,
            String value,
            String plusMinus,
            boolean doubted,
            boolean signed,
            String hint,
            String problem) {
        /** Its name in the page. */
        public String id() {
            return CarFormPage.id(name);
        }

        /** Whether something is wrong with it. */
        public boolean isWrong() {
            return !problem.isEmpty();
        }

        /** Label and unit. */
        public String spoken() {
            return unit.isEmpty() ? label : label + ", " + unit;
        }
    }

    /**
     * A piece of ballast.
     *
     * @param row from 0
     * @param name as typed
     * @param problem with the name
     * @param fields its numbers
     */
    public record Piece(int row, String name, String problem, List<Field> fields) {}

    /**
     * Something wrong.
     *
     * @param field its name
     * @param label what people call it
     * @param text what is wrong and what would be right
     */
    public record Fault(String field, String label, String text) {
        /** Where it stands in the page. */
        public String id() {
            return CarFormPage.id(field);
        }
    }
}
