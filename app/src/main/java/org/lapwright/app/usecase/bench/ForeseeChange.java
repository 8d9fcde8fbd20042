package org.lapwright.app.usecase.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.Trim;
import org.lapwright.core.car.rules.RaceClass;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.prediction.ChangeForecaster;
import org.lapwright.core.prediction.ChangeForecaster.ChangeForecast;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;
import org.lapwright.core.units.Interval;

/** What does a change bring, before it is made? */
public final class ForeseeChange {
    private static final double LEVEL_S = 0.0005;
    private static final double SELDOM = 0.02;

    private final LapForecaster.Settings settings;

    /** By so many cars drawn. */
    public ForeseeChange(LapForecaster.Settings settings) {
        this.settings = settings;
    }

    /**
     * What a change brings.
     *
     * @param sentence what is done
     * @param after the car after it
     * @param rows the numbers that are others after it
     * @param lanes the lap on each lane of the track asked for
     * @param remarks what to know; what physics does not foresee is among them
     */
    public record Foreseen(String sentence, Build after, List<Row> rows, List<LaneGain> lanes, List<String> remarks) {
        /** Copies the lists. */
        public Foreseen {
            rows = List.copyOf(rows);
            lanes = List.copyOf(lanes);
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * A number before and after.
     *
     * @param label what it is
     * @param before with its unit
     * @param after with its unit
     */
    public record Row(String label, String before, String after) {}

    /**
     * The lap on one lane before and after.
     *
     * @param lane its name
     * @param words what the change brings there, a sentence
     * @param difference after less before, as {@code −0.041 s}; empty where there is no lap
     */
    public record LaneGain(String lane, String words, Optional<String> difference) {}

    /**
     * Foresees a change.
     *
     * @param before the car
     * @param change what is done to it
     * @param track where it is driven, if that is known
     * @param raceClass in which it is run, if in any
     * @return what comes of it
     * @throws IllegalArgumentException if it cannot be made to this car, with the reason
     */
    public Foreseen foresee(Build before, Change change, Optional<Track> track, Optional<RaceClass> raceClass) {
        Build after = change.apply(before);
        List<String> remarks = new ArrayList<>();
        raceClass.ifPresent(rules -> remarks.addAll(rules.remarks(after)));
        List<LaneGain> lanes =
                track.map(chosen -> lanes(before, change, chosen, remarks)).orElse(List.of());
        frontWheels(before, after).ifPresent(remarks::add);
        change.unforeseen().ifPresent(remarks::add);
        return new Foreseen(change.sentence(before), after, rows(before, after, track), lanes, remarks);
    }

    private static List<Row> rows(Build before, Build after, Optional<Track> track) {
        List<Row> rows = new ArrayList<>();
        SetUpNumbers was = numbers(before.setUp(), track);
        SetUpNumbers is = numbers(after.setUp(), track);
        add(rows, "Weight", was, is, all -> all.standing().totalG(), "g", 1);
        add(
                rows,
                "Balance point, ahead of the axle",
                was,
                is,
                all -> all.standing().cgAheadMm(),
                "mm",
                1);
        add(rows, "Off centre (left +)", was, is, all -> all.standing().cgLeftMm(), "mm", 1);
        add(rows, "Height of the weight", was, is, all -> all.standing().cgHeightMm(), "mm", 2);
        add(rows, "Load on the guide", was, is, all -> all.standing().guideLoadG(), "g", 1);
        add(rows, "Load on the rear tyres", was, is, all -> all.standing().rearLoadG(), "g", 1);
        add(rows, "Gear ratio", was, is, all -> all.gearing().ratio(), "", 3);
        add(rows, "Way per motor turn", was, is, all -> all.gearing().mmPerMotorTurn(), "mm", 2);
        add(rows, "Slides at", was, is, all -> all.holding().slideG().orElse(Double.NaN), "g", 2);
        add(rows, "Tips at", was, is, all -> all.holding().tipG(), "g", 2);
        trim(
                rows,
                "Front wheels above the track",
                before.trim().frontGapMm(),
                after.trim().frontGapMm(),
                "mm");
        trim(rows, "Shims under the guide", stack(before.trim()), stack(after.trim()), "mm");
        trim(
                rows,
                "Rear axle above the track",
                OptionalDouble.of(before.setUp().rearTyre().diameterMm().value() / 2),
                OptionalDouble.of(after.setUp().rearTyre().diameterMm().value() / 2),
                "mm");
        trim(
                rows,
                "Blade in the slot",
                OptionalDouble.of(before.setUp().guide().bladeDepthMm().value()),
                OptionalDouble.of(after.setUp().guide().bladeDepthMm().value()),
                "mm");
        return rows;
    }

    private static OptionalDouble stack(Trim trim) {
        return OptionalDouble.of(trim.shimStackMm());
    }

    private static SetUpNumbers numbers(SetUp setUp, Optional<Track> track) {
        return track.map(on -> SetUpNumbers.of(setUp, on.surface(), on.power().supplyV()))
                .orElseGet(() -> SetUpNumbers.onBench(setUp));
    }

    private static void add(
            List<Row> rows,
            String label,
            SetUpNumbers was,
            SetUpNumbers is,
            ToDoubleFunction<SetUpNumbers> which,
            String unit,
            int decimals) {
        String before = written(which.applyAsDouble(was), unit, decimals);
        String after = written(which.applyAsDouble(is), unit, decimals);
        if (!before.equals(after)) {
            rows.add(new Row(label, before, after));
        }
    }

    private static void trim(List<Row> rows, String label, OptionalDouble was, OptionalDouble is, String unit) {
        String before = written(was.orElse(Double.NaN), unit, 2);
        String after = written(is.orElse(Double.NaN), unit, 2);
        if (!before.equals(after)) {
            rows.add(new Row(label, before, after));
        }
    }

    private static String written(double value, String unit, int decimals) {
        if (Double.isNaN(value)) {
            return Figures.NONE;
        }
        String number = Figures.fixed(value, decimals);
        return unit.isEmpty() ? number : number + " " + unit;
    }

    private static Optional<String> frontWheels(Build before, Build after) {
        OptionalDouble gap = after.trim().frontGapMm();
        if (gap.isPresent() && !gap.equals(before.trim().frontGapMm())) {
            double mm = gap.getAsDouble();
            return Optional.of(
                    mm < 0
                            ? "The front wheels carry the nose: %s mm of shims would lift it just clear."
                                    .formatted(Figures.fixed(shimsFor(-mm, after), 2))
                            : mm <= Trim.JUST_TOUCHING_MM
                                    ? "The front wheels only just touch: as wanted (common practice, no source)."
                                    : "The front wheels hang clear: the guide alone carries the nose.");
        }
        boolean moved = after.trim().shimStackMm() != before.trim().shimStackMm()
                || !after.setUp()
                        .rearTyre()
                        .diameterMm()
                        .equals(before.setUp().rearTyre().diameterMm());
        boolean touching = after.setUp().chassis().frontWheels() == FrontWheels.TOUCHING;
        return moved && gap.isEmpty()
                ? Optional.of("The front gap was never measured, so whether the front wheels "
                        + (touching ? "still touch" : "still hang clear")
                        + " is not known: look, and log the front gap.")
                : Optional.empty();
    }

    /** What under the guide lifts the front wheels by so much: more, because they sit behind it. */
    private static double shimsFor(double liftMm, Build build) {
        return liftMm
                * build.setUp().chassis().guideToRearAxleMm().value()
                / build.setUp().chassis().wheelbaseMm().value();
    }

    private List<LaneGain> lanes(Build before, Change change, Track track, List<String> remarks) {
        List<LaneGain> gains = new ArrayList<>();
        for (Lane lane : track.lanes()) {
            try {
                ChangeForecast forecast = new ChangeForecaster(track.cells(lane), track.surface())
                        .forecast(
                                before.setUp(),
                                car -> change.apply(before.with(car)).setUp(),
                                settings);
                gains.add(gain(lane.name(), forecast));
            } catch (IllegalArgumentException undrivable) {
                remarks.add("Lane %s: no lap can be predicted: %s.".formatted(lane.name(), undrivable.getMessage()));
            }
        }
        return gains;
    }

    private LaneGain gain(String lane, ChangeForecast forecast) {
        if (!Double.isFinite(forecast.centralS())) {
            String which = Double.isFinite(forecast.beforeS()) ? "after the change" : "as it is";
            return new LaneGain(lane, "The car does not get round " + which + ".", Optional.empty());
        }
        double difference = forecast.centralS();
        String size = Figures.fixed(Math.abs(difference), 3) + " s";
        String direction = Math.abs(difference) < LEVEL_S
                ? "No change in the best lap"
                : (difference < 0 ? "Faster by " : "Slower by ") + size;
        String sure = forecast.differenceS().map(this::sure).orElse("");
        String lost = forecast.lost() > SELDOM
                ? " It may not get round at all: %s of the cars within the doubts do not."
                        .formatted(Figures.percent(forecast.lost()))
                : "";
        return new LaneGain(lane, direction + sure + "." + lost, Optional.of(Figures.signed(difference, 3) + " s"));
    }

    private String sure(Interval interval) {
        return interval.low() == interval.high()
                ? ""
                : " (%s to %s s, %s sure)"
                        .formatted(
                                Figures.signed(interval.low(), 3),
                                Figures.signed(interval.high(), 3),
                                Figures.percent(settings.level()));
    }
}
