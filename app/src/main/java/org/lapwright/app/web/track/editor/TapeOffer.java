package org.lapwright.app.web.track.editor;

import java.util.Optional;
import java.util.OptionalDouble;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.track.closing.TapeScale;

/**
 * What the tape says against the drawing.
 *
 * @param sentence the two lengths and the factor, or what is wrong; empty without a tape
 * @param lane that was measured, if it is known
 * @param factor for straights and radii; empty when there is nothing to scale
 */
public record TapeOffer(String sentence, Optional<Lane> lane, OptionalDouble factor) {
    private static final double SAME_MM = 0.05;

    static TapeOffer of(Editor editor) {
        Editor.Ruler ruler = editor.ruler();
        if (ruler.tape().isBlank()) {
            return said("Give the length of one lane by tape first.");
        }
        Typed typed = new Typed();
        double tapeMm = typed.number(ruler.tape(), TapeScale.TAPE, "Length by tape");
        if (!typed.problems().isEmpty()) {
            return said(typed.problems().get(0));
        }
        Optional<Track> track = editor.form().read().track();
        if (track.isEmpty()) {
            return said("The tape waits for the pieces and lanes to be understood.");
        }
        int number = ruler.tapeLane().matches("\\d{1,2}") ? Integer.parseInt(ruler.tapeLane()) : 1;
        int last = track.get().lanes().size();
        return of(track.get(), track.get().lanes().get(Math.max(1, Math.min(last, number)) - 1), tapeMm);
    }

    private static TapeOffer of(Track track, Lane lane, double tapeMm) {
        double drawnMm = 1000 * track.lengthM(lane);
        String said = "Lane %s: %s mm by tape, %s mm as drawn."
                .formatted(lane.name(), Figures.fixed(tapeMm, 1), Figures.fixed(drawnMm, 1));
        if (Math.abs(tapeMm - drawnMm) < SAME_MM) {
            return new TapeOffer(said + " They agree.", Optional.of(lane), OptionalDouble.empty());
        }
        try {
            double factor = TapeScale.factor(track.layout(), track.path(lane), tapeMm);
            TapeScale.scaled(track.layout(), factor);
            return new TapeOffer(
                    "%s All lengths and radii would become %s times as long; lanes stay as far apart."
                            .formatted(said, Figures.fixed(factor, 4)),
                    Optional.of(lane),
                    OptionalDouble.of(factor));
        } catch (IllegalArgumentException impossible) {
            return said(said + " That cannot be: " + impossible.getMessage() + ".");
        }
    }

    private static TapeOffer said(String sentence) {
        return new TapeOffer(sentence, Optional.empty(), OptionalDouble.empty());
    }

    /** The factor, as it is shown. */
    public String shown() {
        return Figures.fixed(factor.orElse(1), 4);
    }
}
