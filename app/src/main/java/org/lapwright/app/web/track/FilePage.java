package org.lapwright.app.web.track;

import java.util.List;
import org.lapwright.app.web.view.Shell;

/**
 * A track from a file.
 *
 * @param shell around it
 * @param text of the file, as it came
 * @param problems what is wrong in it
 * @param taken the name, if it belongs to another track of the owner's; else empty
 */
public record FilePage(Shell shell, String text, List<String> problems, String taken) {
    /** Copies the list. */
    public FilePage {
        problems = List.copyOf(problems);
    }
}
