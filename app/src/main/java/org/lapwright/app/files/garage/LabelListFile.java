package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lapwright.core.units.Check;

/**
 * Tags of the owner's cars and which are put away, {@code lapwright-labels/1}: a list {@code cars}, each with its {@code name}, its
 * {@code tags}, and {@code "put_away": true} where it is.
 *
 * @param cars by name; a car with neither is not there
 */
public record LabelListFile(Map<String, Label> cars) {
    /** The format that this version reads and writes. */
    public static final String FORMAT = "lapwright-labels/1";

    /** No labels. */
    public static final LabelListFile NONE = new LabelListFile(Map.of());

    private static final int MOST_TAGS = 12;
    private static final int LONGEST_TAG = 30;
    private static final int LONGEST_NAME = 80;
    private static final String PUT_AWAY = "put_away";

    /** Checks the names and leaves out cars of which nothing is said. */
    public LabelListFile {
        Map<String, Label> said = new TreeMap<>();
        cars.forEach((name, label) -> {
            if (!label.equals(Label.NONE)) {
                said.put(Check.text(name, LONGEST_NAME, "name of a car"), label);
            }
        });
        cars = Collections.unmodifiableMap(said);
    }

    /**
     * What is said of a car.
     *
     * @param tags the owner's words for it, each once
     * @param putAway whether it is off the bench
     */
    public record Label(List<String> tags, boolean putAway) {
        /** Nothing. */
        public static final Label NONE = new Label(List.of(), false);

        /** Checks the tags. */
        public Label {
            tags = tags.stream()
                    .map(tag -> Check.text(tag.strip(), LONGEST_TAG, "a tag"))
                    .distinct()
                    .toList();
            if (tags.size() > MOST_TAGS) {
                throw new IllegalArgumentException("%d tags; at most %d fit".formatted(tags.size(), MOST_TAGS));
            }
        }
    }

    /** What is said of a car. */
    public Label of(String car) {
        return cars.getOrDefault(car, Label.NONE);
    }

    /** The same with something else said of one car. */
    public LabelListFile with(String car, Label label) {
        Map<String, Label> others = new TreeMap<>(cars);
        others.put(car, label);
        return new LabelListFile(others);
    }

    /** Reads a file. */
    public static FileReading<LabelListFile> read(String text) {
        return FileReading.of(text, FORMAT, LabelListFile::content);
    }

    private static Optional<LabelListFile> content(JsonSection file) {
        Map<String, Label> cars = new TreeMap<>();
        for (JsonSection section : file.children("cars")) {
            String name = section.requiredText("name", "Dunlin");
            List<String> tags = section.texts("tags");
            boolean putAway = section.flag(PUT_AWAY).orElse(false);
            section.build(() -> new Label(tags, putAway)).ifPresent(label -> cars.put(name, label));
        }
        return file.build(() -> new LabelListFile(cars));
    }

    /** The file's text. */
    public String text() {
        ObjectNode json = Document.empty();
        json.put("format", FORMAT);
        json.putArray("cars");
        cars.forEach((name, label) -> {
            ObjectNode entry = json.withArrayProperty("cars").addObject();
            entry.put("name", name);
            label.tags().forEach(entry.putArray("tags")::add);
            if (label.putAway()) {
                entry.put(PUT_AWAY, true);
            }
        });
        return Document.text(json);
    }
}
