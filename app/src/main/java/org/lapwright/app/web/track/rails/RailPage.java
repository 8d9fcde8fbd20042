package org.lapwright.app.web.track.rails;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.track.Typed.Fault;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.track.Track;
import org.lapwright.core.track.rails.RailTest;
import org.lapwright.core.units.Reading;

/**
 * The guided measurement of a track's rails.
 *
 * @param shell around it
 * @param track name of the track
 * @param own whether it is the owner's, so that the result can be put into it
 * @param now what the track says now
 * @param form what was typed
 * @param faults what could not be understood
 * @param source resistance of supply, controller and leads; empty before there is a result
 * @param rail resistance of a metre of lap; empty before there is a result
 */
public record RailPage(
        Shell shell,
        String track,
        boolean own,
        String now,
        RailForm form,
        List<Fault> faults,
        String source,
        String rail) {
    /** Copies the list. */
    public RailPage {
        faults = List.copyOf(faults);
    }

    /** The page of a form. */
    public static RailPage of(
            Shell shell,
            Track track,
            boolean own,
            RailForm form,
            List<Fault> faults,
            Optional<RailTest.Result> result) {
        return new RailPage(
                shell,
                track.name(),
                own,
                "supply, controller and leads %s ohm, a metre of lap %s ohm"
                        .formatted(
                                Figures.significant(track.power().sourceOhm(), 3),
                                Figures.significant(track.power().railOhmPerM(), 3)),
                form,
                faults,
                result.map(found -> written(found.sourceOhm())).orElse(""),
                result.map(found -> written(found.railOhmPerM())).orElse(""));
    }

    private static String written(Reading reading) {
        return Figures.significant(reading.value(), 3) + " ± " + Figures.significant(reading.plusMinus(), 1) + " ohm";
    }

    /** What is wrong with a field, or nothing. */
    public @Nullable String fault(String field) {
        return Fault.about(field, faults);
    }
}
