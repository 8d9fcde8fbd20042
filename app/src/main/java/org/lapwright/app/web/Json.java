package org.lapwright.app.web;

import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;

/** JSON in and out; set up at the first use only. */
final class Json {
    private Json() {}

    static byte[] write(Object value) {
        try {
            return Mapper.JSON.writeValueAsBytes(value);
        } catch (JsonProcessingException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /**
     * Reads a document.
     *
     * @throws IllegalArgumentException with what is wrong and where
     */
    static <T> T read(byte[] bytes, Class<T> type) {
        try {
            T read = Mapper.JSON.readValue(bytes, type);
            if (read == null) {
                throw new IllegalArgumentException("the document is null; it has to be an object");
            }
            return read;
        } catch (UnrecognizedPropertyException unknown) {
            throw new IllegalArgumentException(
                    "%s is not known; the keys there are %s".formatted(path(unknown), unknown.getKnownPropertyIds()),
                    unknown);
        } catch (JsonMappingException unfit) {
            throw new IllegalArgumentException(
                    "%s does not fit: it has another type than it should".formatted(path(unfit)), unfit);
        } catch (JsonParseException malformed) {
            throw new IllegalArgumentException(
                    "this is not JSON from line %d, column %d on"
                            .formatted(
                                    malformed.getLocation().getLineNr(),
                                    malformed.getLocation().getColumnNr()),
                    malformed);
        } catch (IOException unreadable) {
            throw new IllegalArgumentException("the document cannot be read as JSON", unreadable);
        }
    }

    private static String path(JsonMappingException wrong) {
        StringBuilder path = new StringBuilder();
        for (JsonMappingException.Reference step : wrong.getPath()) {
            if (step.getFieldName() == null) {
                path.append('[').append(step.getIndex()).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(step.getFieldName());
            }
        }
        return path.isEmpty() ? "the document" : path.toString();
    }

    private static final class Mapper {
        static final JsonMapper JSON = JsonMapper.builder()
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .build();
    }
}
