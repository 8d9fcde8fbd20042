package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/** One object of a file while it is written. What already says the same is left as it stands, digit by digit. */
final class JsonPart {
    private static final String VALUE = "value";
    private static final String DOUBT = "plus_minus";

    private final ObjectNode object;

    JsonPart(ObjectNode object) {
        this.object = object;
    }

    JsonPart child(String key) {
        return new JsonPart(object.withObjectProperty(key));
    }

    void readings(Readings numbers) {
        for (String key : numbers.names()) {
            reading(key, numbers.get(key));
        }
    }

    /** A number whose absence means 0: a 0 that was not written is not written now. */
    void readingUnlessZero(String key, Reading reading) {
        if (object.has(key) || !reading.equals(Reading.exact(0))) {
            reading(key, reading);
        }
    }

    void reading(String key, Reading reading) {
        JsonNode written = object.path(key);
        if (written.isObject() && reading.isUncertain()) {
            ObjectNode doubted = (ObjectNode) written;
            number(doubted, VALUE, reading.value());
            number(doubted, DOUBT, reading.plusMinus());
        } else if (reading.isUncertain()) {
            ObjectNode doubted = object.putObject(key);
            number(doubted, VALUE, reading.value());
            number(doubted, DOUBT, reading.plusMinus());
        } else if (!(written.isObject() && says(written.path(VALUE), reading.value()) && isSure(written))) {
            number(object, key, reading.value());
        }
    }

    void number(String key, double value) {
        number(object, key, value);
    }

    void text(String key, String text) {
        if (!object.path(key).asText().strip().equals(text)) {
            object.put(key, text);
        }
    }

    void flag(String key, boolean value) {
        object.put(key, value);
    }

    void drop(String key) {
        object.remove(key);
    }

    /** Takes out those keys under which there is no number any more. */
    void dropUnless(Readings kept, List<NumberKey> keys) {
        for (NumberKey key : keys) {
            if (kept.find(key).isEmpty()) {
                object.remove(key.name());
            }
        }
    }

    private static boolean isSure(JsonNode doubted) {
        return doubted.path(DOUBT).asDouble() == 0;
    }

    private static void number(ObjectNode object, String key, double value) {
        if (!says(object.path(key), value)) {
            object.put(key, decimal(value));
        }
    }

    private static boolean says(JsonNode written, double value) {
        return written.isNumber() && written.doubleValue() == value;
    }

    /** The shortest digits that mean this double, without a trailing {@code .0} or an exponent. */
    static BigDecimal decimal(double value) {
        BigDecimal shortest = new BigDecimal(Double.toString(value)).stripTrailingZeros();
        return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
    }
}
