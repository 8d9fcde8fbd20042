package org.lapwright.core.car;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the published numbers under {@code reference/physics}; its README names every source. */
public final class PhysicsFiles {
    private PhysicsFiles() {}

    /** A JSON file. */
    public static JsonNode json(String name) {
        try (InputStream in = open(name)) {
            return new ObjectMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The entry of a JSON list with this id. */
    public static JsonNode entry(JsonNode list, String id) {
        for (JsonNode entry : list) {
            if (entry.path("id").asText().equals(id)) {
                return entry;
            }
        }
        throw new AssertionError("no entry " + id);
    }

    /** The rows of a CSV file by the names in its header. Quotes only shield commas in these files. */
    public static List<Map<String, String>> rows(String name) {
        try (InputStream in = open(name)) {
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            List<String> header = cells(lines.get(0));
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                List<String> cells = cells(line);
                assertThat(cells).as(line).hasSameSizeAs(header);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < cells.size(); i++) {
                    row.put(header.get(i), cells.get(i));
                }
                rows.add(row);
            }
            return rows;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The row of a CSV file whose first column says this. */
    public static Map<String, String> row(String name, String first) {
        return rows(name).stream()
                .filter(row -> row.values().iterator().next().equals(first))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + first + " in " + name));
    }

    /** A text of a row. */
    public static String text(Map<String, String> row, String column) {
        String text = row.get(column);
        if (text == null) {
            throw new AssertionError("no " + column + " in " + row);
        }
        return text;
    }

    /** A number of a row. */
    public static double number(Map<String, String> row, String column) {
        return Double.parseDouble(text(row, column));
    }

    private static InputStream open(String name) {
        InputStream in = PhysicsFiles.class.getResourceAsStream("/reference/physics/" + name);
        assertThat(in).as(name).isNotNull();
        return in;
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }
}
