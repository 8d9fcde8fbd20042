package org.lapwright.app.web.bench.guided;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.usecase.physics.ForecastInWords;
import org.lapwright.app.usecase.physics.NumberWords;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.app.web.track.Typed.Fault;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.measure.Asked;
import org.lapwright.core.car.measure.GuidedMeasurement;
import org.lapwright.core.units.Reading;

/**
 * One guided measurement of one car.
 *
 * @param shell around it
 * @param car name of the car
 * @param own whether the result can be put into it
 * @param guide what is measured, and how
 * @param rows what was typed
 * @param faults what could not be understood
 * @param results each number that changes, before and after; none before there is a result
 */
public record GuidedPage(
        Shell shell, String car, boolean own, Guide guide, List<Row> rows, List<Fault> faults, List<Result> results) {
    /** Readings of each quantity that fit on a page. */
    static final int READINGS = 3;

    /** Copies the lists. */
    public GuidedPage {
        rows = List.copyOf(rows);
        faults = List.copyOf(faults);
        results = List.copyOf(results);
    }

    /**
     * One quantity with its readings as typed.
     *
     * @param code its name in the form
     * @param label what people call it
     * @param values as typed, {@value #READINGS} of them
     */
    public record Row(String code, String label, List<String> values) {
        /** Copies the list. */
        public Row {
            values = List.copyOf(values);
        }
    }

    /**
     * A number that changes.
     *
     * @param label what people call it
     * @param before as it is in the file
     * @param after as measured
     */
    public record Result(String label, String before, String after) {}

    /**
     * What was understood.
     *
     * @param rows as typed
     * @param measured the car with what was measured; empty when there are faults
     * @param faults what could not be understood
     */
    public record Understood(List<Row> rows, Optional<SetUp> measured, List<Fault> faults) {
        /** Copies the lists. */
        public Understood {
            rows = List.copyOf(rows);
            faults = List.copyOf(faults);
        }
    }

    /** Nothing typed yet. */
    public static List<Row> empty(GuidedMeasurement what) {
        return what.asked().stream()
                .map(asked -> new Row(asked.code(), asked.label(), List.of("", "", "")))
                .toList();
    }

    /** Reads what was typed. */
    public static Understood read(GuidedMeasurement what, SetUp car, Fields fields) {
        Typed typed = new Typed();
        List<Row> rows = new ArrayList<>();
        Map<String, Reading> read = new HashMap<>();
        for (Asked asked : what.asked()) {
            List<String> texts = new ArrayList<>();
            List<Double> values = new ArrayList<>();
            for (int i = 1; i <= READINGS; i++) {
                String id = asked.code() + "-" + i;
                String text = fields.text(id);
                texts.add(text);
                if (!text.isBlank()) {
                    values.add(typed.at(id).number(text, asked.key(), asked.label()));
                }
            }
            rows.add(new Row(asked.code(), asked.label(), texts));
            if (values.isEmpty()) {
                typed.at(asked.code() + "-1").problem(asked.label() + " is empty; give at least one reading.");
            } else if (values.stream().allMatch(Double::isFinite)) {
                read.put(asked.code(), asked.together(values));
            }
        }
        Optional<SetUp> measured = typed.faults().isEmpty()
                ? typed.at(rows.get(0).code() + "-1").build("", () -> what.into(car, read))
                : Optional.empty();
        return new Understood(rows, measured, typed.faults());
    }

    /** The page. */
    public static GuidedPage of(
            Shell shell, String car, boolean own, GuidedMeasurement what, SetUp before, Understood reading) {
        return new GuidedPage(
                shell,
                car,
                own,
                Guide.of(what),
                reading.rows(),
                reading.faults(),
                reading.measured().map(after -> results(before, after)).orElse(List.of()));
    }

    /** What is not the same as before, by its place in the car file. */
    private static List<Result> results(SetUp before, SetUp after) {
        List<Result> results = new ArrayList<>();
        for (NamedReading number : after.numbers()) {
            Optional<NamedReading> was = before.numbers().stream()
                    .filter(other -> other.path().equals(number.path()))
                    .findFirst();
            if (was.map(NamedReading::reading).filter(number.reading()::equals).isEmpty()) {
                results.add(new Result(
                        NumberWords.of(number.path()).label(),
                        was.map(GuidedPage::written).orElse("not there"),
                        written(number)));
            }
        }
        return results;
    }

    private static String written(NamedReading number) {
        Reading reading = number.reading();
        double rounded = Double.parseDouble(String.format(Locale.ROOT, "%.5g", reading.value()));
        return ForecastInWords.reading(
                rounded, reading.plusMinus(), number.key().unit());
    }

    /** What is wrong with a field, or nothing. */
    public @Nullable String fault(String field) {
        return Fault.about(field, faults);
    }

    /** Where the list of measurements of the car is. */
    public String all() {
        return "/bench/guided?name=" + BenchPage.encoded(car);
    }
}
