package org.lapwright.app.web.rules;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.web.track.Typed.Fault;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.rules.RaceClass;
import org.lapwright.core.car.rules.RaceClasses;

/**
 * The owner's classes.
 *
 * @param shell around it
 * @param form as typed
 * @param kept as kept
 * @param faults what cannot be understood
 * @param said what happened; may be empty
 */
public record ClassesPage(Shell shell, ClassForm form, RaceClasses kept, List<Fault> faults, String said) {
    /** Copies the list. */
    public ClassesPage {
        faults = List.copyOf(faults);
    }

    /** What is wrong with a field, or nothing. */
    public @Nullable String fault(String field) {
        return Fault.about(field, faults);
    }

    /** Cars that are run in a class. */
    public List<String> cars(ClassFields fields) {
        return kept.named(fields.was()).map(RaceClass::cars).orElse(List.of());
    }

    /** Whether one more class fits. */
    public boolean hasRoom() {
        return form.classes().size() < RaceClasses.MOST;
    }
}
