package org.lapwright.app.web.track;

import org.lapwright.app.web.view.Shell;

/**
 * How sure one best lap is.
 *
 * @param shell around it
 * @param car whose lap
 * @param lane where
 * @param answer where it lies, or why that cannot be said
 * @param back the track's page
 */
public record HowSurePage(Shell shell, String car, String lane, String answer, String back) {
    /** When no interval can be given. */
    public static final String UNKNOWN =
            "How sure it is cannot be said: there is no lap, or no number of the car has a ± written to it.";
}
