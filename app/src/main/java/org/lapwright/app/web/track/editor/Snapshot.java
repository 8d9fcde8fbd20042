package org.lapwright.app.web.track.editor;

import java.io.ByteArrayOutputStream;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;
import org.lapwright.app.web.compare.Fields;

/** A form packed into a text that fits a hidden field, so that the page itself remembers how it was. */
final class Snapshot {
    /** A form with 200 pieces has some 25,000 characters. */
    private static final int LONGEST = 1_000_000;

    private Snapshot() {}

    static String of(TrackForm form) {
        String pairs = form.fields().entrySet().stream()
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true);
        try {
            deflater.setInput(pairs.getBytes(StandardCharsets.UTF_8));
            deflater.finish();
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            byte[] buffer = new byte[4096];
            while (!deflater.finished()) {
                packed.write(buffer, 0, deflater.deflate(buffer));
            }
            return Base64.getUrlEncoder().withoutPadding().encodeToString(packed.toByteArray());
        } finally {
            deflater.end();
        }
    }

    /** The form again; empty if the text is none of ours. */
    static Optional<TrackForm> form(String text) {
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(Base64.getUrlDecoder().decode(text));
            ByteArrayOutputStream pairs = new ByteArrayOutputStream();
            byte[] buffer = new byte[4096];
            while (!inflater.finished()) {
                int length = inflater.inflate(buffer);
                if (length == 0 || pairs.size() > LONGEST) {
                    return Optional.empty();
                }
                pairs.write(buffer, 0, length);
            }
            return Optional.of(TrackForm.from(new Fields(parsed(pairs.toString(StandardCharsets.UTF_8)))));
        } catch (IllegalArgumentException | DataFormatException strange) {
            return Optional.empty();
        } finally {
            inflater.end();
        }
    }

    private static Map<String, List<String>> parsed(String pairs) {
        Map<String, List<String>> fields = new HashMap<>();
        for (String pair : pairs.split("&")) {
            String[] parts = pair.split("=", 2);
            if (parts.length == 2) {
                fields.put(parts[0], List.of(URLDecoder.decode(parts[1], StandardCharsets.UTF_8)));
            }
        }
        return fields;
    }
}
