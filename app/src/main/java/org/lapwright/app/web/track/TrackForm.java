package org.lapwright.app.web.track;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.NumberKey;

/**
 * A track as typed, piece by piece, before it is believed.
 *
 * @param name what it is called
 * @param lanes how many
 * @param spacing between them, mm
 * @param supply volts
 * @param magnetic whether magnets pull
 * @param source resistance of supply, controller and leads, ohm
 * @param rail resistance of a metre of lap, ohm
 * @param brake resistance of the braking circuit, ohm; empty when the controller does not brake
 * @param replace whether it may take the place of the track of that name
 * @param pieces from the timing line on
 */
public record TrackForm(
        String name,
        String lanes,
        String spacing,
        String supply,
        boolean magnetic,
        String source,
        String rail,
        String brake,
        boolean replace,
        List<PieceFields> pieces) {
    /** More pieces than this want a file. */
    public static final int MOST_PIECES = 200;

    private static final NumberKey COUNT = new NumberKey("", "lanes", 1, 16);
    private static final NumberKey SPACING = new NumberKey("", "spacing_mm", 10, 500);

    /** Copies the list. */
    public TrackForm {
        pieces = List.copyOf(pieces);
    }

    /** An oval to begin with. The resistances are usual ones (common practice, no source), not measured. */
    public static TrackForm oval() {
        return new TrackForm(
                "",
                "2",
                "100",
                "12",
                false,
                "0.5",
                "0.1",
                "0.2",
                false,
                List.of(
                        PieceFields.straight("1500"),
                        PieceFields.left("400", "180"),
                        PieceFields.straight("1500"),
                        PieceFields.left("400", "180")));
    }

    /** What was typed. */
    public static TrackForm from(Fields fields) {
        List<PieceFields> pieces = new ArrayList<>();
        for (int i = 1; i <= MOST_PIECES && fields.has("kind-" + i); i++) {
            pieces.add(PieceFields.from(fields, i));
        }
        return new TrackForm(
                fields.text("name"),
                fields.text("lanes"),
                fields.text("spacing"),
                fields.text("supply"),
                fields.text("magnetic").equals("yes"),
                fields.text("source"),
                fields.text("rail"),
                fields.text("brake"),
                fields.text("replace").equals("yes"),
                pieces);
    }

    /** Whether one more piece fits. */
    public boolean hasRoom() {
        return pieces.size() < MOST_PIECES;
    }

    /** With one more piece at the end. */
    public TrackForm withAnother(String kind) {
        List<PieceFields> more = new ArrayList<>(pieces);
        if (hasRoom()) {
            more.add(PieceFields.fresh(kind));
        }
        return withPieces(more);
    }

    /** Without a piece, counted from 1. */
    public TrackForm without(int number) {
        List<PieceFields> fewer = new ArrayList<>(pieces);
        if (number >= 1 && number <= fewer.size()) {
            fewer.remove(number - 1);
        }
        return withPieces(fewer);
    }

    /** With a piece, counted from 1, and the one before it changed about. */
    public TrackForm withMovedUp(int number) {
        List<PieceFields> moved = new ArrayList<>(pieces);
        if (number >= 2 && number <= moved.size()) {
            moved.add(number - 2, moved.remove(number - 1));
        }
        return withPieces(moved);
    }

    private TrackForm withPieces(List<PieceFields> others) {
        return new TrackForm(name, lanes, spacing, supply, magnetic, source, rail, brake, replace, others);
    }

    /** What was understood. */
    public Reading read() {
        Typed typed = new Typed();
        List<Piece> layout = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            pieces.get(i).read(i + 1, typed).ifPresent(layout::add);
        }
        if (pieces.isEmpty()) {
            typed.problem("There are no pieces yet; add the first one.");
        }
        List<Lane> slots = slots(typed);
        Optional<Power> power = power(typed);
        String called = name.isBlank() ? "Track without a name" : name;
        Optional<Track> track = typed.problems().isEmpty()
                ? typed.build(
                        "",
                        () -> new Track(
                                called, new Surface(1, magnetic), slots, power.orElseThrow(), new PieceLayout(layout)))
                : Optional.empty();
        return new Reading(track, typed.problems());
    }

    private List<Lane> slots(Typed typed) {
        double count = typed.number(lanes, COUNT, "Lanes");
        double apart = typed.number(spacing, SPACING, "Spacing");
        if (count != Math.rint(count) && !Double.isNaN(count)) {
            typed.problem("Lanes is %s; it must be a whole number.".formatted(lanes.strip()));
        }
        List<Lane> slots = new ArrayList<>();
        for (int i = 0; i < count && typed.problems().isEmpty(); i++) {
            slots.add(new Lane(String.valueOf(i + 1), apart * ((count - 1) / 2 - i)));
        }
        return slots;
    }

    private Optional<Power> power(Typed typed) {
        int before = typed.problems().size();
        double volts = typed.number(supply, Power.SUPPLY, "Supply");
        double sourceOhm = typed.number(source, Power.SOURCE, "Resistance of the supply");
        double railOhm = typed.number(rail, Power.RAIL, "Resistance of the rails");
        OptionalDouble brakeOhm = brake.isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(typed.number(brake, Power.BRAKE, "Resistance of the brake"));
        return typed.problems().size() > before
                ? Optional.empty()
                : typed.build("", () -> new Power(volts, sourceOhm, railOhm, List.of(0.0), brakeOhm));
    }

    /**
     * What was understood of the form.
     *
     * @param track the track; empty when there are problems
     * @param problems sentences
     */
    public record Reading(Optional<Track> track, List<String> problems) {
        /** Copies the list. */
        public Reading {
            problems = List.copyOf(problems);
        }
    }
}
