package org.lapwright.app.web.bench;

import java.util.List;
import org.lapwright.app.web.view.Shell;

/**
 * The photo of a car.
 *
 * @param shell around it
 * @param car its name
 * @param there whether it has one
 * @param example whether the car belongs to the example garage, which has no photos
 * @param problems with the one that was sent; empty when there are none
 */
public record PhotoPage(Shell shell, String car, boolean there, boolean example, List<String> problems) {
    /** Copies the list. */
    public PhotoPage {
        problems = List.copyOf(problems);
    }

    /** The name as part of an address. */
    public String encodedName() {
        return BenchPage.encoded(car);
    }
}
