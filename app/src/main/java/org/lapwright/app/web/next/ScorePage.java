package org.lapwright.app.web.next;

import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.advice.ScoreForecasts.Band;
import org.lapwright.app.usecase.advice.ScoreForecasts.OfKind;
import org.lapwright.app.usecase.advice.ScoreForecasts.Score;
import org.lapwright.app.usecase.advice.ScoreForecasts.Scored;
import org.lapwright.app.web.view.Shell;

/**
 * How good the forecasts were.
 *
 * @param shell around it
 * @param headline in a sentence; empty when nothing was logged and driven yet
 * @param rows each change
 * @param kinds kind by kind
 */
public record ScorePage(Shell shell, String headline, List<Row> rows, List<Kind> kinds) {
    private static final double Z = 1.645;
    private static final double PERCENT = 100;

    /** Copies the lists. */
    public ScorePage {
        rows = List.copyOf(rows);
        kinds = List.copyOf(kinds);
    }

    /**
     * One change.
     *
     * @param address its comparison
     * @param car name of the car
     * @param words what was done
     * @param forecast what was to be expected
     * @param measured what the laps said
     * @param outcome whether it lay within the band
     */
    public record Row(String address, String car, String words, String forecast, String measured, String outcome) {
        static Row of(Scored scored) {
            return new Row(
                    "/kept/" + scored.comparison(),
                    scored.car(),
                    scored.words(),
                    scored.forecast().map(ScorePage::written).orElse("the model gives no lap"),
                    written(scored.measured()),
                    scored.hit().map(hit -> hit ? "within" : "outside").orElse(Figures.NONE));
        }
    }

    /**
     * A kind of change.
     *
     * @param label what people call it
     * @param count how many
     * @param given what it has given
     * @param bias by how much forecasts were off
     * @param unforeseen what the model cannot foresee of it; empty otherwise
     */
    public record Kind(String label, int count, String given, String bias, String unforeseen) {
        static Kind of(OfKind kind) {
            return new Kind(
                    kind.kind().label(),
                    kind.count(),
                    written(kind.given()),
                    kind.bias().map(ScorePage::written).orElse(Figures.NONE),
                    kind.kind().unforeseen().orElse(""));
        }
    }

    /** The page of a score. */
    public static ScorePage of(Shell shell, Score score) {
        return new ScorePage(
                shell,
                headline(score),
                score.rows().stream().map(Row::of).toList(),
                score.kinds().stream().map(Kind::of).toList());
    }

    private static String headline(Score score) {
        if (score.rows().isEmpty()) {
            return "";
        }
        if (score.forecasts() == 0) {
            return "Changes were driven, but the model gives none of them a forecast.";
        }
        return "%d of %d changes came out within the 90 %% band; nine in ten would be right."
                .formatted(score.hits(), score.forecasts());
    }

    /** A share of the lap with its 90 % band. */
    private static String written(Band band) {
        return "%s %% (%s to %s)"
                .formatted(
                        Figures.signed(PERCENT * band.middle(), 2),
                        Figures.signed(PERCENT * (band.middle() - Z * band.deviation()), 2),
                        Figures.signed(PERCENT * (band.middle() + Z * band.deviation()), 2));
    }
}
