package org.lapwright.app.web.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.Answers;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Side;

/**
 * Everything on the Before / After page that the racer typed or fixed. The page carries it all; the server keeps
 * nothing between two requests.
 *
 * @param boxes the boxes in the order driven
 * @param options as typed
 * @param fixed what the first look has fixed
 * @param words the racer's word on single laps
 * @param keep what was typed for keeping the comparison
 * @param key made up once for this form, so that keeping twice saves once
 * @param judged the fingerprint of what the verdict on the page was about; empty without a verdict
 */
public record CompareForm(
        List<Box> boxes,
        Options options,
        Optional<Fixed> fixed,
        List<LapWord> words,
        KeepFields keep,
        String key,
        String judged) {
    private static final int MOST_WORDS = 200;

    /** Copies the lists. */
    public CompareForm {
        boxes = List.copyOf(boxes);
        words = List.copyOf(words);
    }

    /** An empty form: one box a side. */
    public static CompareForm empty(String key) {
        return new CompareForm(
                List.of(Box.empty(Side.BEFORE), Box.empty(Side.AFTER)),
                Options.USUAL,
                Optional.empty(),
                List.of(),
                KeepFields.BLANK,
                key,
                "");
    }

    /** The same, about a change of a car. */
    public CompareForm about(String car, String change) {
        KeepFields about =
                new KeepFields(car, keep.track(), keep.lane(), keep.driver(), keep.conditions(), change, keep.stays());
        return new CompareForm(boxes, options, fixed, words, about, key, judged);
    }

    /** A form with laps in its two boxes. */
    public static CompareForm filled(String before, String after, String key) {
        return empty(key)
                .withBoxes(
                        List.of(new Box(Side.BEFORE, before, Answers.NONE), new Box(Side.AFTER, after, Answers.NONE)));
    }

    /** Reads a posted form; {@code freshKey} is taken if it has no key of its own. */
    public static CompareForm from(Fields fields, String freshKey) {
        List<Box> boxes = new ArrayList<>();
        for (int i = 1; i <= RunPlan.MOST_RUNS && fields.has("laps-" + i); i++) {
            boxes.add(new Box(
                    Side.find(fields.text("side-" + i)).orElse(nextSide(boxes.size())),
                    fields.text("laps-" + i),
                    Box.answers(fields.startingWith("answer-" + i + "-"))));
        }
        while (boxes.size() < 2) {
            boxes.add(Box.empty(nextSide(boxes.size())));
        }
        Options options = new Options(
                fields.text("plan"),
                fields.text("margin", Options.USUAL.marginPercent()),
                fields.text("sure", Options.USUAL.sure()),
                fields.has("hand"));
        String key = fields.text("key").matches("[0-9a-f]{32}") ? fields.text("key") : freshKey;
        return new CompareForm(
                boxes,
                options,
                Fixed.from(fields),
                fields.all("word").stream()
                        .limit(MOST_WORDS)
                        .flatMap(code -> LapWord.read(code).stream())
                        .toList(),
                KeepFields.from(fields),
                key,
                fields.text("judged"));
    }

    /** The side of the next run in the order A B B A A B B A …, which a straight drift does not disturb. */
    public static Side nextSide(int runsSoFar) {
        return runsSoFar % 4 == 0 || runsSoFar % 4 == 3 ? Side.BEFORE : Side.AFTER;
    }

    /** Whether another run fits. */
    public boolean hasRoom() {
        return boxes.size() < RunPlan.MOST_RUNS;
    }

    /** The same with another, empty run at the end. */
    public CompareForm withAnotherRun() {
        List<Box> more = new ArrayList<>(boxes);
        if (hasRoom()) {
            more.add(Box.empty(nextSide(boxes.size())));
        }
        return withBoxes(more);
    }

    /** The same without one run; never fewer than two. */
    public CompareForm withoutRun(int number) {
        List<Box> fewer = new ArrayList<>(boxes);
        if (number >= 1 && number <= boxes.size() && boxes.size() > 2) {
            fewer.remove(number - 1);
        }
        return withBoxes(fewer);
    }

    /** The same with the questions about one run open again. */
    public CompareForm withoutAnswers(int number) {
        List<Box> asked = new ArrayList<>(boxes);
        if (number >= 1 && number <= boxes.size()) {
            Box box = boxes.get(number - 1);
            asked.set(number - 1, new Box(box.side(), box.text(), Answers.NONE));
        }
        return withBoxes(asked);
    }

    /** The same boxes under other words. */
    public CompareForm withWords(List<LapWord> others) {
        return new CompareForm(boxes, options, fixed, others, keep, key, judged);
    }

    /** The same, fixed. */
    public CompareForm withFixed(Optional<Fixed> newlyFixed) {
        return new CompareForm(boxes, options, newlyFixed, words, keep, key, judged);
    }

    /** The same about another verdict. */
    public CompareForm withJudged(String fingerprint) {
        return new CompareForm(boxes, options, fixed, words, keep, key, fingerprint);
    }

    private CompareForm withBoxes(List<Box> others) {
        return new CompareForm(others, options, fixed, words, keep, key, judged);
    }
}
