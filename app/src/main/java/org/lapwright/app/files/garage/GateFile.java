package org.lapwright.app.files.garage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.lapwright.core.units.Check;
import org.lapwright.core.units.NumberKey;

/**
 * Which gate of this computer the pages listen to, {@code lapwright-gate/1}: {@code port}, that of a serial line, none for the sound
 * card; {@code least_level_percent}; {@code "listening": false} where they listen no longer.
 *
 * @param port name of a serial port; empty for the sound card
 * @param leastLevelPercent least height of a pass on the sound card, percent of the full scale, 0 to 100
 * @param listening whether it is listened to
 */
public record GateFile(String port, double leastLevelPercent, boolean listening) {
    /** The format that this version reads and writes. */
    public static final String FORMAT = "lapwright-gate/1";

    private static final int LONGEST_PORT = 120;
    private static final double ALL = 100;
    private static final String LEVEL_NAME = "least_level_percent";
    private static final NumberKey LEVEL = new NumberKey("", LEVEL_NAME, 0, ALL);
    private static final String PORT = "port";
    private static final String LISTENING = "listening";

    /** Checks each. */
    public GateFile {
        port = port.isBlank() ? "" : Check.text(port, LONGEST_PORT, PORT);
        Check.inRange(leastLevelPercent, 0, ALL, "least level", "%");
    }

    /** Reads a file. */
    public static FileReading<GateFile> read(String text) {
        return FileReading.of(text, FORMAT, GateFile::content);
    }

    private static Optional<GateFile> content(JsonSection file) {
        String port = file.text(PORT).orElse("");
        double level = file.required(LEVEL);
        boolean listening = file.flag(LISTENING).orElse(true);
        return file.build(() -> new GateFile(port, level, listening));
    }

    /** The file's text. */
    public String text() {
        ObjectNode json = Document.empty();
        json.put("format", FORMAT);
        if (!port.isEmpty()) {
            json.put(PORT, port);
        }
        json.put(LEVEL_NAME, JsonPart.decimal(leastLevelPercent));
        json.put(LISTENING, listening);
        return Document.text(json);
    }
}
