package org.lapwright.app.web.track.kit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.web.track.Typed.Fault;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.track.kit.PieceBox;

/**
 * The owner's kinds of pieces.
 *
 * @param shell around it
 * @param form as typed
 * @param unlisted sizes in the owner's tracks that are not on the list, in words
 * @param faults what cannot be understood
 * @param said what happened; may be empty
 */
public record KitPage(Shell shell, KitForm form, List<String> unlisted, List<Fault> faults, String said) {
    /** Copies the lists. */
    public KitPage {
        unlisted = List.copyOf(unlisted);
        faults = List.copyOf(faults);
    }

    /** What is wrong with a field, or nothing. */
    public @Nullable String fault(String field) {
        return Fault.about(field, faults);
    }

    /** Whether one more kind fits. */
    public boolean hasRoom() {
        return form.kinds().size() < PieceBox.MOST;
    }
}
