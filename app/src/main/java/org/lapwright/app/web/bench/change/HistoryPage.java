package org.lapwright.app.web.bench.change;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.HistoryStore.StoredStep;
import org.lapwright.app.usecase.bench.LogChange;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.history.History;
import org.lapwright.core.car.history.History.Line;
import org.lapwright.core.car.history.Step;

/**
 * The set-ups of a car as a tree.
 *
 * @param shell around it
 * @param car its name
 * @param example whether it is the example's, which cannot be altered
 * @param rows line by line
 * @param present number of the step on the car
 * @param undo what undoing would undo; empty when there is nothing
 * @param key made up once for what is pressed here
 */
public record HistoryPage(
        Shell shell, String car, boolean example, List<Row> rows, long present, String undo, String key) {
    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH).withZone(ZoneId.systemDefault());
    private static final int MOST_COLUMNS = 6;

    /** Copies the list. */
    public HistoryPage {
        rows = List.copyOf(rows);
    }

    /**
     * One set-up.
     *
     * @param id its number
     * @param number counted from 1 in the order in which they were made
     * @param column how far in it stands
     * @param words what was done
     * @param when it was
     * @param present whether it is on the car
     */
    public record Row(long id, int number, int column, String words, String when, boolean present) {}

    /** The page of a history. */
    public static HistoryPage of(Shell shell, StoredHistory history, String key) {
        List<Long> order = history.steps().stream().map(StoredStep::id).toList();
        List<Row> rows = new ArrayList<>();
        for (Line line : tree(history).lines()) {
            StoredStep stored = step(history, line.step().id());
            rows.add(new Row(
                    stored.id(),
                    order.indexOf(stored.id()) + 1,
                    Math.min(line.column(), MOST_COLUMNS),
                    stored.parent().isEmpty() ? "as it was first" : stored.words(),
                    WHEN.format(stored.at()),
                    stored.id() == history.present()));
        }
        String undo = LogChange.undoable(history).map(StoredStep::words).orElse("");
        return new HistoryPage(shell, history.car(), history.example(), rows, history.present(), undo, key);
    }

    /** The name as part of an address. */
    public String encodedName() {
        return BenchPage.encoded(car);
    }

    private static History tree(StoredHistory history) {
        List<Step> steps = history.steps().stream()
                .map(stored -> new Step(stored.id(), stored.parent(), stored.kind(), stored.words()))
                .toList();
        return new History(steps, history.present());
    }

    private static StoredStep step(StoredHistory history, long id) {
        return history.steps().stream()
                .filter(step -> step.id() == id)
                .findFirst()
                .orElseThrow();
    }
}
