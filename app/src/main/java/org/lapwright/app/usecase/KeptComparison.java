package org.lapwright.app.usecase;

import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;
import org.lapwright.core.units.Check;

/**
 * A comparison as the racer saved it: the raw laps and what was fixed beforehand. The verdict follows from these.
 *
 * @param car name of the car, 1 to 80 characters
 * @param track name of the track, 1 to 80 characters
 * @param lane name of the lane, up to 40 characters, may be empty
 * @param driver who drove, up to 80 characters, may be empty
 * @param conditions of the evening, up to 500 characters, may be empty
 * @param change what was changed, up to 500 characters, may be empty
 * @param stays the set-up that stays on the car
 * @param session the raw laps in the order driven, with the racer's word on single laps
 * @param settings what was fixed beforehand
 * @param example whether it belongs to the example garage
 */
public record KeptComparison(
        String car,
        String track,
        String lane,
        String driver,
        String conditions,
        String change,
        Side stays,
        Session session,
        TrialSettings settings,
        boolean example) {
    /** Checks the texts. */
    public KeptComparison {
        car = Check.text(car, 80, "name of the car");
        track = Check.text(track, 80, "name of the track");
        lane = atMost(lane, 40, "name of the lane");
        driver = atMost(driver, 80, "name of the driver");
        conditions = atMost(conditions, 500, "note on the conditions");
        change = atMost(change, 500, "note on the change");
    }

    private static String atMost(String text, int length, String name) {
        return text.isBlank() ? "" : Check.text(text, length, name);
    }
}
