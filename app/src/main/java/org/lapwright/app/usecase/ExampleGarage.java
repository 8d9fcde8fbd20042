package org.lapwright.app.usecase;

import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.function.Function;
import org.lapwright.app.usecase.GarageStore.ExampleState;
import org.lapwright.app.usecase.HistoryStore.NewStep;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * What would this look like with some cars in it? Invented cars on an invented track, marked as an example everywhere,
 * put in at the first start and out again in one click.
 *
 * <p>The verdicts are not part of the example: they are judged like any others when it is put in.
 */
public final class ExampleGarage {
    /** The car of the last comparison and of no other: when it is there, all are. */
    static final String LAST_CAR = "Whimbrel";

    private static final String FOLDER = "/example/";
    private static final String LAPS = FOLDER + "shed-loop.json";
    private static final String TRACK = "shed-loop.track.json";

    private static final Duration FILES_BEFORE_NOW = Duration.ofDays(30);

    /** The car that was worked on for an evening. */
    private static final String TUNED_CAR = "Sanderling";

    private static final Duration EVENING_BEFORE_NOW = Duration.ofDays(2);
    private static final Duration BETWEEN_CHANGES = Duration.ofMinutes(12);

    private final GarageStore store;
    private final JudgeChange judgeChange;
    private final Clock clock;
    private final Function<String, List<EveningStep>> evening;

    /** The example in {@code store}, judged by {@code judgeChange}, without an evening of changes. */
    public ExampleGarage(GarageStore store, JudgeChange judgeChange, Clock clock) {
        this(store, judgeChange, clock, file -> List.of());
    }

    /**
     * The example in {@code store}, judged by {@code judgeChange}.
     *
     * @param evening what was done to one of its cars, whose file it is given
     */
    public ExampleGarage(
            GarageStore store, JudgeChange judgeChange, Clock clock, Function<String, List<EveningStep>> evening) {
        this.store = store;
        this.judgeChange = judgeChange;
        this.clock = clock;
        this.evening = evening;
    }

    /**
     * A change of an example car.
     *
     * @param kind of change
     * @param words what was done
     * @param change what was given for it, as JSON
     * @param file the car file after it
     */
    public record EveningStep(String kind, String words, String change, String file) {}

    /**
     * Puts the example in unless it is there or the racer has taken it out; one that was interrupted is completed.
     *
     * @throws StoreException if it could not be saved
     */
    public void putInAtFirstStart() {
        if (store.exampleState() != ExampleState.REMOVED) {
            complete();
        }
    }

    /** Takes the example out; it can be brought back. */
    public void remove() {
        store.archiveExample(clock.instant());
    }

    /** Brings the example back, or puts it in if it never was. */
    public void bringBack() {
        store.restoreExample();
        complete();
    }

    /** Whether the example is there. */
    public ExampleState state() {
        return store.exampleState();
    }

    /** What the example consists of, in the order kept. */
    public static List<KeptComparison> comparisons() {
        Example example = read();
        return example.comparisons().stream()
                .map(told -> told.kept(example.track(), example.driver()))
                .toList();
    }

    /** Each comparison has a request key of its own, so that those already there are not put in again. */
    private void complete() {
        Example example = read();
        if (!store.isExample(LAST_CAR)) {
            keepComparisons(example);
        }
        if (store.files(FileStore.Kind.CAR).stream().noneMatch(KeptFile::example)) {
            keepFiles(example);
        }
        if (store.history(TUNED_CAR).isEmpty()) {
            logEvening();
        }
    }

    /** One step on the other; those that an interruption left undone are done now. */
    private void logEvening() {
        String base = text(TUNED_CAR.toLowerCase(Locale.ROOT) + ".car.json");
        Instant at = clock.instant().minus(EVENING_BEFORE_NOW);
        OptionalLong onto = OptionalLong.empty();
        int number = 0;
        for (EveningStep step : evening.apply(base)) {
            number++;
            at = at.plus(BETWEEN_CHANGES);
            NewStep logged =
                    new NewStep(TUNED_CAR, onto, base, step.kind(), step.words(), step.change(), step.file(), true, at);
            onto = OptionalLong.of(
                    store.log(logged, "example evening " + number).present());
        }
    }

    /** The numbers of the cars and the drawing of the track, as they were before the first of the laps. */
    private void keepFiles(Example example) {
        Instant at = clock.instant().minus(FILES_BEFORE_NOW);
        store.keepFile(new KeptFile(FileStore.Kind.TRACK, example.track(), text(TRACK), true, at));
        example.comparisons().stream()
                .map(Told::car)
                .distinct()
                .forEach(car -> store.keepFile(new KeptFile(
                        FileStore.Kind.CAR, car, text(car.toLowerCase(Locale.ROOT) + ".car.json"), true, at)));
    }

    private void keepComparisons(Example example) {
        Instant now = clock.instant();
        for (int i = 0; i < example.comparisons().size(); i++) {
            Told told = example.comparisons().get(i);
            KeptComparison kept = told.kept(example.track(), example.driver());
            store.keep(
                    kept,
                    judgeChange.judge(kept.session(), kept.settings()),
                    "example garage " + (i + 1),
                    now.minus(Duration.ofDays(told.daysBefore())));
        }
    }

    private static String text(String file) {
        try (InputStream in = ExampleGarage.class.getResourceAsStream(FOLDER + file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the example garage in " + FOLDER + file + " could not be read", e);
        }
    }

    private static Example read() {
        try (InputStream in = ExampleGarage.class.getResourceAsStream(LAPS)) {
            return JsonMapper.builder()
                    .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                    .build()
                    .readValue(in, Example.class);
        } catch (IOException e) {
            throw new UncheckedIOException("the example garage in " + LAPS + " could not be read", e);
        }
    }

    /** The file: {@code about} says that all of it is invented. */
    private record Example(String about, String track, String driver, List<Told> comparisons) {}

    /** One comparison in the file, kept some evenings before the example was put in. */
    private record Told(
            String car, String lane, String change, String stays, String plan, int daysBefore, List<ToldRun> runs) {
        KeptComparison kept(String track, String driver) {
            List<DrivenRun> driven = new ArrayList<>();
            for (ToldRun run : runs) {
                driven.add(new DrivenRun(side(run.side()), run.timed()));
            }
            return new KeptComparison(
                    car,
                    track,
                    lane,
                    driver,
                    "",
                    change,
                    side(stays),
                    new Session(driven),
                    TrialSettings.DEFAULT.withPlan(RunPlan.parse(plan)),
                    true);
        }

        private static Side side(String code) {
            return Side.find(code).orElseThrow(() -> new IllegalStateException("'" + code + "' is no side"));
        }
    }

    private record ToldRun(String side, List<Double> lapS, List<Word> words) {
        TimedRun timed() {
            List<TimedLap> laps = new ArrayList<>();
            for (int i = 0; i < lapS.size(); i++) {
                laps.add(new TimedLap(i + 1, lapS.get(i)));
            }
            return new TimedRun(laps, words.stream().map(Word::overrule).toList());
        }
    }

    private record Word(int lap, String kind, String reason) {
        Overrule overrule() {
            LapKind said =
                    LapKind.find(kind).orElseThrow(() -> new IllegalStateException("'" + kind + "' is no kind of lap"));
            return new Overrule(lap, said, reason);
        }
    }
}
