package org.lapwright.app.files.garage;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The reference cars and tracks as text. */
public final class Reference {
    private Reference() {}

    /** The text of a file under {@code reference/lap/}. */
    public static String text(String name) {
        try (InputStream in = Reference.class.getResourceAsStream("/reference/lap/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
