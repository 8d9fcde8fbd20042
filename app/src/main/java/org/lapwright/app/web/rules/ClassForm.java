package org.lapwright.app.web.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.car.rules.RaceClass;
import org.lapwright.core.car.rules.RaceClasses;

/**
 * The owner's classes, as typed.
 *
 * @param classes in the owner's order
 */
public record ClassForm(List<ClassFields> classes) {
    /** Copies the list. */
    public ClassForm {
        classes = List.copyOf(classes);
    }

    /** Classes as they are kept. */
    public static ClassForm of(RaceClasses kept) {
        return new ClassForm(kept.classes().stream().map(ClassFields::of).toList());
    }

    /** What was sent. */
    public static ClassForm from(Fields fields) {
        List<ClassFields> classes = new ArrayList<>();
        for (int i = 1; i <= RaceClasses.MOST && fields.text("class-" + i).equals("there"); i++) {
            classes.add(ClassFields.from(fields, i));
        }
        return new ClassForm(classes);
    }

    /** The form after a press, {@code add} or {@code drop-3}; one that makes no sense changes nothing. */
    public ClassForm pressed(String wish) {
        List<ClassFields> all = new ArrayList<>(classes);
        if (wish.equals("add") && all.size() < RaceClasses.MOST) {
            all.add(ClassFields.fresh());
        } else if (wish.matches("drop-\\d{1,3}")) {
            int number = Integer.parseInt(wish.substring("drop-".length()));
            if (number >= 1 && number <= all.size()) {
                all.remove(number - 1);
            }
        }
        return new ClassForm(all);
    }

    /** The classes, if all of it can be understood. */
    public Optional<RaceClasses> read(Typed typed, RaceClasses kept) {
        List<RaceClass> read = new ArrayList<>();
        for (int i = 0; i < classes.size(); i++) {
            classes.get(i).read(i + 1, typed, kept).ifPresent(read::add);
        }
        return typed.faults().isEmpty() ? typed.at("").build("", () -> new RaceClasses(read)) : Optional.empty();
    }
}
