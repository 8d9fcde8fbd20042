package org.lapwright.app.web.track.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.web.compare.Fields;

/**
 * How the form was before the last presses, and what was undone. It travels in the page.
 *
 * @param undo the last press first
 * @param redo what was undone last first
 */
public record History(List<Step> undo, List<Step> redo) {
    private static final int MOST = 12;

    /** Nothing was pressed yet. */
    public static final History NONE = new History(List.of(), List.of());

    /** Copies the lists. */
    public History {
        undo = List.copyOf(undo.subList(0, Math.min(MOST, undo.size())));
        redo = List.copyOf(redo.subList(0, Math.min(MOST, redo.size())));
    }

    /**
     * One press.
     *
     * @param what was done by it, as {@code Piece 3 removed}
     * @param state of the form on the other side of it, packed
     */
    public record Step(String what, String state) {
        /** As it stands in a hidden field. */
        public String text() {
            return state + " " + what;
        }

        static Optional<Step> from(String text) {
            String[] parts = text.split(" ", 2);
            return parts.length == 2 ? Optional.of(new Step(parts[1], parts[0])) : Optional.empty();
        }
    }

    /** What the page brought back. */
    public static History from(Fields fields) {
        return new History(steps(fields, "undo"), steps(fields, "redo"));
    }

    private static List<Step> steps(Fields fields, String name) {
        return fields.all(name).stream()
                .limit(MOST)
                .flatMap(text -> Step.from(text).stream())
                .toList();
    }

    /** After a press: what was undone before cannot be done again. */
    History after(String what, TrackForm before) {
        return new History(with(new Step(what, Snapshot.of(before)), undo), List.of());
    }

    History undone(TrackForm now) {
        Step last = undo.get(0);
        return new History(undo.subList(1, undo.size()), with(new Step(last.what(), Snapshot.of(now)), redo));
    }

    History redone(TrackForm now) {
        Step last = redo.get(0);
        return new History(with(new Step(last.what(), Snapshot.of(now)), undo), redo.subList(1, redo.size()));
    }

    private static List<Step> with(Step first, List<Step> others) {
        List<Step> steps = new ArrayList<>(List.of(first));
        steps.addAll(others);
        return steps;
    }
}
