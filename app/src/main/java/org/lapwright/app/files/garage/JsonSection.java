package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.lapwright.core.units.NumberKey;
import org.lapwright.core.units.Reading;
import org.lapwright.core.units.Readings;

/**
 * One object of a file while it is read. Every key that is asked for is checked; what is wrong goes to the {@link Findings}
 * with the key's full path, so that one pass finds all of it.
 */
final class JsonSection {
    private static final int LONGEST_SHOWN = 40;

    private final String path;
    private final ObjectNode object;
    private final Findings findings;
    private final int problemsBefore;
    private final Set<String> asked = new HashSet<>();

    JsonSection(String path, ObjectNode object, Findings findings) {
        this.path = path;
        this.object = object;
        this.findings = findings;
        this.problemsBefore = findings.problemCount();
    }

    /** The numbers under these keys, each alone or as {@code {"value": …, "plus_minus": …}}; missing ones are left out. */
    Readings readings(List<NumberKey> keys) {
        Readings numbers = Readings.none();
        for (NumberKey key : keys) {
            numbers = numbers.with(key, reading(here(key)));
        }
        return numbers;
    }

    /** A number that stands alone. */
    OptionalDouble number(NumberKey key) {
        NumberKey here = here(key);
        JsonNode found = find(here.name());
        if (found.isMissingNode()) {
            return OptionalDouble.empty();
        }
        if (!found.isNumber()) {
            refuse(here, found, "a number");
            return OptionalDouble.empty();
        }
        return check(here, Reading.exact(finite(found))).map(Reading::value).stream()
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    /** A number that stands alone and must be there. */
    double required(NumberKey key) {
        OptionalDouble number = number(key);
        if (number.isPresent()) {
            return number.getAsDouble();
        }
        if (!object.has(key.name())) {
            findings.problem(String.valueOf(here(key).missing().getMessage()));
        }
        return key.min();
    }

    /** A text. */
    Optional<String> text(String key) {
        JsonNode found = find(key);
        if (found.isMissingNode()) {
            return Optional.empty();
        }
        if (!found.isTextual()) {
            findings.problem(pathOf(key) + " is " + shown(found) + "; it must be a text in double quotes");
            return Optional.empty();
        }
        return Optional.of(found.textValue());
    }

    /** A text that must be there. */
    String requiredText(String key, String example) {
        Optional<String> text = text(key);
        if (text.isEmpty() && !object.has(key)) {
            findings.problem(pathOf(key) + " is missing; give a text such as \"" + example + "\"");
        }
        return text.orElse(example);
    }

    /** Yes or no. */
    Optional<Boolean> flag(String key) {
        JsonNode found = find(key);
        if (found.isMissingNode()) {
            return Optional.empty();
        }
        if (!found.isBoolean()) {
            findings.problem(pathOf(key) + " is " + shown(found) + "; it must be true or false");
            return Optional.empty();
        }
        return Optional.of(found.booleanValue());
    }

    /** An object in this one. */
    Optional<JsonSection> child(String key) {
        JsonNode found = find(key);
        if (found.isMissingNode()) {
            return Optional.empty();
        }
        return section(pathOf(key), found);
    }

    /**
     * An object that must be there. When it is not, that is told, and an empty one stands in for it, whose own findings go
     * nowhere: what is missing in it is no news.
     */
    JsonSection requiredChild(String key) {
        if (!object.has(key)) {
            findings.problem(pathOf(key) + " is missing; give an object in braces");
        }
        return child(key).orElseGet(() -> new JsonSection(pathOf(key), object.objectNode(), new Findings()));
    }

    /** The objects of a list; empty when there is no such key. */
    List<JsonSection> children(String key) {
        List<JsonSection> sections = new ArrayList<>();
        List<JsonNode> entries = entries(key);
        for (int i = 0; i < entries.size(); i++) {
            section(pathOf(key) + "[" + i + "]", entries.get(i)).ifPresent(sections::add);
        }
        return sections;
    }

    /** The entries of a list; empty when there is no such key. */
    List<JsonNode> entries(String key) {
        JsonNode found = find(key);
        if (found.isMissingNode()) {
            return List.of();
        }
        if (!found.isArray()) {
            findings.problem(pathOf(key) + " is " + shown(found) + "; it must be a list in brackets");
            return List.of();
        }
        List<JsonNode> entries = new ArrayList<>();
        found.forEach(entries::add);
        return entries;
    }

    /** The texts of a list; empty when there is no such key. What is no text in it is told and left out. */
    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (JsonNode entry : entries(key)) {
            if (entry.isTextual()) {
                texts.add(entry.textValue());
            } else {
                findings.problem(pathOf(key) + " has " + shown(entry) + "; its entries must be texts in double quotes");
            }
        }
        return texts;
    }

    boolean has(String key) {
        return object.has(key);
    }

    void problem(String sentence) {
        findings.problem(sentence);
    }

    /**
     * What this section says, unless something in it was wrong already; what then still makes no sense is told.
     *
     * @param build may throw {@link IllegalArgumentException} with a sentence for the racer
     */
    <T> Optional<T> build(Supplier<T> build) {
        noteUnknown();
        if (findings.problemCount() > problemsBefore) {
            return Optional.empty();
        }
        try {
            return Optional.of(build.get());
        } catch (IllegalArgumentException impossible) {
            findings.problem(String.valueOf(impossible.getMessage()));
            return Optional.empty();
        }
    }

    /** As {@link #build(Supplier)}, from the numbers under these keys. */
    <T> Optional<T> build(List<NumberKey> keys, Function<Readings, T> build) {
        Readings numbers = readings(keys);
        return build(() -> build.apply(numbers));
    }

    String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** A piece of a file as a message quotes it. */
    static String shown(JsonNode node) {
        if (node.isObject()) {
            return "an object";
        }
        if (node.isArray()) {
            return "a list";
        }
        String text = node.toString().replaceAll("\\p{Cntrl}", "\uFFFD");
        return text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
    }

    /** A text of the racer's own needs no remark; what looks like a measure and is not used may be a slip of the pen. */
    private void noteUnknown() {
        object.properties().forEach(entry -> {
            String name = entry.getKey();
            boolean measure = !new NumberKey("", name, 0, 0).unit().isEmpty();
            if (!asked.contains(name) && (measure || entry.getValue().isContainerNode())) {
                findings.note(pathOf(shortened(name)) + " is not used; it is kept as it is");
            }
        });
    }

    private static String shortened(String name) {
        String visible = name.replaceAll("\\p{Cntrl}", "\uFFFD");
        return visible.length() > LONGEST_SHOWN ? visible.substring(0, LONGEST_SHOWN) + "…" : visible;
    }

    private NumberKey here(NumberKey key) {
        return key.in(path);
    }

    private JsonNode find(String key) {
        asked.add(key);
        return object.path(key);
    }

    private Optional<Reading> reading(NumberKey key) {
        JsonNode found = find(key.name());
        if (found.isMissingNode()) {
            return Optional.empty();
        }
        if (found.isNumber()) {
            return check(key, Reading.exact(finite(found)));
        }
        if (found.isObject() && found.path("value").isNumber()) {
            return doubted(key, found);
        }
        refuse(key, found, "a number, or {\"value\": …, \"plus_minus\": …}");
        return Optional.empty();
    }

    private Optional<Reading> doubted(NumberKey key, JsonNode found) {
        JsonNode doubt = found.path("plus_minus");
        double plusMinus = doubt.isMissingNode() ? 0 : doubt.isNumber() ? finite(doubt) : -1;
        if (!(plusMinus >= 0 && plusMinus < key.max() - key.min())) {
            findings.problem(key.path() + ".plus_minus is " + shown(doubt)
                    + "; it must be one standard deviation, 0 or more, of a number " + key.range());
            return Optional.empty();
        }
        return check(key, new Reading(finite(found.path("value")), plusMinus));
    }

    /** A number of a file; one beyond what a double holds becomes the greatest that it does, which no range allows. */
    private static double finite(JsonNode number) {
        double value = number.doubleValue();
        return Double.isFinite(value) ? value : Math.copySign(Double.MAX_VALUE, value);
    }

    private Optional<Reading> check(NumberKey key, Reading reading) {
        try {
            return Optional.of(key.check(reading));
        } catch (IllegalArgumentException outside) {
            findings.problem(String.valueOf(outside.getMessage()));
            return Optional.empty();
        }
    }

    private void refuse(NumberKey key, JsonNode found, String wanted) {
        findings.problem(key.path() + " is " + shown(found) + "; it must be " + wanted + " " + key.range());
    }

    private Optional<JsonSection> section(String at, JsonNode found) {
        if (found instanceof ObjectNode inner) {
            return Optional.of(new JsonSection(at, inner, findings));
        }
        findings.problem(at + " is " + shown(found) + "; it must be an object in braces");
        return Optional.empty();
    }
}
