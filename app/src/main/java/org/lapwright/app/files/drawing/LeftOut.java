package org.lapwright.app.files.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What of a drawing was not taken along: counted by kind, so that a thousand texts are one sentence. */
final class LeftOut {
    private static final int MOST_SENTENCES = 20;

    private final Map<String, Integer> kinds = new TreeMap<>();
    private final List<String> sentences = new ArrayList<>();
    private int unsaid;

    void one(String kind) {
        String name = shortened(kind);
        kinds.merge(kinds.size() < MOST_SENTENCES || kinds.containsKey(name) ? name : "other things", 1, Integer::sum);
    }

    void say(String sentence) {
        if (sentences.size() < MOST_SENTENCES) {
            sentences.add(sentence);
        } else {
            unsaid++;
        }
    }

    /** What stood in the drawing, short enough and clean enough for a sentence. */
    static String shortened(String text) {
        String visible = text.replaceAll("\\p{Cntrl}", "\uFFFD");
        return visible.length() > 40 ? visible.substring(0, 40) + "…" : visible;
    }

    List<String> sentences() {
        List<String> all = new ArrayList<>(sentences);
        if (unsaid > 0) {
            all.add("%d more like these.".formatted(unsaid));
        }
        kinds.forEach((kind, count) -> all.add("Left out: %d × %s.".formatted(count, kind)));
        return all;
    }
}
