package org.lapwright.app.web.track.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.core.track.Gate;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Track;
import org.lapwright.core.track.kit.PieceBox;

class PressTest {
    private static final Editor OVAL = Editor.opened(TrackForm.oval());

    private static Editor pressed(Editor editor, String... wishes) {
        Editor now = editor;
        for (String wish : wishes) {
            now = Press.of(now, wish);
        }
        return now;
    }

    private static List<String> kinds(Editor editor) {
        return editor.form().pieces().stream().map(PieceFields::kind).toList();
    }

    private static Editor withTape(Editor editor, String lane, String tape) {
        return new Editor(
                editor.form(),
                editor.place(),
                new Editor.Ruler("2", "100", lane, tape),
                editor.history(),
                editor.said());
    }

    @Test
    void piecesAreLaidOneAfterTheOther() {
        Editor laid = pressed(OVAL, "after-1", "add-straight-175", "add-right-250-45", "add-left");
        assertThat(kinds(laid)).containsExactly("straight", "straight", "right", "left", "left", "straight", "left");
        assertThat(laid.form().pieces().get(1).length()).isEqualTo("175");
        assertThat(laid.form().pieces().get(2).radius()).isEqualTo("250");
        assertThat(laid.form().pieces().get(2).angle()).isEqualTo("45");
        assertThat(laid.place()).isEqualTo(4);
        assertThat(pressed(OVAL, "after-0", "add-right").form().pieces().get(0).kind())
                .isEqualTo("right");
    }

    @Test
    void piecesMoveGoDoubleAndTurnAbout() {
        assertThat(kinds(pressed(OVAL, "up-2"))).startsWith("left", "straight");
        assertThat(pressed(OVAL, "up-2", "down-1").form()).isEqualTo(OVAL.form());
        assertThat(pressed(OVAL, "copy-2").form().pieces()).hasSize(5);
        assertThat(pressed(OVAL, "copy-2", "drop-3").form()).isEqualTo(OVAL.form());
        assertThat(kinds(pressed(OVAL, "mirror-2"))).containsExactly("straight", "right", "straight", "left");
        assertThat(kinds(pressed(OVAL, "mirror-all"))).containsExactly("straight", "right", "straight", "right");
        assertThat(pressed(OVAL, "mirror-all", "mirror-all").form()).isEqualTo(OVAL.form());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", "look", "up-1", "down-4", "drop-9", "drop-0", "copy-x", "mirror-1", "mirror-7", "set-length:9:1",
                "set-length:1:x", "set-", "set", "lane", "lane-drop", "lane-drop-7", "undo", "redo", "scale",
                        "add-from-9-"
            })
    void whatMakesNoSenseChangesNoTrack(String wish) {
        Editor after = Press.of(OVAL, wish);
        if (!wish.startsWith("add")) {
            assertThat(after.form()).isEqualTo(OVAL.form());
            assertThat(after.history()).isEqualTo(History.NONE);
        } else {
            assertThat(after.form().pieces().get(4)).isEqualTo(PieceFields.fresh("straight"));
        }
    }

    @Property(tries = 300)
    void noWordBreaksIt(@ForAll @Size(max = 30) String wish) {
        assertThat(Press.of(OVAL, wish).form().pieces()).hasSizeBetween(3, 5);
    }

    @Test
    void everyPressIsNamedUndoneAndDoneAgain() {
        Editor laid = pressed(OVAL, "add-right", "drop-1", "lane-add");
        assertThat(laid.history().undo())
                .extracting(History.Step::what)
                .containsExactly("Lane added; give it an offset", "Piece 1 removed", "Piece 5 added, a right turn");
        Editor back = pressed(laid, "undo", "undo", "undo");
        assertThat(back.form()).isEqualTo(OVAL.form());
        assertThat(back.said()).isEqualTo("Undone: Piece 5 added, a right turn.");
        assertThat(pressed(back, "redo", "redo", "redo").form()).isEqualTo(laid.form());
        assertThat(pressed(back, "redo", "copy-1").history().redo()).isEmpty();
        assertThat(pressed(back, "undo").form()).isEqualTo(OVAL.form());
    }

    @Test
    void thePageRemembersOnlySoMuch() {
        Editor now = OVAL;
        for (int i = 0; i < 300; i++) {
            now = pressed(now, "add-straight");
        }
        assertThat(now.form().pieces()).hasSize(TrackForm.MOST_PIECES);
        assertThat(now.form().hasRoom()).isFalse();
        assertThat(now.said()).isEqualTo("There are 200 pieces; more want a file.");
        assertThat(now.history().undo()).hasSize(12);
        assertThat(now.history().undo().get(0).text().length()).isLessThan(8000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "!", "AAAA", "x y", "eJzLSM3JyQcABiwCFQ", "____"})
    void aStrangeMemoryIsNotBelieved(String text) {
        assertThat(Snapshot.form(text)).isEmpty();
    }

    @Test
    void lanesComeGoAndLieEvenly() {
        Editor three = pressed(
                new Editor(OVAL.form(), 4, new Editor.Ruler("3", "80", "1", ""), History.NONE, ""), "lane-even");
        assertThat(three.form().lanes())
                .containsExactly(
                        new LaneFields("1", "80", ""), new LaneFields("2", "0", ""), new LaneFields("3", "-80", ""));
        assertThat(pressed(three, "lane-drop-2").form().lanes())
                .extracting(LaneFields::name)
                .containsExactly("1", "3");
        assertThat(pressed(three, "lane-drop-2", "lane-add")
                        .form()
                        .lanes()
                        .get(2)
                        .name())
                .isEqualTo("4");
        Editor wrong = new Editor(OVAL.form(), 4, new Editor.Ruler("2.5", "80", "1", ""), History.NONE, "");
        assertThat(pressed(wrong, "lane-even").said()).startsWith("Lanes to lay out is 2.5; it must be a whole number");
    }

    /** By the closed form of LeastAdjustmentReferenceTest. */
    @Test
    void anOvalIsClosedByAPress() {
        Editor open = pressed(OVAL, "set-length:1:1512");
        ClosingOffer.Ways ways = ClosingOffer.of(layout(open));
        assertThat(ways.offers())
                .extracting(ClosingOffer::label)
                .containsExactly(
                        "Close it: straight 1 shorter by 12 mm",
                        "Close it: straight 3 longer by 12 mm",
                        "Close it: straight 1 shorter by 6 mm, straight 3 longer by 6 mm");
        for (ClosingOffer offer : ways.offers()) {
            Editor closed = pressed(open, offer.wish());
            assertThat(layout(closed).closingGap().distanceM()).isLessThan(1e-6);
            assertThat(ClosingOffer.of(layout(closed))).isEqualTo(new ClosingOffer.Ways(List.of(), ""));
        }
    }

    @Test
    void whatCannotBeClosedSaysWhy() {
        assertThat(ClosingOffer.of(layout(pressed(OVAL, "set-angle:4:120"))).why())
                .isEqualTo(
                        "The end points 60° to the right of where it should: a turn is missing, or one is too many.");
        TrackForm ramp = OVAL.form();
        List<PieceFields> pieces = new java.util.ArrayList<>(ramp.pieces());
        pieces.set(0, new PieceFields("straight", "1500", "", "", "", "30", ExtraFields.NONE));
        assertThat(ClosingOffer.of(layout(Editor.opened(ramp.withPieces(pieces))))
                        .why())
                .startsWith("The rises do not add up: the end lies 30 mm above the start.");
    }

    /** Lane 1 runs 50 mm inside: 3000 f + 2π (400 f − 50); with f = 1.1 that is 5750.4 mm. */
    @Test
    void theTapeScalesTheDrawing() {
        double tape = 3300 + 2 * Math.PI * (440 - 50);
        Editor measured = withTape(OVAL, "1", Written.rounded(tape));
        TapeOffer offer = TapeOffer.of(measured);
        assertThat(offer.sentence())
                .isEqualTo("Lane 1: 5750.4 mm by tape, 5199.1 mm as drawn. All lengths and radii would become 1.1000"
                        + " times as long; lanes stay as far apart.");
        Editor scaled = pressed(measured, "scale");
        Track track = scaled.form().read().track().orElseThrow();
        assertThat(1000 * track.lengthM(track.lanes().get(0))).isCloseTo(tape, within(1e-3));
        assertThat(scaled.form().pieces().get(1).angle()).isEqualTo("180");
        assertThat(TapeOffer.of(scaled).sentence()).endsWith("They agree.");
        assertThat(pressed(scaled, "undo").form()).isEqualTo(OVAL.form());
    }

    @Test
    void aTapeThatCannotBeIsExplained() {
        assertThat(TapeOffer.of(withTape(OVAL, "2", "long")).sentence()).contains("'long' is not a number");
        assertThat(TapeOffer.of(withTape(OVAL, "2", "200")).sentence())
                .contains("That cannot be: the lane is longer than 200 mm however small the track.");
        assertThat(TapeOffer.of(withTape(pressed(OVAL, "drop-1", "drop-1", "drop-1", "drop-1"), "1", "5000"))
                        .sentence())
                .startsWith("The tape waits");
    }

    @Test
    void sizesOfTheTrackAreOffered() {
        assertThat(Kit.of(OVAL.form(), PieceBox.USUAL).own())
                .extracting(Kit.Add::wish)
                .containsExactly("add-straight-1500", "add-left-400-180");
        assertThat(Kit.of(pressed(OVAL, "add-straight-350").form(), PieceBox.USUAL)
                        .own())
                .hasSize(2);
    }

    private static PieceLayout layout(Editor editor) {
        return (PieceLayout) editor.form().read().track().orElseThrow().layout();
    }

    @Test
    void lanesSwapAndSwapBack() {
        Editor once = pressed(OVAL, "cross-1");
        assertThat(once.form().pieces().get(0).extras().ends()).isEqualTo("-50 50");
        // One swap makes one long slot of two.
        assertThat(once.form().read().faults().get(0).sentence())
                .contains("“lanes at its end”", "even number of times");
        Editor twice = pressed(once, "cross-3");
        assertThat(twice.form().pieces().get(2).extras().ends()).isEqualTo("50 -50");
        Track track = twice.form().read().track().orElseThrow();
        assertThat(track.lengthM(track.lanes().get(0)))
                .isCloseTo(track.lengthM(track.lanes().get(1)), within(1e-9));
        assertThat(pressed(twice, "undo", "undo").form()).isEqualTo(OVAL.form());
    }

    @Test
    void aMirroredSwapIsASwapTheOtherWay() {
        Editor swapped = pressed(OVAL, "cross-2", "mirror-2");
        assertThat(swapped.form().pieces().get(1).extras().ends()).isEqualTo("50 -50");
    }

    /** The lap begins elsewhere: pieces turn about, gates and feeds stay on the table, every lane is as long as before. */
    @Test
    void theTimingLineMoves() {
        Editor gated = pressed(OVAL, "cross-1", "cross-3", "gate-add");
        Track before = gated.form().read().track().orElseThrow();
        Editor moved = pressed(gated, "start-3");
        Track after = moved.form().read().track().orElseThrow();
        assertThat(kinds(moved)).containsExactly("straight", "left", "straight", "left");
        assertThat(after.lanes().get(0).offsetMm()).isEqualTo(-50);
        assertThat(after.lengthM(after.lanes().get(0)))
                .isCloseTo(before.lengthM(before.lanes().get(0)), within(1e-9));
        // Half a lap on, the gate at half a lap is the timing line.
        assertThat(after.gates()).isEmpty();
        assertThat(after.power().tapsAt()).containsExactly(0.5);
        Track back = pressed(moved, "start-3").form().read().track().orElseThrow();
        assertThat(back.lanes()).isEqualTo(before.lanes());
        assertThat(back.layout()).isEqualTo(before.layout());
        assertThat(back.power()).isEqualTo(before.power());
    }

    @Test
    void gatesComeAndGo() {
        Editor gated = pressed(OVAL, "gate-add", "gate-add");
        assertThat(gated.form().gates()).extracting(GateFields::at).containsExactly("50", "");
        assertThat(gated.form().read().faults().get(0).field()).isEqualTo("gate-at-2");
        Editor one = pressed(gated, "gate-drop-2");
        assertThat(one.form().read().track().orElseThrow().gates()).containsExactly(new Gate("section 1", 0.5));
        assertThat(pressed(one, "gate-drop-9").form()).isEqualTo(one.form());
    }
}
