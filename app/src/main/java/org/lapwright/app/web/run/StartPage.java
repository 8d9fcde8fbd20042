package org.lapwright.app.web.run;

import java.util.List;
import org.lapwright.app.web.view.Shell;

/**
 * Before a drive.
 *
 * @param shell around it
 * @param cars names to offer
 * @param tracks names to offer
 * @param typed what was typed
 * @param problem what is wrong with it; empty when nothing is
 * @param key made up once for this drive
 * @param broken rules of its class that the car breaks; once told, the drive can begin all the same
 */
public record StartPage(
        Shell shell,
        List<String> cars,
        List<String> tracks,
        Typed typed,
        String problem,
        String key,
        List<String> broken) {
    /** Copies the lists. */
    public StartPage {
        cars = List.copyOf(cars);
        tracks = List.copyOf(tracks);
        broken = List.copyOf(broken);
    }

    /**
     * What was typed.
     *
     * @param car its name
     * @param change what was changed
     * @param track its name
     * @param lane its name
     * @param laneNumber under which its passes come
     * @param driver who drives
     * @param conditions of the evening
     * @param plan runs and laps
     * @param warmUp laps of each run that count for nothing
     */
    public record Typed(
            String car,
            String change,
            String track,
            String lane,
            String laneNumber,
            String driver,
            String conditions,
            String plan,
            String warmUp) {}
}
