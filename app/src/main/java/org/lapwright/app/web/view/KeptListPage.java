package org.lapwright.app.web.view;

import java.time.ZoneId;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.SavedComparison;

/**
 * All kept comparisons.
 *
 * @param shell around it
 * @param rows newest first
 * @param example what there is of the example garage
 */
public record KeptListPage(Shell shell, List<Row> rows, ExampleView example) {
    /** Copies the list. */
    public KeptListPage {
        rows = List.copyOf(rows);
    }

    /** The row of a comparison. */
    public static Row row(SavedComparison saved, ZoneId zone) {
        return new Row(
                saved.id(),
                saved.kept().car(),
                saved.kept().track(),
                saved.kept().change(),
                KeptPage.when(saved, zone),
                Figures.laps(saved.kept().session().laps()),
                saved.kept().example());
    }

    /**
     * One comparison.
     *
     * @param id its number
     * @param car name of the car
     * @param track name of the track
     * @param change what was changed; may be empty
     * @param when it was saved
     * @param laps how many laps it has
     * @param example whether it belongs to the example garage
     */
    public record Row(long id, String car, String track, String change, String when, String laps, boolean example) {}
}
