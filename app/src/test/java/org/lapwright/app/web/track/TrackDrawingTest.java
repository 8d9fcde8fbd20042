package org.lapwright.app.web.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.physics.PredictLap;
import org.lapwright.app.usecase.physics.SectionTimes;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Piece;
import org.lapwright.core.track.PieceLayout;
import org.lapwright.core.track.Power;
import org.lapwright.core.track.Stretches;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

class TrackDrawingTest {
    private static final Pattern POINT = Pattern.compile("([ML])(-?[\\d.]+) (-?[\\d.]+)");

    private static Track track(String name) {
        return TrackFile.read(Reference.text(name + ".track.json"))
                .accepted()
                .orElseThrow()
                .track();
    }

    private static PredictedLap lap(String car, Track track, Lane lane) {
        return (PredictedLap) new PredictLap()
                .predict(
                        CarFile.read(Reference.text(car + ".car.json"))
                                .accepted()
                                .orElseThrow()
                                .setUp(),
                        track,
                        lane)
                .outcome();
    }

    private static List<MatchResult> points(String d) {
        Matcher found = POINT.matcher(d);
        return found.results().toList();
    }

    /** Length of a course, mm; a jump to a new start is not drawn. */
    private static double length(String d) {
        double length = 0;
        List<MatchResult> points = points(d);
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).group(1).equals("L")) {
                length += Math.hypot(
                        number(points.get(i), 2) - number(points.get(i - 1), 2),
                        number(points.get(i), 3) - number(points.get(i - 1), 3));
            }
        }
        return length;
    }

    private static double number(MatchResult point, int group) {
        return Double.parseDouble(point.group(group));
    }

    private static Track eight(double riseMm) {
        Piece left = new Piece.Turn(400, 270, true, 0, 0);
        Piece right = new Piece.Turn(400, 270, false, 0, 0);
        return new Track(
                "Eight",
                new Surface(1, false),
                List.of(new Lane("middle", 0)),
                new Power(12, 0.5, 0.1, List.of(0.0), OptionalDouble.of(0.2)),
                new PieceLayout(List.of(
                        new Piece.Straight(800, 0),
                        left,
                        new Piece.Straight(400, riseMm),
                        new Piece.Straight(400, -riseMm),
                        right)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"loop", "long"})
    void theLaneIsDrawnToScale(String name) {
        Track track = track(name);
        for (Lane lane : track.lanes()) {
            LaneMap map = LaneMap.bySpeed(track, lane, lap("plain", track, lane));
            double drawn =
                    map.lines().stream().mapToDouble(line -> length(line.d())).sum();
            assertThat(drawn / 1000).isEqualTo(track.lengthM(lane), within(0.003 * track.lengthM(lane)));
            String[] box = map.viewBox().split(" ");
            for (LaneMap.Line line : map.lines()) {
                for (MatchResult point : points(line.d())) {
                    assertThat(number(point, 2)).isBetween(0.0, Double.parseDouble(box[2]));
                    assertThat(number(point, 3)).isBetween(0.0, Double.parseDouble(box[3]));
                }
            }
        }
    }

    @Test
    void aDrawingStaysLight() {
        Track track = track("long");
        Lane lane = track.lanes().get(0);
        for (LaneMap map : List.of(
                LaneMap.bySpeed(track, lane, lap("soft", track, lane)),
                LaneMap.byLimit(track, lane, lap("soft", track, lane)))) {
            assertThat(map.lines().size() + map.bridge().size() + map.others().size())
                    .isLessThan(30);
            assertThat(map.lines().stream().mapToInt(line -> line.d().length()).sum())
                    .isLessThan(20_000);
        }
    }

    @Test
    void kindsCoverTheLapAndTheLegendNamesThem() {
        Track track = track("loop");
        Lane lane = track.lanes().get(0);
        PredictedLap lap = lap("magnet", track, lane);
        for (Colouring colouring : List.of(Colouring.bySpeed(lap), Colouring.byLimit(lap))) {
            int cell = 0;
            for (CellRun run : colouring.runs()) {
                assertThat(run.fromCell()).isEqualTo(cell);
                assertThat(colouring.used()).contains(colouring.kind(run));
                cell = run.toCell();
            }
            assertThat(cell).isEqualTo(lap.trace().cells());
        }
        assertThat(Colouring.byLimit(lap).kinds())
                .extracting(Colouring.Kind::letter)
                .doesNotHaveDuplicates()
                .containsExactly("S", "P", "B", "N", "T");
    }

    @Test
    void onlyABridgeIsDrawnAsOne() {
        Track flat = eight(0);
        assertThat(LaneMap.plain(flat, flat.lanes().get(0)).bridge()).isEmpty();
        assertThat(LaneMap.plain(flat, flat.lanes().get(0)).underBridge()).isEmpty();
        Track bridge = eight(70);
        LaneMap map = LaneMap.plain(bridge, bridge.lanes().get(0));
        assertThat(map.bridge()).hasSize(1);
        assertThat(length(map.underBridge())).isBetween(250.0, 420.0);
    }

    @Test
    void theArrowPointsAlongTheLaneAndTheBarIsRound() {
        Track track = track("loop");
        LaneMap map = LaneMap.plain(track, track.lanes().get(0));
        assertThat(map.start().turn()).isIn("0", "-0");
        double share = Double.parseDouble(map.scaleBar().width().replace("%", "")) / 100;
        double frame = Double.parseDouble(map.viewBox().split(" ")[2]);
        double bar = map.scaleBar().label().endsWith(" mm")
                ? Double.parseDouble(map.scaleBar().label().replace(" mm", ""))
                : 1000 * Double.parseDouble(map.scaleBar().label().replace(" m", ""));
        assertThat(share * frame).isEqualTo(bar, within(1.0));
    }

    @ParameterizedTest
    @CsvSource({"plain,magnet,loop", "soft,plain,long"})
    void theLapIsDrawnInsideItsFrame(String here, String other, String name) {
        Track track = track(name);
        Lane lane = track.lanes().get(0);
        LaneCells cells = track.cells(lane);
        PredictedLap first = lap(here, track, lane);
        PredictedLap second = lap(other, track, lane);
        SectionTimes times = SectionTimes.of(cells, first, second);
        LapDrawing drawing = LapDrawing.of(first, Stretches.of(cells), Optional.of(second), Optional.of(times));
        assertThat(drawing.speed().lines()).hasSize(2);
        for (TracePlot plot : List.of(drawing.speed(), drawing.loss().orElseThrow())) {
            for (TracePlot.Line line : plot.lines()) {
                List<MatchResult> points = points(line.d());
                assertThat(number(points.get(0), 2)).isZero();
                assertThat(number(points.get(points.size() - 1), 2)).isEqualTo(TracePlot.ACROSS);
                assertThat(points)
                        .allSatisfy(point -> assertThat(number(point, 3)).isBetween(0.0, (double) plot.height()));
            }
        }
        assertThat(drawing.strip().get(drawing.strip().size() - 1).to()).isEqualTo("100%");
    }

    @Test
    void theCursorHasOneValueForEveryPlace() {
        Track track = track("long");
        Lane lane = track.lanes().get(0);
        PredictedLap lap = lap("plain", track, lane);
        CursorData data = TrackPage.LapView.of(
                        track,
                        lane,
                        new TrackPage.Driven("plain", lap),
                        Optional.of(new TrackPage.Driven("plain", lap)))
                .cursor();
        for (String column :
                List.of(data.places(), data.speeds(), data.limits(), data.across(), data.down(), data.losses())) {
            assertThat(column.split(" ")).hasSize(data.last() + 1);
        }
        assertThat(data.last()).isLessThan(500);
        assertThat(data.losses().split(" ")).containsOnly("0.000");
    }

    @Test
    void lossesAreSignedAndAddUpToTheLap() {
        Track track = track("loop");
        Lane lane = track.lanes().get(0);
        PredictedLap plain = lap("plain", track, lane);
        PredictedLap magnet = lap("magnet", track, lane);
        LossView loss = LossView.of("plain", "magnet", SectionTimes.of(track.cells(lane), plain, magnet));
        assertThat(loss.total().loss())
                .startsWith(plain.lapS() > magnet.lapS() ? "+" : "−")
                .endsWith(" s");
        assertThat(loss.sentence())
                .contains(plain.lapS() > magnet.lapS() ? "slower than magnet" : "faster than magnet");
        assertThat(loss.total().hereS()).isEqualTo(String.format(java.util.Locale.ROOT, "%.3f", plain.lapS()));
        LossView level = LossView.of("a", "b", SectionTimes.of(track.cells(lane), plain, plain));
        assertThat(level.sentence()).isEqualTo("a and b come out level over the lap.");
        assertThat(level.rows()).allSatisfy(row -> assertThat(row.loss()).isEqualTo("0.000 s"));
    }
}
