package org.lapwright.app.web.next;

import java.util.List;
import org.lapwright.app.web.view.Shell;

/**
 * What makes two cars run level.
 *
 * @param shell around it
 * @param cars to choose from
 * @param tracks to choose from
 * @param typed what was asked
 * @param problems what could not be understood
 * @param said the answer, sentence by sentence; empty before anything was asked
 */
public record EvenPage(
        Shell shell, List<String> cars, List<String> tracks, Typed typed, List<String> problems, List<String> said) {
    /** Copies the lists. */
    public EvenPage {
        cars = List.copyOf(cars);
        tracks = List.copyOf(tracks);
        problems = List.copyOf(problems);
        said = List.copyOf(said);
    }

    /**
     * What was asked.
     *
     * @param track the track
     * @param first a car and its driver
     * @param second the other one
     */
    public record Typed(String track, Rival first, Rival second) {}

    /**
     * A car, its lane and its driver, as typed.
     *
     * @param car its name
     * @param lane its lane; empty for the usual one
     * @param held per cent of the best lap that the driver holds; empty for all of it
     */
    public record Rival(String car, String lane, String held) {}
}
