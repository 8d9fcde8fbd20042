package org.lapwright.app.files.answer;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.lapwright.core.fit.Learned;
import org.lapwright.core.track.Lane;
import org.lapwright.core.units.Interval;

/**
 * What laps tell of a car, as the command line gives it out in JSON. The names are fixed; what cannot be told is null.
 *
 * @param car name of the car
 * @param track name of the track
 * @param parameters what is learned, the driver's share of the best lap first
 * @param lapS best lap of the car as learned, mean of the lanes, s
 * @param intervalS where it lies, s
 * @param paceS pace that this driver would hold, mean of the lanes, s
 * @param paceIntervalS where it lies, s
 * @param confidence of the intervals
 * @param lanes the same for each lane
 * @param tradeOffs pairs that the laps cannot tell apart
 * @param measurements what would narrow the best lap, the most first
 * @param diagnosis whether the draws can be believed
 * @param notes sentences to know before believing it
 */
@JsonPropertyOrder({
    "car",
    "track",
    "parameters",
    "lap_s",
    "interval_s",
    "pace_s",
    "pace_interval_s",
    "confidence",
    "lanes",
    "trade_offs",
    "measurements",
    "diagnosis",
    "notes"
})
public record LearnedJson(
        @JsonProperty("car") String car,
        @JsonProperty("track") String track,
        @JsonProperty("parameters") List<ParameterJson> parameters,
        @JsonProperty("lap_s") double lapS,
        @JsonProperty("interval_s") List<Double> intervalS,
        @JsonProperty("pace_s") double paceS,
        @JsonProperty("pace_interval_s") List<Double> paceIntervalS,
        @JsonProperty("confidence") double confidence,
        @JsonProperty("lanes") List<LaneJson> lanes,
        @JsonProperty("trade_offs") List<TradeOffJson> tradeOffs,
        @JsonProperty("measurements") List<MeasurementJson> measurements,
        @JsonProperty("diagnosis") DiagnosisJson diagnosis,
        @JsonProperty("notes") List<String> notes) {
    /**
     * What was learned.
     *
     * @param confidence of the intervals
     * @param notes sentences
     */
    public static LearnedJson of(String car, String track, Learned learned, double confidence, List<String> notes) {
        Learned.Diagnosis diagnosis = learned.diagnosis();
        return new LearnedJson(
                car,
                track,
                learned.numbers().stream().map(ParameterJson::of).toList(),
                learned.lap().lapS(),
                ends(learned.lap().intervalS()),
                learned.lap().paceS(),
                ends(learned.lap().paceIntervalS()),
                confidence,
                learned.lanes().stream().map(LaneJson::of).toList(),
                learned.tradeOffs().stream()
                        .map(pair -> new TradeOffJson(pair.first(), pair.second(), pair.correlation()))
                        .toList(),
                learned.measurements().stream()
                        .map(each -> new MeasurementJson(each.name(), each.lapPlusMinusS(), each.lessBy()))
                        .toList(),
                new DiagnosisJson(
                        diagnosis.paces(),
                        diagnosis.greatestRHat(),
                        diagnosis.leastEffective(),
                        diagnosis.curveMisfit(),
                        diagnosis.exactShare(),
                        diagnosis.isSound()),
                notes);
    }

    private static List<Double> ends(Interval interval) {
        return List.of(interval.low(), interval.high());
    }

    /**
     * One unknown.
     *
     * @param name its key in the car file, or driver_share
     * @param value mean after the laps
     * @param plusMinus standard deviation after the laps
     * @param intervalS where it lies, low and high
     * @param before mean before the laps
     * @param beforePlusMinus standard deviation before the laps
     * @param laplace mean by the normal approximation
     * @param laplacePlusMinus standard deviation by the normal approximation
     */
    @JsonPropertyOrder({
        "name",
        "value",
        "plus_minus",
        "interval",
        "before",
        "before_plus_minus",
        "laplace",
        "laplace_plus_minus"
    })
    public record ParameterJson(
            @JsonProperty("name") String name,
            @JsonProperty("value") double value,
            @JsonProperty("plus_minus") double plusMinus,
            @JsonProperty("interval") List<Double> intervalS,
            @JsonProperty("before") double before,
            @JsonProperty("before_plus_minus") double beforePlusMinus,
            @JsonProperty("laplace") double laplace,
            @JsonProperty("laplace_plus_minus") double laplacePlusMinus) {
        static ParameterJson of(Learned.Parameter number) {
            return new ParameterJson(
                    number.name(),
                    number.after().value(),
                    number.after().plusMinus(),
                    ends(number.interval()),
                    number.before().value(),
                    number.before().plusMinus(),
                    number.laplace().value(),
                    number.laplace().plusMinus());
        }
    }

    /**
     * What the car can do on a lane.
     *
     * @param lane its name
     * @param lapS best lap, s
     * @param intervalS where it lies, s
     * @param paceS pace that this driver would hold, s
     * @param paceIntervalS where it lies, s
     * @param measuredS pace that was held there with this set-up, s; null where it was not driven
     */
    @JsonPropertyOrder({"lane", "lap_s", "interval_s", "pace_s", "pace_interval_s", "measured_s"})
    public record LaneJson(
            @JsonProperty("lane") String lane,
            @JsonProperty("lap_s") double lapS,
            @JsonProperty("interval_s") List<Double> intervalS,
            @JsonProperty("pace_s") double paceS,
            @JsonProperty("pace_interval_s") List<Double> paceIntervalS,
            @JsonProperty("measured_s") @Nullable Double measuredS) {
        static LaneJson of(Learned.OnLane lane) {
            return new LaneJson(
                    lane.lane().map(Lane::name).orElse(""),
                    lane.lapS(),
                    ends(lane.intervalS()),
                    lane.paceS(),
                    ends(lane.paceIntervalS()),
                    lane.measuredS().isPresent() ? lane.measuredS().getAsDouble() : null);
        }
    }

    /**
     * Two unknowns that the laps cannot tell apart.
     *
     * @param first name
     * @param second name
     * @param correlation of the draws
     */
    public record TradeOffJson(String first, String second, double correlation) {}

    /**
     * A measurement worth its while.
     *
     * @param name what to measure
     * @param lapPlusMinusS doubt about the best lap that it would leave, s
     * @param lessBy share of the doubt that it takes away
     */
    public record MeasurementJson(
            String name,
            @JsonProperty("lap_plus_minus_s") double lapPlusMinusS,
            @JsonProperty("less_by") double lessBy) {}

    /**
     * How the draws came about.
     *
     * @param runs how many told something
     * @param rHat greatest split R-hat
     * @param effectiveDraws least effective sample size
     * @param curveMisfit how far laps lie off the curve, as a share
     * @param exactShare of the draws that count after the solver drove them
     * @param sound whether the draws can be believed
     */
    public record DiagnosisJson(
            int runs,
            @JsonProperty("r_hat") double rHat,
            @JsonProperty("effective_draws") double effectiveDraws,
            @JsonProperty("curve_misfit") double curveMisfit,
            @JsonProperty("exact_share") double exactShare,
            boolean sound) {}
}
