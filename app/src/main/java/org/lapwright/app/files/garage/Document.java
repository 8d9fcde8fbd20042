package org.lapwright.app.files.garage;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapwright.app.files.Problem;

/** The JSON of a file, before anybody asked what it means: one object that says which format it has. */
final class Document {
    private static final int LONGEST_FILE = 2_000_000;
    private static final int DEEPEST = 40;
    private static final int LONGEST_NUMBER = 100;

    /** Numbers keep their digits as written, so that what is not changed comes out as it went in. */
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    static {
        MAPPER.getFactory()
                .setStreamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST)
                        .maxNumberLength(LONGEST_NUMBER)
                        .maxStringLength(LONGEST_FILE)
                        .build());
    }

    private static final Pattern FORMAT = Pattern.compile("(lapwright-[a-z]+)/([0-9]{1,9})");

    private Document() {}

    /**
     * The object in a text, if the text is JSON of this format.
     *
     * @param text the file
     * @param format as {@code lapwright-car/1}
     */
    static Read read(String text, String format) {
        if (text.isBlank()) {
            return Read.refused("the file is empty", "It should be JSON with \"format\": \"" + format + "\"");
        }
        if (text.length() > LONGEST_FILE) {
            return Read.refused("the file is longer than 2 MB", "A " + kindOf(format) + " file is a few kB");
        }
        JsonNode tree;
        try {
            tree = MAPPER.readTree(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (JsonProcessingException broken) {
            return new Read(Optional.empty(), Optional.of(notJson(broken)));
        }
        if (!(tree instanceof ObjectNode object)) {
            return Read.refused(
                    "the file holds " + JsonSection.shown(tree),
                    "It should be one JSON object with \"format\": \"" + format + "\"");
        }
        return checkFormat(object, format)
                .map(problem -> new Read(Optional.empty(), Optional.of(problem)))
                .orElseGet(() -> new Read(Optional.of(object), Optional.empty()));
    }

    /** The text of a file with this content. */
    static String text(ObjectNode object) {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
        try {
            return MAPPER.writer(printer).writeValueAsString(object) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a tree cannot be written as JSON", impossible);
        }
    }

    static ObjectNode empty() {
        return MAPPER.createObjectNode();
    }

    private static Optional<Problem> checkFormat(ObjectNode object, String format) {
        JsonNode said = object.path("format");
        if (said.isMissingNode()) {
            return Optional.of(
                    Problem.ofWhole("format is missing", "Give \"format\": \"" + format + "\" as the first key"));
        }
        if (said.asText().equals(format) && said.isTextual()) {
            return Optional.empty();
        }
        Matcher named = FORMAT.matcher(said.asText());
        Matcher wanted = FORMAT.matcher(format);
        if (!named.matches() || !wanted.matches()) {
            return Optional.of(Problem.ofWhole(
                    "format is " + JsonSection.shown(said), "It must be \"" + format + "\" for a " + kindOf(format)));
        }
        if (!named.group(1).equals(wanted.group(1))) {
            return Optional.of(Problem.ofWhole(
                    "this is a " + kindOf(said.asText()) + " file (" + said.asText() + ")",
                    "A " + kindOf(format) + " file (" + format + ") is wanted here"));
        }
        return Optional.of(Problem.ofWhole(
                "format is \"" + said.asText() + "\", which this version of Lapwright does not know",
                "It reads \"" + format + "\"; a newer file needs a newer Lapwright"));
    }

    private static String kindOf(String format) {
        return format.substring(format.indexOf('-') + 1, format.indexOf('/'));
    }

    private static Problem notJson(JsonProcessingException broken) {
        JsonLocation at = broken.getLocation();
        String said = broken.getOriginalMessage().lines().findFirst().orElse("it cannot be read");
        // The parser explains how to configure it after the first sentence; a racer cannot.
        String first = said.split(" \\(|; ", 2)[0].strip();
        return new Problem(
                at == null ? 0 : Math.max(0, at.getLineNr()),
                "",
                (at == null ? "" : "column " + at.getColumnNr() + ": ") + "this is not JSON: " + first,
                "Keys and texts stand in double quotes, entries are parted by commas, numbers have a decimal point");
    }

    /**
     * What came out.
     *
     * @param object the content, or empty
     * @param problem why not, or empty
     */
    record Read(Optional<ObjectNode> object, Optional<Problem> problem) {
        private static Read refused(String what, String remedy) {
            return new Read(Optional.empty(), Optional.of(Problem.ofWhole(what, remedy)));
        }
    }
}
