package org.lapwright.app.files;

/**
 * Something in a text or file that could not be used.
 *
 * @param line where, from 1; 0 when it concerns the whole text
 * @param text what stood there, shortened to 40 characters
 * @param what what is wrong with it
 * @param remedy what would be right; may be empty
 */
public record Problem(int line, String text, String what, String remedy) {
    private static final int LONGEST_TEXT = 40;

    /** Shortens the text and takes control characters out of it. */
    public Problem {
        String visible = text.replaceAll("\\p{Cntrl}", "\uFFFD");
        text = visible.codePointCount(0, visible.length()) > LONGEST_TEXT
                ? visible.substring(0, visible.offsetByCodePoints(0, LONGEST_TEXT - 1)) + "…"
                : visible;
    }

    /** A problem with the whole text. */
    public static Problem ofWhole(String what, String remedy) {
        return new Problem(0, "", what, remedy);
    }

    /** The problem as one sentence or two: what, where, what would be right. */
    public String sentence() {
        String where = line > 0 ? "Line " + line + ": " : "";
        String quoted = text.isEmpty() ? "" : "'" + text + "' ";
        String end = remedy.isEmpty() || remedy.endsWith("?") ? "" : ".";
        return where + quoted + what + "." + (remedy.isEmpty() ? "" : " " + remedy + end);
    }
}
