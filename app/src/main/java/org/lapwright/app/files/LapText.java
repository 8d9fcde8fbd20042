package org.lapwright.app.files;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Reads laps from any text: a table with a header goes to {@link LapTable}, everything else to {@link LapList}.
 *
 * <p>Memory is bounded whatever the size of the source: a table is read as a stream and refused past
 * {@value LapReading#MOST_LAPS} laps, a list is refused past {@value #LONGEST_LIST} characters or
 * {@value LapList#MOST_TIMES} times.
 */
public final class LapText {
    /** Longest list without a header, in characters. */
    public static final int LONGEST_LIST = 16_000_000;

    private static final int HEAD = 8192;

    private LapText() {}

    /** Reads pasted text. Never throws for what it says: problems are in the result. */
    public static LapReading read(String text, Answers answers) {
        try {
            return read(new StringReader(text), answers);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a file in UTF-8, or in UTF-16 when it starts with that byte order mark.
     *
     * @throws IOException if the file cannot be read
     */
    public static LapReading read(Path file, Answers answers) throws IOException {
        try (InputStream bytes = Files.newInputStream(file)) {
            return read(bytes, answers);
        }
    }

    /**
     * Reads bytes in UTF-8, or in UTF-16 when they start with that byte order mark. Does not close the source.
     *
     * @throws IOException if the source fails
     */
    public static LapReading read(InputStream source, Answers answers) throws IOException {
        InputStream bytes = new BufferedInputStream(source);
        return read(new InputStreamReader(bytes, charset(bytes)), answers);
    }

    /**
     * Reads laps from characters.
     *
     * @throws IOException if the source fails
     */
    public static LapReading read(Reader source, Answers answers) throws IOException {
        PushbackReader reader = new PushbackReader(source, HEAD);
        char[] buffer = new char[HEAD];
        int length = fill(reader, buffer);
        int from = length > 0 && buffer[0] == '\uFEFF' ? 1 : 0;
        String head = new String(buffer, from, length - from);
        if (isBinary(head)) {
            return refused("This is not text", "Paste or open a list of lap times, or a CSV file with a lap_s column");
        }
        reader.unread(buffer, from, length - from);
        return LapTable.looksLikeTable(head) ? LapTable.read(reader, head, answers) : readList(reader, answers);
    }

    private static LapReading readList(Reader reader, Answers answers) throws IOException {
        StringBuilder text = new StringBuilder();
        char[] buffer = new char[HEAD];
        int length;
        while ((length = reader.read(buffer)) > 0) {
            text.append(buffer, 0, length);
            if (text.length() > LONGEST_LIST) {
                return refused(
                        "This list is longer than " + LONGEST_LIST + " characters; none of it was taken",
                        "Keep each stint in a file of its own");
            }
        }
        return LapList.read(text.toString(), answers);
    }

    static LapReading refused(String what, String remedy) {
        return new LapReading(List.of(), "no laps", List.of(Problem.ofWhole(what, remedy)), 1, List.of());
    }

    private static int fill(Reader reader, char[] buffer) throws IOException {
        int length = 0;
        int read;
        while (length < buffer.length && (read = reader.read(buffer, length, buffer.length - length)) > 0) {
            length += read;
        }
        return length;
    }

    private static boolean isBinary(String head) {
        long odd = head.chars()
                .filter(c -> (c < ' ' && c != '\n' && c != '\r' && c != '\t' && c != '\f') || c == '\uFFFD')
                .count();
        return head.indexOf('\0') >= 0 || 20 * odd > head.length();
    }

    private static Charset charset(InputStream bytes) throws IOException {
        bytes.mark(2);
        int first = bytes.read();
        int second = bytes.read();
        bytes.reset();
        boolean utf16 = (first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE);
        return utf16 ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    }
}
