package org.lapwright.app.files.drawing;

import java.util.ArrayList;
import java.util.List;
import org.lapwright.app.files.Problem;

/** The pairs of a DXF text: a line with the number of a group, then a line with its value. */
final class DxfPairs {
    private final String text;
    private int at;
    private int line;
    private int nextLine = 1;
    private int code;
    private String value = "";

    DxfPairs(String text) {
        this.text = text;
    }

    /** Goes on to the next pair; false at the end of the text. */
    boolean next() {
        line = nextLine;
        if (at >= text.length()) {
            return ended();
        }
        String number = textLine().strip();
        if (number.isEmpty() && text.substring(at).isBlank()) {
            return ended();
        }
        if (!number.matches("-?\\d{1,4}")) {
            throw new Trouble(new Problem(
                    line,
                    number,
                    "is not the number of a DXF group",
                    "The file may be cut off or damaged; save it again"));
        }
        code = Integer.parseInt(number);
        if (at >= text.length() && code != 0) {
            throw new Trouble(new Problem(line, number, "has no value after it", "The file is cut off; save it again"));
        }
        value = textLine().strip();
        return true;
    }

    /** From here on it is as if the file said so itself. */
    private boolean ended() {
        at = text.length();
        code = 0;
        value = "EOF";
        return false;
    }

    int code() {
        return code;
    }

    String value() {
        return value;
    }

    /** Where the group stands, from 1. */
    int line() {
        return line;
    }

    boolean is(int wanted, String text) {
        return code == wanted && value.equals(text);
    }

    /** The groups up to the next that begins something; that one is then the current one. */
    List<DxfGroup> untilNext() {
        List<DxfGroup> groups = new ArrayList<>();
        while (next() && code != 0) {
            if (groups.size() > Budget.MOST) {
                throw Trouble.ofWhole(
                        "Line %d: one entity has more than 200,000 groups".formatted(line),
                        "Save the centre line alone");
            }
            if (DxfGroup.isGeometry(code)) {
                groups.add(new DxfGroup(line, code, value));
            }
        }
        return groups;
    }

    private String textLine() {
        int end = text.indexOf('\n', at);
        String found = end < 0 ? text.substring(at) : text.substring(at, end);
        at = end < 0 ? text.length() : end + 1;
        nextLine++;
        return found;
    }
}
