package org.lapwright.app.files;

import java.util.List;

/**
 * What a text of laps was understood to say.
 *
 * @param sessions one unless the text has a {@code session} column; none when no lap could be read
 * @param understoodAs how it was read, in words to show back: "30 laps, one a line, decimal comma"
 * @param problems what could not be used, at most {@value #MOST_PROBLEMS}
 * @param problemCount how many problems there were in all
 * @param questions what only the racer can say; until then the likelier reading was taken
 */
public record LapReading(
        List<ReadSession> sessions,
        String understoodAs,
        List<Problem> problems,
        int problemCount,
        List<Question> questions) {
    /** More laps than this are refused as a whole: nobody drives a million laps for one question. */
    public static final int MOST_LAPS = 1_000_000;

    /** More problems than this are counted, not listed. */
    public static final int MOST_PROBLEMS = 100;

    /** Copies the lists. */
    public LapReading {
        sessions = List.copyOf(sessions);
        problems = List.copyOf(problems);
        questions = List.copyOf(questions);
    }

    /** All runs of all sessions. */
    public List<ReadRun> runs() {
        return sessions.stream().flatMap(session -> session.runs().stream()).toList();
    }

    /** How many laps could be read. */
    public int laps() {
        return runs().stream().mapToInt(run -> run.laps().size()).sum();
    }

    /** Whether the text itself names sessions. */
    public boolean hasSessions() {
        return sessions.size() > 1
                || sessions.stream().anyMatch(session -> !session.name().isEmpty());
    }
}
