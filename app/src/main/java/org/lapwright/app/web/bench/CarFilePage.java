package org.lapwright.app.web.bench;

import java.util.List;
import org.lapwright.app.files.Problem;
import org.lapwright.app.web.view.Shell;

/**
 * The page that takes a car file.
 *
 * @param shell around it
 * @param text as pasted or uploaded
 * @param problems what is wrong with it, sentences
 * @param taken name of the car on file that it would succeed; empty when there is none
 */
public record CarFilePage(Shell shell, String text, List<String> problems, String taken) {
    /** Copies the list. */
    public CarFilePage {
        problems = List.copyOf(problems);
    }

    /** Nothing pasted yet. */
    public static CarFilePage empty(Shell shell) {
        return new CarFilePage(shell, "", List.of(), "");
    }

    /** With what is wrong. */
    public static CarFilePage refused(Shell shell, String text, List<Problem> problems) {
        return new CarFilePage(
                shell, text, problems.stream().map(Problem::sentence).toList(), "");
    }
}
