package org.lapwright.app.web.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.LabelListFile.Label;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.KeptFile;
import org.lapwright.app.usecase.physics.ExplainedNumber;
import org.lapwright.app.usecase.physics.ForecastInWords;
import org.lapwright.app.usecase.physics.NumberWords;
import org.lapwright.app.usecase.physics.NumbersInWords;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.Ballast;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.NamedReading;
import org.lapwright.core.car.SetUp;

/**
 * One car on the bench.
 *
 * @param shell around it
 * @param car its name and where it is
 * @param saved whether it was saved just now
 * @param yields what gives way first, a sentence
 * @param plan the car from above
 * @param pieces the ballast in words
 * @param numbers what the set-up works out to
 * @param written what stands in the file
 * @param track the choice of a track
 * @param lanes the forecast for each lane of it
 * @param notices what could not be worked out
 * @param lately the last change; empty when none was logged
 * @param photo whether it has one
 * @param raceClass the class in which it is run
 * @param label its tags, and whether it is put away
 */
public record CarPage(
        Shell shell,
        BenchPage.Row car,
        boolean saved,
        String yields,
        PlanView plan,
        List<String> pieces,
        List<ExplainedNumber> numbers,
        List<Written> written,
        TrackChoice track,
        List<LaneView> lanes,
        List<String> notices,
        Optional<Lately> lately,
        boolean photo,
        ClassChoice raceClass,
        Label label) {
    /** Copies the lists. */
    public CarPage {
        pieces = List.copyOf(pieces);
        numbers = List.copyOf(numbers);
        written = List.copyOf(written);
        lanes = List.copyOf(lanes);
        notices = List.copyOf(notices);
    }

    /** Its page. */
    public static CarPage of(
            Shell shell, KeptFile kept, CarFile file, NumbersInWords numbers, TrackChoice track, Tidings tidings) {
        SetUp car = file.setUp();
        return new CarPage(
                shell,
                new BenchPage.Row(
                        kept.name(),
                        BenchPage.address(kept.name()),
                        kept.example(),
                        "",
                        tidings.label().tags()),
                tidings.saved(),
                numbers.yieldsFirst(),
                PlanDrawing.of(car, numbers.numbers()),
                pieces(car.ballast()),
                numbers.all(),
                written(file),
                track,
                tidings.lanes(),
                tidings.notices(),
                tidings.lately(),
                tidings.photo(),
                tidings.raceClass(),
                tidings.label());
    }

    /** The name as part of an address. */
    public String encodedName() {
        return BenchPage.encoded(car.name());
    }

    /** How many of the numbers nobody measured. */
    public long guessed() {
        return written.stream().filter(number -> !number.usual().isEmpty()).count();
    }

    /** Whether a track is chosen. */
    public boolean onTrack() {
        return !track.chosen().isEmpty();
    }

    private static List<String> pieces(List<Ballast> ballast) {
        List<String> pieces = new ArrayList<>();
        for (int i = 0; i < ballast.size(); i++) {
            Ballast piece = ballast.get(i);
            double left = piece.yMm().value();
            double ahead = piece.xMm().value();
            pieces.add("%d: %s, %s g, %s mm %s the rear axle, %s, %s mm up"
                    .formatted(
                            i + 1,
                            piece.name(),
                            Figures.significant(piece.massG().value(), 4),
                            Figures.significant(Math.abs(ahead), 4),
                            ahead < 0 ? "behind" : "ahead of",
                            left == 0
                                    ? "on the centre line"
                                    : Figures.significant(Math.abs(left), 4) + " mm " + (left > 0 ? "left" : "right"),
                            Figures.significant(piece.zMm().value(), 4)));
        }
        return pieces;
    }

    private static List<Written> written(CarFile file) {
        Set<String> guessed = file.remarks().notMeasured();
        List<Written> rows = new ArrayList<>();
        boolean touch = file.setUp().chassis().frontWheels() == FrontWheels.TOUCHING;
        rows.add(new Written(
                "Front wheels",
                touch ? "touch the track" : "hang clear",
                guessed.contains(CarForm.FRONT_WHEELS) ? "most cars' do (common practice, no source)" : ""));
        for (NamedReading number : file.setUp().numbers()) {
            NumberWords words = NumberWords.of(number.path());
            rows.add(new Written(
                    number.path().startsWith("ballast[") ? pieceLabel(file.setUp(), number, words) : words.label(),
                    ForecastInWords.reading(
                            number.reading().value(),
                            number.reading().plusMinus(),
                            number.key().unit()),
                    guessed.contains(number.path()) ? words.usual() : ""));
        }
        return rows;
    }

    private static String pieceLabel(SetUp car, NamedReading number, NumberWords words) {
        int index =
                Integer.parseInt(number.path().replaceAll("\\D+", " ").strip().split(" ")[0]);
        return car.ballast().get(index).name() + ": " + words.label().toLowerCase(Locale.ROOT);
    }

    /**
     * A number as it stands in the file.
     *
     * @param label what people call it
     * @param shown the number with its doubt and unit
     * @param usual where it comes from when nobody measured it; else empty
     */
    public record Written(String label, String shown, String usual) {}

    /**
     * The tracks to choose from.
     *
     * @param names of all tracks
     * @param chosen the one chosen; empty for the bench
     */
    public record TrackChoice(List<String> names, String chosen) {
        /** Copies the list. */
        public TrackChoice {
            names = List.copyOf(names);
        }
    }

    /**
     * What else there is to tell.
     *
     * @param saved whether it was saved just now
     * @param lanes the forecasts
     * @param notices what could not be worked out
     * @param lately the last change
     * @param photo whether the car has one
     * @param raceClass in which it is run
     * @param label its tags, and whether it is put away
     */
    public record Tidings(
            boolean saved,
            List<LaneView> lanes,
            List<String> notices,
            Optional<Lately> lately,
            boolean photo,
            ClassChoice raceClass,
            Label label) {
        /** Copies the lists. */
        public Tidings {
            lanes = List.copyOf(lanes);
            notices = List.copyOf(notices);
        }
    }

    /**
     * In which class a car is run.
     *
     * @param names of the classes there are
     * @param chosen its class; empty without one
     * @param remarks what of the car breaks its rules
     */
    public record ClassChoice(List<String> names, String chosen, List<String> remarks) {
        /** Copies the lists. */
        public ClassChoice {
            names = List.copyOf(names);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * The last change of a car.
     *
     * @param news what was done just now; empty when nothing was
     * @param words what the last change was
     * @param present number of the step on the car
     * @param undoable whether it can be undone
     * @param count how many set-ups there are
     * @param prove where before and after are compared
     * @param key made up once for undoing
     */
    public record Lately(
            String news, String words, long present, boolean undoable, int count, String prove, String key) {}

    /**
     * The forecast for one lane.
     *
     * @param lane its name
     * @param lap the lap, or empty
     * @param interval how sure it is, or why there is no lap
     * @param causes what makes it unsure
     * @param caveats what to know
     */
    public record LaneView(
            String lane,
            Optional<String> lap,
            String interval,
            List<ForecastInWords.Cause> causes,
            List<String> caveats) {
        /** Copies the lists. */
        public LaneView {
            causes = List.copyOf(causes);
            caveats = List.copyOf(caveats);
        }
    }
}
