package org.lapwright.app.web.track.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.app.web.track.Typed;
import org.lapwright.core.track.Gate;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceExtras;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.PlanPoint;
import org.lapwright.core.track.PointLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

class TrackFormTest {
    private static Map<String, List<String>> oval() {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        put(fields, "name", "Attic", "lane-name-1", "red", "lane-offset-1", "50", "supply", "12");
        put(fields, "lane-name-2", "blue", "lane-offset-2", "-50,0");
        put(fields, "source", "0.5", "rail", "0.1", "brake", "0.2");
        put(fields, "kind-1", "straight", "length-1", "1500", "radius-1", "", "angle-1", "");
        put(fields, "kind-2", "left", "length-2", "", "radius-2", "400", "angle-2", "180");
        put(fields, "kind-3", "straight", "length-3", "1500,0", "radius-3", "", "angle-3", "");
        put(fields, "kind-4", "left", "length-4", "", "radius-4", "400", "angle-4", "180");
        return fields;
    }

    private static void put(Map<String, List<String>> fields, String... pairs) {
        for (int i = 0; i < pairs.length; i += 2) {
            fields.put(pairs[i], List.of(pairs[i + 1]));
        }
    }

    private static TrackForm.Reading read(Map<String, List<String>> fields) {
        return TrackForm.from(new Fields(fields)).read();
    }

    /** A stadium: two straights and a circle whose radius is the lane's. */
    @Test
    void theOvalToBeginWithClosesAndHasItsLengths() {
        Track track = TrackForm.oval().read().track().orElseThrow();
        assertThat(track.layout().closingGap().isOpen()).isFalse();
        assertThat(track.lanes()).extracting(Lane::offsetMm).containsExactly(50.0, -50.0);
        assertThat(track.lengthM(track.lanes().get(0))).isEqualTo(3 + 2 * Math.PI * 0.35, within(1e-9));
        assertThat(track.lengthM(track.lanes().get(1))).isEqualTo(3 + 2 * Math.PI * 0.45, within(1e-9));
        assertThat(track.power().brakeOhm()).hasValue(0.2);
    }

    @Test
    void whatWasTypedIsTheTrack() {
        Map<String, List<String>> fields = oval();
        put(fields, "magnetic", "yes", "brake", "", "bank-2", "10", "rise-1", "30", "rise-3", "-30");
        put(fields, "grip", "0,9", "taps", "0.5; 0 0,25", "conditions", " swept, 18 °C ");
        put(fields, "lane-colour-2", "white");
        TrackForm.Reading reading = read(fields);
        assertThat(reading.faults()).isEmpty();
        Track track = reading.track().orElseThrow();
        assertThat(track.name()).isEqualTo("Attic");
        assertThat(track.surface().magnetic()).isTrue();
        assertThat(track.surface().gripFactor()).isEqualTo(0.9);
        assertThat(track.surface().conditions()).isEqualTo("swept, 18 °C");
        assertThat(track.lanes())
                .containsExactly(new Lane("red", 50), new Lane("blue", -50, Optional.of(Lane.Colour.WHITE)));
        assertThat(track.power().brakeOhm()).isEmpty();
        assertThat(track.power().tapsAt()).containsExactly(0.0, 0.25, 0.5);
        String text = TrackFile.of(track).text();
        assertThat(TrackFile.read(text).accepted().orElseThrow().track()).isEqualTo(track);
    }

    @Test
    void everyFaultIsNamedWithItsField() {
        Map<String, List<String>> fields = oval();
        put(fields, "lane-offset-1", "far", "lane-name-2", " ", "supply", "lots", "taps", "0 1.5", "grip", "9");
        put(fields, "length-1", "x", "radius-2", "5", "rise-3", "1400");
        assertThat(read(fields).faults())
                .extracting(Typed.Fault::field)
                .containsExactly(
                        "length-1", "radius-2", "rise-3", "lane-offset-1", "lane-name-2", "grip", "supply", "taps");
        assertThat(read(fields).faults())
                .extracting(Typed.Fault::sentence)
                .anySatisfy(fault -> assertThat(fault).startsWith("Piece 1, length: 'x' is not a number"))
                .anySatisfy(fault -> assertThat(fault).startsWith("Piece 2, radius is 5; it must be from 30"))
                .anySatisfy(fault -> assertThat(fault).startsWith("Piece 3: rise_mm of a piece 1500 mm long"))
                .anySatisfy(fault -> assertThat(fault).startsWith("Lane 1, offset: 'far' is not a number"))
                .anySatisfy(fault -> assertThat(fault).startsWith("Rails fed at is 1.5; it must be from 0 to 1"));
    }

    @Test
    void aLaneThatDoesNotFitTheTurnIsExplained() {
        Map<String, List<String>> fields = oval();
        put(fields, "lane-offset-1", "390");
        assertThat(read(fields).faults())
                .containsExactly(new Typed.Fault(
                        "radius-2",
                        "lane 'red': piece 2: radius_mm is 400; a lane offset by 390 mm to the inside needs a radius of at"
                                + " least 410 mm."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"hill", "loop"})
    void aKeptTrackComesThroughTheFormUnchanged(String name) {
        Track track = TrackFile.read(Reference.text(name + ".track.json"))
                .accepted()
                .orElseThrow()
                .track();
        TrackForm form = TrackForm.of(track, track.name());
        assertThat(form.read().track()).hasValue(track);
        assertThat(Snapshot.form(Snapshot.of(form))).hasValue(form);
    }

    /** Three decimals, very small and very long numbers: all are read back as the same double. */
    @Property(tries = 300)
    void everyNumberComesBackExactly(
            @ForAll @Scale(12) @DoubleRange(min = 200, max = 50_000) double lengthMm,
            @ForAll @Scale(12) @DoubleRange(min = 0.5, max = 720) double angleDeg,
            @ForAll @Scale(12) @DoubleRange(min = -1000, max = 1000) double offsetMm,
            @ForAll @Scale(12) @DoubleRange(min = 0, max = 0.999) double tap) {
        for (double about : new double[] {1, 1000}) {
            Track track = new Track(
                    "Any",
                    new Surface(1, false),
                    List.of(new Lane("a", Math.round(about * offsetMm) / about)),
                    new Power(12, 0.5, 0.1, List.of(tap), OptionalDouble.empty()),
                    new PieceLayout(List.of(
                            new Piece.Straight(Math.round(about * lengthMm) / about, 0),
                            new Piece.Turn(2000, angleDeg, true, 0, 0),
                            new Piece.Straight(lengthMm, 0))));
            TrackForm form = TrackForm.of(track, "Any");
            assertThat(form.read().track()).hasValue(track);
        }
    }

    @Test
    void withoutPiecesOrLanesThereIsNoTrack() {
        TrackForm form = TrackForm.oval().withPieces(List.of()).withLanes(List.of());
        assertThat(form.read().track()).isEmpty();
        assertThat(form.read().faults())
                .extracting(Typed.Fault::sentence)
                .containsExactly("There are no pieces yet; add the first one.", "There is no lane; add one.");
    }

    /** What is different on single pieces, gates to the last digit, and drawn lines: all come back the same. */
    @Test
    void extrasGatesAndDrawnLinesComeBackExactly() {
        Track oval = TrackForm.oval().read().track().orElseThrow();
        PieceExtras slick =
                new PieceExtras(OptionalDouble.of(0.712345678901), Optional.of(false), List.of(-33.125, 50.0));
        Track special = new Track(
                "Any",
                new Surface(1, true),
                oval.lanes(),
                oval.power(),
                new PieceLayout(List.of(
                        new Piece.Straight(1500, 0, slick),
                        new Piece.Turn(400, 180, true, 0, 0),
                        new Piece.Straight(1500, 0, PieceExtras.NONE.withLaneEnds(List.of(50.0, -50.0))),
                        new Piece.Turn(400, 180, true, 0, 0))),
                List.of(new Gate("a", 0.29), new Gate("b", 1 / 3.0)));
        assertThat(TrackForm.of(special, "Any").read().track()).hasValue(special);
        assertThat(Snapshot.form(Snapshot.of(TrackForm.of(special, "Any")))).hasValue(TrackForm.of(special, "Any"));
        Track line = new Track(
                "Any",
                new Surface(1, false),
                oval.lanes(),
                oval.power(),
                new PointLayout(List.of(
                        new PlanPoint(0, 0),
                        new PlanPoint(1 / 3.0, -1234.5678901234),
                        new PlanPoint(1500.000001, -900),
                        new PlanPoint(1400, 7e-5))));
        TrackForm form = TrackForm.of(line, "Any");
        assertThat(form.read().track()).hasValue(line);
        assertThat(Snapshot.form(Snapshot.of(form))).hasValue(form);
        assertThat(form.withLine(form.line().reversed().reversed())).isEqualTo(form);
        assertThat(form.withLine(form.line().begunLater(3).begunLater(1))).isEqualTo(form);
    }
}
