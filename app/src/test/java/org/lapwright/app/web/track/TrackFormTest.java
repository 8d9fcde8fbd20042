package org.lapwright.app.web.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.web.compare.Fields;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

class TrackFormTest {
    private static Map<String, List<String>> oval() {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        put(fields, "name", "Attic", "lanes", "2", "spacing", "100", "supply", "12");
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
        put(fields, "lanes", "3", "magnetic", "yes", "brake", "", "bank-2", "10", "rise-1", "30", "rise-3", "-30");
        TrackForm.Reading reading = read(fields);
        assertThat(reading.problems()).isEmpty();
        Track track = reading.track().orElseThrow();
        assertThat(track.name()).isEqualTo("Attic");
        assertThat(track.surface().magnetic()).isTrue();
        assertThat(track.lanes()).extracting(Lane::offsetMm).containsExactly(100.0, 0.0, -100.0);
        assertThat(track.power().brakeOhm()).isEmpty();
        String text = TrackFile.of(track).text();
        assertThat(TrackFile.read(text).accepted().orElseThrow().track()).isEqualTo(track);
    }

    @Test
    void everyProblemIsNamedWithItsPiece() {
        Map<String, List<String>> fields = oval();
        put(fields, "lanes", "2.5", "supply", "lots", "length-1", "x", "radius-2", "5", "rise-3", "1400");
        assertThat(read(fields).problems())
                .hasSize(5)
                .anySatisfy(problem -> assertThat(problem).startsWith("Piece 1, length: 'x' is not a number"))
                .anySatisfy(problem -> assertThat(problem).startsWith("Piece 2, radius is 5; it must be from 30"))
                .anySatisfy(problem -> assertThat(problem).startsWith("Piece 3: rise_mm of a piece 1500 mm long"))
                .anySatisfy(problem -> assertThat(problem).startsWith("Lanes is 2.5; it must be a whole number"))
                .anySatisfy(problem -> assertThat(problem).startsWith("Supply: 'lots' is not a number"));
    }

    @Test
    void aLaneThatDoesNotFitTheTurnIsExplained() {
        Map<String, List<String>> fields = oval();
        put(fields, "lanes", "16", "spacing", "100");
        assertThat(read(fields).problems())
                .singleElement()
                .asString()
                .contains("lane '1'", "pieces[1]", "needs a radius of at least");
    }

    @Test
    void withoutPiecesThereIsNoTrack() {
        TrackForm form = TrackForm.oval().without(1).without(1).without(1).without(1);
        assertThat(form.read().track()).isEmpty();
        assertThat(form.read().problems()).containsExactly("There are no pieces yet; add the first one.");
    }

    @Test
    void piecesMoveAndGoAndComeWithoutLosingWhatWasTyped() {
        TrackForm form = TrackForm.from(new Fields(oval()));
        assertThat(form.withMovedUp(2).pieces()).extracting(PieceFields::kind).startsWith("left", "straight");
        assertThat(form.withMovedUp(2).withMovedUp(2)).isEqualTo(form);
        assertThat(form.withMovedUp(1)).isEqualTo(form);
        assertThat(form.withMovedUp(5)).isEqualTo(form);
        assertThat(form.without(9)).isEqualTo(form);
        assertThat(form.withAnother("right").pieces().get(4).kind()).isEqualTo("right");
        assertThat(form.withAnother("loop-the-loop").pieces().get(4).isStraight())
                .isTrue();
        assertThat(form.withAnother("left").without(5)).isEqualTo(form);
    }

    @Test
    void thereIsAnEndOfPieces() {
        TrackForm form = TrackForm.oval();
        for (int i = 0; i < 300; i++) {
            form = form.withAnother("straight");
        }
        assertThat(form.pieces()).hasSize(TrackForm.MOST_PIECES);
        assertThat(form.hasRoom()).isFalse();
    }
}
