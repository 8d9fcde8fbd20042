package org.lapwright.app.web.bench.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapwright.app.usecase.physics.NumberWords;
import org.lapwright.app.web.bench.Typed;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.core.car.change.Ask;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChangeKind;
import org.lapwright.core.car.change.Values;
import org.lapwright.core.units.Reading;

/**
 * What was typed about a change.
 *
 * @param kind its kind
 * @param fields what it asks for, as typed or offered
 * @param note the racer's word on it
 */
public record ChangeForm(ChangeKind kind, List<Field> fields, String note) {
    private static final String DOUBT = ".plus_minus";

    /** Copies the list. */
    public ChangeForm {
        fields = List.copyOf(fields);
    }

    /**
     * One field.
     *
     * @param ask what it asks for
     * @param value as typed or offered
     * @param plusMinus as typed
     * @param problem what is wrong with it; empty when nothing is
     */
    public record Field(Ask ask, String value, String plusMinus, String problem) {
        /** Its label with the unit. */
        public String unit() {
            return ask.range().map(range -> range.unit()).orElse("");
        }

        /** How to measure it; empty for what is no number of the car file. */
        public String hint() {
            return ask.range()
                    .filter(range -> !range.section().isEmpty())
                    .map(range -> NumberWords.of(range).measure())
                    .orElse("");
        }

        /** Whether something is wrong with it. */
        public boolean isWrong() {
            return !problem.isEmpty();
        }

        /** Whether it may be below zero. */
        public boolean signed() {
            return ask.range().filter(range -> range.min() < 0).isPresent();
        }
    }

    /** What was read of a form: the change, or the form with what is wrong in it. */
    public record Read(Optional<Change> change, ChangeForm form, Optional<String> problem) {}

    /**
     * A form to begin from: what the address gives, else what the car has now.
     *
     * @param given values by their keys
     */
    public static ChangeForm offered(ChangeKind kind, Build car, Map<String, List<String>> given) {
        Fields address = new Fields(given);
        return new ChangeForm(
                kind,
                kind.asks(car).stream()
                        .map(ask -> new Field(
                                ask, address.text(ask.key(), ask.offered().orElse("")), "", ""))
                        .toList(),
                "");
    }

    /** A form as sent. */
    public static ChangeForm from(ChangeKind kind, Build car, Fields sent) {
        return new ChangeForm(
                kind,
                kind.asks(car).stream()
                        .map(ask -> new Field(ask, sent.text(ask.key()), sent.text(ask.key() + DOUBT), ""))
                        .toList(),
                sent.text("note").strip());
    }

    /** The change that was typed. */
    public Read read() {
        Values values = Values.NONE;
        Map<String, String> problems = new HashMap<>();
        for (Field field : fields) {
            try {
                values = taken(values, field);
            } catch (IllegalArgumentException wrong) {
                problems.put(field.ask().key(), String.valueOf(wrong.getMessage()));
            }
        }
        if (!problems.isEmpty()) {
            return new Read(Optional.empty(), with(problems), Optional.empty());
        }
        try {
            return new Read(Optional.of(kind.of(values)), this, Optional.empty());
        } catch (IllegalArgumentException wrong) {
            return new Read(Optional.empty(), this, Optional.of(String.valueOf(wrong.getMessage())));
        }
    }

    private static Values taken(Values values, Field field) {
        if (field.ask().range().isPresent()) {
            Optional<Reading> reading = new Typed(field.value(), field.plusMinus())
                    .exactUnlessDoubted(field.ask().range().get());
            if (reading.isEmpty() && field.ask().required()) {
                throw new IllegalArgumentException(
                        "empty; give a number " + field.ask().range().get().range());
            }
            return reading.map(given -> values.with(field.ask().key(), given)).orElse(values);
        }
        if (field.value().isBlank() && field.ask().required()) {
            throw new IllegalArgumentException(
                    field.ask().choices().isEmpty()
                            ? "empty; say what"
                            : "nothing to choose; there is none on the car");
        }
        return values.with(field.ask().key(), field.value().strip());
    }

    private ChangeForm with(Map<String, String> problems) {
        List<Field> marked = new ArrayList<>();
        for (Field field : fields) {
            String problem =
                    Optional.ofNullable(problems.get(field.ask().key())).orElse("");
            marked.add(new Field(field.ask(), field.value(), field.plusMinus(), problem));
        }
        return new ChangeForm(kind, marked, note);
    }
}
