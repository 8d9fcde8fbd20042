package org.lapwright.app.web.track.editor;

import org.lapwright.app.web.compare.Fields;

/**
 * The editor as it stands: the form, and what helps in filling it.
 *
 * @param form the track as typed
 * @param place after which piece the next one goes, from 0
 * @param ruler what helps to put lanes and tape in
 * @param history how it was before
 * @param said what happened at the last press; empty when nothing did
 */
public record Editor(TrackForm form, int place, Ruler ruler, History history, String said) {
    /**
     * Helpers that are no part of the track.
     *
     * @param lanes how many lanes to lay out evenly
     * @param spacing from lane to lane, mm
     * @param tapeLane number of the lane that was measured, from 1
     * @param tape its length by tape, mm; may be empty
     */
    public record Ruler(String lanes, String spacing, String tapeLane, String tape) {
        static Ruler from(Fields fields) {
            return new Ruler(
                    fields.text("lanes", "2"),
                    fields.text("spacing", "100"),
                    fields.text("tape-lane", "1"),
                    fields.text("tape"));
        }
    }

    /** A form that was just opened. */
    public static Editor opened(TrackForm form) {
        int pieces = form.pieces().size();
        String lanes = String.valueOf(Math.max(1, form.lanes().size()));
        return new Editor(form, pieces, new Ruler(lanes, "100", "1", ""), History.NONE, "");
    }

    /** What the page brought back. */
    public static Editor from(Fields fields) {
        TrackForm form = TrackForm.from(fields);
        int pieces = form.pieces().size();
        String place = fields.text("place", String.valueOf(pieces));
        return new Editor(
                form,
                place.matches("\\d{1,4}") ? Math.min(pieces, Integer.parseInt(place)) : pieces,
                Ruler.from(fields),
                History.from(fields),
                "");
    }

    /** After a press that changed the form. */
    Editor did(TrackForm changed, int nextPlace, String what) {
        if (changed.equals(form)) {
            return this;
        }
        int pieces = changed.pieces().size();
        return new Editor(
                changed, Math.max(0, Math.min(pieces, nextPlace)), ruler, history.after(what, form), what + ".");
    }

    /** Nothing changed, but something is to be said. */
    public Editor saying(String sentence) {
        return new Editor(form, place, ruler, history, sentence);
    }

    Editor at(int nextPlace) {
        int held = Math.max(0, Math.min(form.pieces().size(), nextPlace));
        String where = held == 0 ? "before piece 1" : "after piece " + held;
        return new Editor(form, held, ruler, history, "The next piece goes " + where + ".");
    }

    Editor undone() {
        return history.undo().isEmpty()
                ? saying("There is nothing to undo.")
                : Snapshot.form(history.undo().get(0).state())
                        .map(before -> back(before, history.undone(form), "Undone: ", history.undo()))
                        .orElseGet(() -> saying("That cannot be undone any more."));
    }

    Editor redone() {
        return history.redo().isEmpty()
                ? saying("There is nothing to do again.")
                : Snapshot.form(history.redo().get(0).state())
                        .map(after -> back(after, history.redone(form), "Done again: ", history.redo()))
                        .orElseGet(() -> saying("That cannot be done again any more."));
    }

    private Editor back(TrackForm other, History then, String word, java.util.List<History.Step> steps) {
        int pieces = other.pieces().size();
        int where = place == form.pieces().size() ? pieces : Math.min(place, pieces);
        return new Editor(other, where, ruler, then, word + steps.get(0).what() + ".");
    }
}
