package org.lapwright.app.web.compare;

import java.util.Optional;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * What the racer says about a comparison to be kept, as typed.
 *
 * @param car name of the car
 * @param track name of the track
 * @param lane name of the lane
 * @param driver who drove
 * @param conditions of the evening
 * @param change what was changed
 * @param stays the set-up that stays; empty for the one that the verdict suggests
 */
public record KeepFields(
        String car, String track, String lane, String driver, String conditions, String change, Optional<Side> stays) {
    /** Nothing typed yet. */
    public static final KeepFields BLANK = new KeepFields("", "", "", "", "", "", Optional.empty());

    static KeepFields from(Fields fields) {
        return new KeepFields(
                fields.text("car"),
                fields.text("track"),
                fields.text("lane"),
                fields.text("driver"),
                fields.text("conditions"),
                fields.text("change"),
                Side.find(fields.text("stays")));
    }

    /**
     * What is to be saved.
     *
     * @throws IllegalArgumentException with what would be right, if a text is missing or too long
     */
    public KeptComparison toComparison(Session session, TrialSettings settings, Side suggested) {
        return new KeptComparison(
                car, track, lane, driver, conditions, change, stays.orElse(suggested), session, settings, false);
    }
}
