package org.lapwright.app.files.answer;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.lapwright.core.dynamics.LapOutcome;
import org.lapwright.core.dynamics.LapTrace;
import org.lapwright.core.dynamics.Limit;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.dynamics.Stuck;
import org.lapwright.core.dynamics.TooTight;
import org.lapwright.core.prediction.LapForecast;
import org.lapwright.core.prediction.NumberShare;

/**
 * Best laps as the command line and the pages give them out in JSON. The names are fixed; what cannot be told is null.
 *
 * @param car name of the car
 * @param track name of the track
 * @param lanes one entry for each lane asked for
 */
@JsonPropertyOrder({"car", "track", "lanes"})
public record PredictionJson(
        @JsonProperty("car") String car,
        @JsonProperty("track") String track,
        @JsonProperty("lanes") List<LaneJson> lanes) {
    /**
     * The best lap on one lane.
     *
     * @param lane its name
     * @param lengthM length of the lap, m
     * @param lapS lap time, s; null when the car cannot be driven round
     * @param topSpeedMps greatest speed of the guide, m/s
     * @param slowestMps least speed of the guide, m/s
     * @param limits share of the lap's time by the name of the limit: slide, power, brake, nose, tip
     * @param intervalS where the lap time lies with the numbers as sure as the file says, s; null when no number has a
     *     plus_minus, or too few cars within the doubts have a lap
     * @param confidence of the interval
     * @param doubts what each number in doubt brings, most first
     * @param stuckAt the limit and place that stand in the way; null when there is a lap
     * @param sections times from gate to gate; empty when the track has no gate beside its timing line
     * @param caveats sentences to know before believing it
     * @param trace speed along the lap; absent unless asked for
     */
    @JsonPropertyOrder({
        "lane",
        "length_m",
        "lap_s",
        "top_speed_m_s",
        "slowest_m_s",
        "limits",
        "interval_s",
        "confidence",
        "doubts",
        "stuck_at",
        "sections",
        "caveats",
        "trace"
    })
    public record LaneJson(
            @JsonProperty("lane") String lane,
            @JsonProperty("length_m") double lengthM,
            @JsonProperty("lap_s") @Nullable Double lapS,
            @JsonProperty("top_speed_m_s") @Nullable Double topSpeedMps,
            @JsonProperty("slowest_m_s") @Nullable Double slowestMps,
            @JsonProperty("limits") Map<String, Double> limits,
            @JsonProperty("interval_s") @Nullable List<Double> intervalS,
            @JsonProperty("confidence") double confidence,
            @JsonProperty("doubts") List<DoubtJson> doubts,
            @JsonProperty("stuck_at") @Nullable StuckJson stuckAt,
            @JsonProperty("sections") List<SectionJson> sections,
            @JsonProperty("caveats") List<String> caveats,

            @JsonProperty("trace") @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            List<PointJson> trace) {

        /**
         * A lane's forecast.
         *
         * @param confidence of its interval
         * @param sections times from gate to gate
         * @param caveats sentences, the reason why there is no lap among them
         * @param withTrace whether to list the speeds
         */
        public static LaneJson of(
                String lane,
                double lengthM,
                LapForecast forecast,
                double confidence,
                List<SectionJson> sections,
                List<String> caveats,
                boolean withTrace) {
            LapOutcome outcome = forecast.central();
            Optional<PredictedLap> lap = outcome instanceof PredictedLap found ? Optional.of(found) : Optional.empty();
            return new LaneJson(
                    lane,
                    lengthM,
                    lap.map(PredictedLap::lapS).orElse(null),
                    lap.map(PredictedLap::topMps).orElse(null),
                    lap.map(PredictedLap::slowestMps).orElse(null),
                    lap.map(found -> byWord(found.shares())).orElse(Map.of()),
                    forecast.knownS()
                            .map(interval -> List.of(interval.low(), interval.high()))
                            .orElse(null),
                    confidence,
                    forecast.shares().stream().map(share -> DoubtJson.of(share)).toList(),
                    StuckJson.of(outcome),
                    sections,
                    caveats,
                    withTrace ? lap.map(found -> points(found.trace())).orElse(null) : null);
        }

        private static Map<String, Double> byWord(Map<Limit, Double> shares) {
            Map<String, Double> named = new LinkedHashMap<>();
            for (Limit limit : Limit.values()) {
                if (shares.containsKey(limit)) {
                    named.put(limit.word(), shares.get(limit));
                }
            }
            return named;
        }

        private static List<PointJson> points(LapTrace trace) {
            List<PointJson> points = new ArrayList<>();
            for (int i = 0; i <= trace.cells(); i++) {
                Limit limit = trace.limit(Math.min(i, trace.cells() - 1));
                points.add(new PointJson(trace.placeM(i), trace.speedMps(i), limit.word()));
            }
            return points;
        }
    }

    /**
     * Time from one gate to the next.
     *
     * @param section its name
     * @param seconds s
     */
    @JsonPropertyOrder({"section", "seconds"})
    public record SectionJson(
            @JsonProperty("section") String section,
            @JsonProperty("seconds") double seconds) {}

    /**
     * What one number in doubt brings.
     *
     * @param number its place in the car file
     * @param plusMinus its doubt, in its own unit
     * @param seconds change of the lap for one {@code plusMinus}, s; negative when more of the number is faster
     */
    @JsonPropertyOrder({"number", "plus_minus", "seconds"})
    public record DoubtJson(
            @JsonProperty("number") String number,
            @JsonProperty("plus_minus") double plusMinus,
            @JsonProperty("seconds") @Nullable Double seconds) {
        static DoubtJson of(NumberShare share) {
            return new DoubtJson(
                    share.number().path(),
                    share.number().reading().plusMinus(),
                    Double.isFinite(share.amount()) ? share.amount() : null);
        }
    }

    /**
     * Why there is no lap.
     *
     * @param limit the limit in the way; too-tight when the tail cannot follow the bend
     * @param atM where, m from the timing line
     */
    @JsonPropertyOrder({"limit", "at_m"})
    public record StuckJson(
            @JsonProperty("limit") String limit,
            @JsonProperty("at_m") double atM) {
        static @Nullable StuckJson of(LapOutcome outcome) {
            if (outcome instanceof Stuck stuck) {
                return new StuckJson(stuck.limit().word(), stuck.atM());
            }
            return outcome instanceof TooTight tight ? new StuckJson("too-tight", tight.atM()) : null;
        }
    }

    /**
     * Speed at one place.
     *
     * @param sM place, m from the timing line
     * @param vMps speed of the guide, m/s
     * @param limit what limits the car from here on
     */
    @JsonPropertyOrder({"s_m", "v_m_s", "limit"})
    public record PointJson(
            @JsonProperty("s_m") double sM,
            @JsonProperty("v_m_s") double vMps,
            @JsonProperty("limit") String limit) {}
}
