package org.lapwright.app.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;

/** One JSON document for one command. */
final class Json {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    /** What {@code --json} does, as the help says it. */
    static final String OPTION = "Print JSON, for scripts and other programs.";

    private Json() {}

    static String of(Object value) {
        try {
            return MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a result cannot be written as JSON", impossible);
        }
    }
}
