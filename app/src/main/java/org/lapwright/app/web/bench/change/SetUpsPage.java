package org.lapwright.app.web.bench.change;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.physics.ForecastInWords;
import org.lapwright.app.usecase.physics.NumberWords;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.history.Difference;
import org.lapwright.core.car.history.Difference.Side;
import org.lapwright.core.car.history.Differences;

/**
 * Two set-ups side by side: only what is otherwise.
 *
 * @param shell around it
 * @param left the first, in words
 * @param right the second, in words
 * @param rows what is otherwise
 * @param back where the page came from
 */
public record SetUpsPage(Shell shell, String left, String right, List<Row> rows, String back) {
    /** Copies the list. */
    public SetUpsPage {
        rows = List.copyOf(rows);
    }

    /**
     * One number or word.
     *
     * @param label what it is
     * @param left in the first
     * @param right in the second
     */
    public record Row(String label, String left, String right) {}

    /** A set-up with its name. */
    public record Named(String name, Build build) {}

    /** The page of two set-ups. */
    public static SetUpsPage of(Shell shell, Named left, Named right, String back) {
        return new SetUpsPage(
                shell,
                left.name(),
                right.name(),
                Differences.between(left.build(), right.build()).stream()
                        .map(SetUpsPage::row)
                        .toList(),
                back);
    }

    private static Row row(Difference difference) {
        return new Row(
                label(difference.path()),
                written(difference.before(), difference.unit()),
                written(difference.after(), difference.unit()));
    }

    /** Ballast goes by its own name and what of it: {@code ballast nose x_mm}. */
    private static String label(String path) {
        if (!path.startsWith("ballast ")) {
            String words = NumberWords.of(path).label();
            return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
        }
        int key = path.lastIndexOf(' ');
        String what = NumberWords.of("ballast." + path.substring(key + 1)).label();
        return path.substring("ballast ".length(), key) + ": " + what.toLowerCase(Locale.ROOT);
    }

    private static String written(Optional<Side> side, String unit) {
        return side.map(found -> found instanceof Side.Number number
                        ? ForecastInWords.reading(
                                number.reading().value(), number.reading().plusMinus(), unit)
                        : ((Side.Word) found).text())
                .orElse(Figures.NONE);
    }
}
