package org.lapwright.app.web.view;

import java.time.ZoneId;
import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.SavedComparison;

/**
 * All kept comparisons, and apart from them those that were removed.
 *
 * @param shell around it
 * @param rows those on the lists, newest first
 * @param removed those removed, newest first
 * @param example what there is of the example garage
 * @param from how many newer ones there are than those shown
 * @param older whether there are older ones
 */
public record KeptListPage(
        Shell shell, List<Row> rows, List<Row> removed, ExampleView example, int from, boolean older) {
    /** So many are shown at a time. */
    public static final int ROWS = 60;

    /** Copies the lists. */
    public KeptListPage {
        rows = List.copyOf(rows);
        removed = List.copyOf(removed);
    }

    /** Where the newer ones are; only for those that have some. */
    public String newer() {
        return from <= ROWS ? "/kept" : "/kept?from=" + (from - ROWS);
    }

    /** The rows of comparisons. */
    public static List<Row> rows(List<SavedComparison> saved, ZoneId zone) {
        return saved.stream().map(one -> row(one, zone)).toList();
    }

    private static Row row(SavedComparison saved, ZoneId zone) {
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
