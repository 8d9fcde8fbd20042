package org.lapwright.core.stats;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.stream.StreamSupport;

/** One published case: input, expected numbers, the relative tolerance that the source supports. */
public final class ReferenceCase {
    /** Absolute tolerance near zero. */
    private static final double NEAR_ZERO = 1e-12;

    private final JsonNode root;
    private final double relativeTolerance;

    private ReferenceCase(JsonNode root, double relativeTolerance) {
        this.root = root;
        this.relativeTolerance = relativeTolerance;
    }

    /** Loads {@code reference/statistics/<id>.json}. */
    public static ReferenceCase load(String id) {
        try (InputStream in = ReferenceCase.class.getResourceAsStream("/reference/statistics/" + id + ".json")) {
            assertThat(in).as("case %s", id).isNotNull();
            JsonNode root = new ObjectMapper().readTree(in);
            return new ReferenceCase(root, root.get("rel_tol").asDouble());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same case held to another tolerance. */
    public ReferenceCase within(double tolerance) {
        return new ReferenceCase(root, tolerance);
    }

    public double[] inputs(String name) {
        return doubles(at("input", name));
    }

    public double input(String name) {
        return at("input", name).asDouble();
    }

    public String[] inputTexts(String name) {
        return StreamSupport.stream(at("input", name).spliterator(), false)
                .map(JsonNode::asText)
                .toArray(String[]::new);
    }

    /** An input matrix, one array a row. */
    public double[][] inputRows(String name) {
        return StreamSupport.stream(at("input", name).spliterator(), false)
                .map(ReferenceCase::doubles)
                .toArray(double[][]::new);
    }

    public double expected(String... path) {
        return number(at(expectedPath(path)));
    }

    public double[] expectedAll(String... path) {
        return doubles(at(expectedPath(path)));
    }

    public double[][] expectedRows(String... path) {
        return StreamSupport.stream(at(expectedPath(path)).spliterator(), false)
                .map(ReferenceCase::doubles)
                .toArray(double[][]::new);
    }

    public Iterator<String> expectedNames(String... path) {
        return at(expectedPath(path)).fieldNames();
    }

    /** Holds a computed number to the expected one at a path below "expected". */
    public void check(double actual, String... path) {
        compare(actual, expected(path), String.join(".", path));
    }

    /** Holds computed numbers to the expected ones at a path below "expected". */
    public void checkAll(double[] actual, String... path) {
        double[] expected = expectedAll(path);
        assertThat(actual).as(String.join(".", path)).hasSameSizeAs(expected);
        for (int i = 0; i < expected.length; i++) {
            compare(actual[i], expected[i], "%s[%d]".formatted(String.join(".", path), i));
        }
    }

    /** Holds one number to another with the tolerance of the case. */
    public void compare(double actual, double expected, String name) {
        if (Double.isInfinite(expected)) {
            assertThat(actual).as(name).isEqualTo(expected);
        } else {
            assertThat(actual)
                    .as("%s of %s", name, root.get("id").asText())
                    .isBetween(expected - allowance(expected), expected + allowance(expected));
        }
    }

    private double allowance(double expected) {
        return Math.max(NEAR_ZERO, relativeTolerance * Math.abs(expected));
    }

    private static String[] expectedPath(String... path) {
        String[] full = new String[path.length + 1];
        full[0] = "expected";
        System.arraycopy(path, 0, full, 1, path.length);
        return full;
    }

    private JsonNode at(String... path) {
        JsonNode node = root;
        for (String name : path) {
            JsonNode next = node.get(name);
            if (next == null) {
                throw new AssertionError("no %s in %s".formatted(String.join(".", path), root.get("id")));
            }
            node = next;
        }
        return node;
    }

    private static double[] doubles(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .mapToDouble(ReferenceCase::number)
                .toArray();
    }

    private static double number(JsonNode node) {
        return switch (node.asText()) {
            case "Infinity" -> Double.POSITIVE_INFINITY;
            case "-Infinity" -> Double.NEGATIVE_INFINITY;
            default -> node.asDouble();
        };
    }
}
