package org.lapwright.app.capture;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Lines from bytes as they come. What is longer than any line is cut, so that noise without end fills no memory. */
final class LineFeed {
    private static final int ROOM = 4 * WireLine.LONGEST;

    private final byte[] line = new byte[ROOM];
    private int filled;

    /** The lines that end within these bytes. */
    List<String> take(byte[] bytes, int count) {
        List<String> ended = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (bytes[i] == '\n') {
                ended.add(rest());
            } else if (filled < ROOM) {
                line[filled++] = bytes[i];
            }
        }
        return ended;
    }

    /** What has come of a line that has not ended; it is taken out. */
    String rest() {
        String text = new String(line, 0, filled, StandardCharsets.US_ASCII);
        filled = 0;
        return text;
    }
}
