package org.lapwright.app.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.files.drawing.Drawing;
import org.lapwright.app.files.drawing.DrawingFile;
import org.lapwright.app.files.drawing.DrawnScale;
import org.lapwright.app.files.drawing.Trouble;
import org.lapwright.app.files.drawing.course.CentreLine;
import org.lapwright.app.files.drawing.course.Loop;
import org.lapwright.app.files.drawing.course.Loops;
import org.lapwright.app.web.track.Typed;
import org.lapwright.app.web.track.editor.PowerFields;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.NumberKey;

/** What was understood of a drawing and of what was typed about it. */
public final class LineReading {
    private static final NumberKey COUNT = new NumberKey("", "lanes", 1, 16);
    private static final NumberKey SPACING = new NumberKey("", "spacing_mm", 10, 500);
    private static final NumberKey JOIN = new NumberKey("", "join_mm", 0, 50);
    private static final NumberKey KNOWN = new NumberKey("", "known_mm", 10, 1_000_000);
    private static final NumberKey CORNER = new NumberKey("", "corner_mm", 1, 10_000);
    private static final NumberKey START = new NumberKey("", "start_mm", -1_000_000, 1_000_000);

    private final LineForm form;
    private final Typed typed = new Typed();
    private final List<String> remarks = new ArrayList<>();
    private @Nullable DrawnScale scale;
    private Loops loops = new Loops(List.of(), List.of());
    private @Nullable Loop chosen;
    private @Nullable Track track;

    private LineReading(LineForm form) {
        this.form = form;
    }

    /** Reads a form, as far as that goes. */
    public static LineReading of(LineForm form) {
        LineReading reading = new LineReading(form);
        if (!form.value("text").isBlank()) {
            try {
                reading.drawing();
            } catch (Trouble trouble) {
                reading.typed.problem(trouble.problem().sentence());
            }
        }
        return reading;
    }

    /** Sentences on what stands in the way. */
    public List<String> problems() {
        return List.copyOf(typed.problems());
    }

    /** Sentences on what was found, left out and done. */
    public List<String> remarks() {
        return List.copyOf(remarks);
    }

    /** How large the drawing is; empty without one. */
    public Optional<DrawnScale> scale() {
        return Optional.ofNullable(scale);
    }

    /** The loops found, the longest first. */
    public List<Loop> loops() {
        return loops.loops();
    }

    /** The loop that is the centre line, at its final size. */
    public Optional<Loop> chosen() {
        return Optional.ofNullable(chosen);
    }

    /** The track, if everything goes together. */
    public Optional<Track> track() {
        return Optional.ofNullable(track);
    }

    /** Whether the size of the drawing is still only a guess. */
    public boolean isSizeGuessed() {
        return scale != null && !scale.stated() && form.value("known").isBlank();
    }

    private void drawing() {
        DrawingFile.Reading reading = DrawingFile.read(form.value("text"));
        reading.problem().ifPresent(problem -> typed.problem(problem.sentence()));
        if (reading.drawing().isPresent()) {
            loops(reading.drawing().get());
        }
    }

    private void loops(Drawing drawing) {
        DrawnScale size = sized(drawing);
        scale = size;
        double join = typed.number(form.value("join"), JOIN, "Ends that meet", 1);
        if (Double.isNaN(join)) {
            return;
        }
        loops = Loops.find(drawing, size.mm(), join, Loops.FLAT_MM);
        remarks.addAll(loops.remarks());
        remarks.addAll(drawing.leftOut());
        if (loops.loops().isEmpty()) {
            typed.problem("There is no closed line in the drawing; the centre line has to come back to where it begins."
                    + " If its ends do not quite meet, let them meet within more.");
            return;
        }
        Loop drawn =
                loops.numbered(number(form.value("loop"))).orElse(loops.loops().get(0));
        double factor = factor(drawn);
        // What grows is followed more closely, so that it is as smooth as what does not.
        Loop fine = factor <= 1
                ? drawn
                : Loops.find(drawing, size.mm(), join, Loops.FLAT_MM / factor)
                        .numbered(drawn.number())
                        .orElse(drawn);
        Loop line = fine.scaled(factor);
        chosen = line;
        track(line);
    }

    /** What the drawing says, unless it is silent and the racer is not. */
    private DrawnScale sized(Drawing drawing) {
        int unit = number(form.value("unit"));
        boolean told = !drawing.scale().stated()
                && unit > 0
                && unit <= DrawingFile.units().size();
        return told ? DrawingFile.units().get(unit - 1) : drawing.scale();
    }

    private double factor(Loop loop) {
        if (form.value("known").isBlank()) {
            return 1;
        }
        double known = typed.number(form.value("known"), KNOWN, "The length you know");
        boolean width = form.is("measure", "width");
        double drawn = width ? loop.widthMm() : loop.lengthMm();
        return Double.isNaN(known) || !(drawn > 0) ? 1 : known / drawn;
    }

    private void track(Loop line) {
        double corner =
                form.value("corner").isBlank() ? 0 : typed.number(form.value("corner"), CORNER, "Radius of corners");
        double start = typed.number(form.value("start"), START, "Timing line", 0);
        List<Lane> lanes = lanes();
        Optional<Power> power = power();
        if (!typed.problems().isEmpty() || power.isEmpty()) {
            return;
        }
        CentreLine centre = CentreLine.of(line, new CentreLine.Wish(!form.is("turning", "right"), start, corner));
        remarks.addAll(0, centre.remarks());
        String name = form.value("name").isBlank() ? "Track without a name" : form.value("name");
        Surface surface = new Surface(1, form.is("magnetic", "yes"));
        Optional<Track> built =
                typed.build("", () -> new Track(name, surface, lanes, power.get(), new PointLayout(centre.points())));
        if (built.isEmpty() && corner == 0) {
            typed.problem("If the drawing has sharp corners there, give a radius to round them with.");
        }
        track = built.orElse(null);
    }

    private List<Lane> lanes() {
        double count = typed.number(form.value("lanes"), COUNT, "Lanes");
        double apart = typed.number(form.value("spacing"), SPACING, "Lane to lane");
        if (count != Math.rint(count) && !Double.isNaN(count)) {
            typed.problem("Lanes is %s; it must be a whole number."
                    .formatted(form.value("lanes").strip()));
        }
        List<Lane> lanes = new ArrayList<>();
        for (int i = 0; i < count && typed.problems().isEmpty(); i++) {
            lanes.add(new Lane(String.valueOf(i + 1), apart * ((count - 1) / 2 - i)));
        }
        return lanes;
    }

    /** Fed at the timing line, as long as nobody says otherwise. */
    private Optional<Power> power() {
        return new PowerFields(form.value("supply"), form.value("source"), form.value("rail"), form.value("brake"), "")
                .read(typed);
    }

    private static int number(String text) {
        return text.matches("\\d{1,6}") ? Integer.parseInt(text) : 0;
    }
}
