package org.lapwright.app.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.LapInWords;
import org.lapwright.app.web.compare.CompareForm;
import org.lapwright.app.web.compare.Comparison;
import org.lapwright.app.web.compare.Fixed;
import org.lapwright.app.web.compare.KeepFields;
import org.lapwright.app.web.compare.LapWord;
import org.lapwright.app.web.compare.WordFields;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.trial.session.Side;

/**
 * The front page.
 *
 * @param shell around it
 * @param form what it carries
 * @param boxes the boxes
 * @param notices sentences about what went wrong or was dropped
 * @param outcome the verdict with what can be done about it; absent before the first look
 * @param focus number of the run that has just been added or changed; 0 for none
 * @param example whether the laps in the boxes are the invented example
 */
public record ComparePage(
        Shell shell,
        CompareForm form,
        List<BoxView> boxes,
        List<String> notices,
        Optional<Outcome> outcome,
        int focus,
        boolean example) {
    /** Copies the lists. */
    public ComparePage {
        boxes = List.copyOf(boxes);
        notices = List.copyOf(notices);
    }

    /** The boxes as read. */
    public static List<BoxView> boxes(Comparison comparison) {
        List<BoxView> boxes = new ArrayList<>();
        boolean hasChoice = comparison.readings().size() > 2;
        for (int i = 0; i < comparison.readings().size(); i++) {
            boxes.add(BoxView.of(i + 1, comparison.readings().get(i), hasChoice));
        }
        return boxes;
    }

    /** The parts beside the verdict that change with it, as the partial page names them. */
    public String besides() {
        StringBuilder parts = new StringBuilder("#options,#notices,#said:innerHTML");
        boxes.forEach(box -> parts.append(",#preview-").append(box.number()));
        return parts.toString();
    }

    /** Whether nothing has been pasted yet. */
    public boolean isBlank() {
        return form.boxes().stream().allMatch(box -> box.text().isBlank());
    }

    /** What a screen reader says about the page after a change. */
    public String said() {
        if (!notices.isEmpty()) {
            return String.join(" ", notices);
        }
        return outcome.map(found -> found.verdict().said())
                .orElseGet(() -> boxes.stream()
                        .map(box -> box.title() + ": " + box.preview().said() + ".")
                        .reduce((one, other) -> one + " " + other)
                        .orElse(""));
    }

    /** The racer's words on single laps, as sentences. */
    public List<String> words() {
        return form.words().stream()
                .map(word -> "Run %d, lap %d is %s, you say: “%s”"
                        .formatted(
                                word.run(),
                                word.lap(),
                                LapInWords.kind(word.overrule().kind()),
                                word.overrule().reason()))
                .toList();
    }

    /** The hidden fields that carry the words. */
    public List<String> wordCodes() {
        return form.words().stream().map(LapWord::code).toList();
    }

    /** The sentence about what is fixed. */
    public String fixedSentence() {
        return form.fixed()
                .map(fixed -> fixed.stated()
                        ? "Your plan is fixed: %s. Look as often as you like.".formatted(fixed.planInWords())
                        : "Plan fixed at your first look: %s. Look as often as you like."
                                .formatted(fixed.planInWords()))
                .orElse("");
    }

    /** The rest of what is fixed. */
    public String fixedDetails() {
        return form.fixed()
                .map(Fixed::settings)
                .map(settings -> "Margin %s, wrong at most once in %d, timed by %s."
                        .formatted(
                                Figures.percent(settings.levelMargin()),
                                Math.round(1 / settings.alpha()),
                                settings.handTimed() ? "hand" : "a gate"))
                .orElse("");
    }

    /**
     * A verdict with what can be done about it.
     *
     * @param verdict the verdict
     * @param editor for the racer's word on a lap
     * @param keep for keeping it
     */
    public record Outcome(VerdictView verdict, WordEditor editor, KeepView keep) {}

    /**
     * The form for the racer's word on a lap.
     *
     * @param typed what was typed
     * @param problem what is wrong with it; empty if nothing is
     * @param open whether the racer has just asked for it
     */
    public record WordEditor(WordFields typed, String problem, boolean open) {
        /** Nothing typed yet. */
        public static final WordEditor BLANK = new WordEditor(WordFields.BLANK, "", false);

        /** The kinds to choose from. */
        public List<LapKind> kinds() {
            return List.of(LapKind.values());
        }

        /** A kind as people say it. */
        public String label(LapKind wanted) {
            return LapInWords.kind(wanted);
        }
    }

    /**
     * The form for keeping a comparison.
     *
     * @param typed what was typed
     * @param suggested the set-up that the verdict suggests to stay
     * @param cars names of cars known
     * @param tracks names of tracks known
     * @param problem what went wrong; empty if nothing did
     */
    public record KeepView(KeepFields typed, Side suggested, List<String> cars, List<String> tracks, String problem) {
        /** Copies the lists. */
        public KeepView {
            cars = List.copyOf(cars);
            tracks = List.copyOf(tracks);
        }

        /** Whether this set-up is chosen. */
        public boolean stays(Side side) {
            return typed.stays().orElse(suggested) == side;
        }
    }
}
