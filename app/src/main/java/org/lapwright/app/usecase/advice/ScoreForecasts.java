package org.lapwright.app.usecase.advice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.usecase.FileStore;
import org.lapwright.app.usecase.GarageStore;
import org.lapwright.app.usecase.HistoryStore.StoredHistory;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChangeKind;
import org.lapwright.core.prediction.ChangeForecaster;
import org.lapwright.core.prediction.ChangeForecaster.ChangeForecast;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.stats.many.ShrunkMeans;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.trial.Difference;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.units.Interval;

/**
 * How good were the forecasts? Each change that was logged and driven is forecast from the car's numbers as they stood when it was logged, by
 * the model of today, and held against what the laps said.
 */
public final class ScoreForecasts {
    /** The band that is scored. */
    public static final double LEVEL = 0.9;

    /** So many changes are reckoned for one page, the newest. */
    private static final int MOST = 40;

    private final GarageStore garage;
    private final JudgeChange judge;
    private final LapForecaster.Settings settings;
    private final AtomicReference<@Nullable Remembered> remembered = new AtomicReference<>();
    private final Reader reader;

    /**
     * How files are read.
     *
     * @param car a car file; empty when it cannot be read
     * @param track a track file; empty when it cannot be read
     * @param change a logged change; empty when it cannot be read
     */
    public record Reader(
            Function<String, Optional<Build>> car,
            Function<String, Optional<Track>> track,
            Function<String, Optional<Change>> change) {}

    /** Scores the changes of {@code garage} by forecasts of so many cars drawn. */
    public ScoreForecasts(GarageStore garage, JudgeChange judge, LapForecaster.Settings settings, Reader reader) {
        this.garage = garage;
        this.judge = judge;
        this.settings = settings;
        this.reader = reader;
    }

    /**
     * One change, forecast and driven. Differences are after less before as shares of the lap, so that tracks can be compared.
     *
     * @param comparison number of the comparison
     * @param car name of the car
     * @param words what was done
     * @param kind kind of change
     * @param forecast what was to be expected, and its 90 % band; empty where the model gives no lap
     * @param measured what the laps said, and its band
     */
    public record Scored(
            long comparison, String car, String words, ChangeKind kind, Optional<Band> forecast, Band measured) {
        /** How far the laps were off the forecast; empty without one. */
        Optional<Band> miss() {
            return forecast.map(expected -> new Band(
                    measured.middle() - expected.middle(), Math.hypot(measured.deviation(), expected.deviation())));
        }

        /** Whether the laps lie within the 90 % band that forecast and laps leave together; empty without a forecast. */
        public Optional<Boolean> hit() {
            return miss().map(off -> Math.abs(off.middle()) <= Z * off.deviation());
        }
    }

    /**
     * A number and how sure it is.
     *
     * @param middle the number
     * @param deviation standard deviation
     */
    public record Band(double middle, double deviation) {
        /** From an interval. */
        static Band of(double middle, Interval interval, double level) {
            double z = new NormalDistribution().inverseCumulativeProbability((1 + level) / 2);
            return new Band(middle, Math.max((interval.high() - interval.low()) / (2 * z), 1e-9));
        }
    }

    private record Remembered(long revision, Score score) {}

    private static final double Z = new NormalDistribution().inverseCumulativeProbability((1 + LEVEL) / 2);

    /**
     * What a kind of change has given this owner, and by how much its forecasts were off.
     *
     * @param kind which
     * @param count how many were driven
     * @param given mean difference, drawn towards that of all kinds as far as the laps leave it open
     * @param bias mean of measured less forecast; empty without a forecast
     */
    public record OfKind(ChangeKind kind, int count, Band given, Optional<Band> bias) {}

    /**
     * The score.
     *
     * @param rows each change, the newest first
     * @param forecasts how many had a forecast
     * @param hits how many of these came out within the band
     * @param kinds kind by kind
     */
    public record Score(List<Scored> rows, int forecasts, int hits, List<OfKind> kinds) {
        /** Copies the lists. */
        public Score {
            rows = List.copyOf(rows);
            kinds = List.copyOf(kinds);
        }
    }

    /** Scores everything that was logged and driven. What comes out is remembered until the garage changes: it takes many laps. */
    public Score score() {
        long revision = garage.revision();
        Remembered before = remembered.get();
        if (before != null && before.revision() == revision) {
            return before.score();
        }
        Score score = reckoned();
        remembered.set(new Remembered(revision, score));
        return score;
    }

    private Score reckoned() {
        List<Scored> rows = new ArrayList<>();
        Map<String, Optional<StoredHistory>> histories = new HashMap<>();
        for (SavedComparison each : garage.comparisons()) {
            if (rows.size() < MOST) {
                histories
                        .computeIfAbsent(each.kept().car(), garage::history)
                        .flatMap(history -> DrivenStep.of(history, each))
                        .flatMap(step -> scored(each, step))
                        .ifPresent(rows::add);
            }
        }
        int forecasts = 0;
        int hits = 0;
        for (Scored row : rows) {
            forecasts += row.hit().isPresent() ? 1 : 0;
            hits += row.hit().orElse(false) ? 1 : 0;
        }
        return new Score(rows, forecasts, hits, kinds(rows));
    }

    private Optional<Scored> scored(SavedComparison saved, DrivenStep step) {
        KeptComparison kept = saved.kept();
        Verdict verdict = judge.judge(kept.session(), kept.settings());
        Optional<ChangeKind> kind = ChangeKind.find(step.after().kind());
        if (verdict.difference().isEmpty() || kind.isEmpty()) {
            return Optional.empty();
        }
        Difference difference = verdict.difference().orElseThrow();
        return Optional.of(new Scored(
                saved.id(),
                kept.car(),
                kept.change(),
                kind.get(),
                forecast(kept, step),
                Band.of(difference.share(), difference.intervalShare(), difference.confidence())));
    }

    private Optional<Band> forecast(KeptComparison kept, DrivenStep step) {
        Optional<Build> before = reader.car().apply(step.before().file());
        Optional<Change> change = reader.change().apply(step.after().change());
        Optional<Track> track = garage.file(FileStore.Kind.TRACK, kept.track())
                .map(KeptFile::text)
                .flatMap(reader.track());
        if (before.isEmpty() || change.isEmpty() || track.isEmpty()) {
            return Optional.empty();
        }
        Lane lane = track.get().lanes().stream()
                .filter(each -> each.name().equals(kept.lane()))
                .findFirst()
                .orElse(track.get().lanes().get(0));
        try {
            ChangeForecast found = new ChangeForecaster(
                            track.get().cells(lane), track.get().surface())
                    .forecast(
                            before.get().setUp(),
                            car -> change.get().apply(before.get().with(car)).setUp(),
                            settings);
            return Double.isFinite(found.centralS()) ? Optional.of(band(found)) : Optional.empty();
        } catch (IllegalArgumentException undrivable) {
            // A car that cannot be sent round has no forecast to score.
            return Optional.empty();
        }
    }

    private Band band(ChangeForecast found) {
        double lap = found.beforeS();
        return found.differenceS()
                .map(interval -> Band.of(
                        found.centralS() / lap,
                        new Interval(interval.low() / lap, interval.high() / lap),
                        settings.level()))
                .orElse(new Band(found.centralS() / lap, 1e-9));
    }

    private static List<OfKind> kinds(List<Scored> rows) {
        Map<ChangeKind, List<Scored>> byKind = new EnumMap<>(ChangeKind.class);
        rows.forEach(row ->
                byKind.computeIfAbsent(row.kind(), kind -> new ArrayList<>()).add(row));
        if (byKind.isEmpty()) {
            return List.of();
        }
        List<Band> means = byKind.values().stream()
                .map(of -> mean(of.stream().map(Scored::measured).toList()))
                .toList();
        ShrunkMeans shrunk = ShrunkMeans.of(
                means.stream().mapToDouble(Band::middle).toArray(),
                means.stream().mapToDouble(Band::deviation).toArray());
        List<OfKind> kinds = new ArrayList<>();
        for (Map.Entry<ChangeKind, List<Scored>> each : byKind.entrySet()) {
            int i = kinds.size();
            List<Band> misses =
                    each.getValue().stream().flatMap(row -> row.miss().stream()).toList();
            kinds.add(new OfKind(
                    each.getKey(),
                    each.getValue().size(),
                    new Band(shrunk.mean(i), shrunk.se(i)),
                    misses.isEmpty() ? Optional.empty() : Optional.of(mean(misses))));
        }
        return kinds;
    }

    /** Weighed by how sure each is. */
    private static Band mean(List<Band> bands) {
        double weights = 0;
        double sum = 0;
        for (Band band : bands) {
            double weight = 1 / (band.deviation() * band.deviation());
            weights += weight;
            sum += weight * band.middle();
        }
        return new Band(sum / weights, 1 / Math.sqrt(weights));
    }
}
