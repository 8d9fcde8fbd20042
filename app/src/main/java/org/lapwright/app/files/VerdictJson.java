package org.lapwright.app.files;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.Stint;
import org.lapwright.core.trial.Caveat;
import org.lapwright.core.trial.Consistency;
import org.lapwright.core.trial.Difference;
import org.lapwright.core.trial.OffRates;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.TrialSettings;
import org.lapwright.core.units.Interval;

/**
 * A verdict as the command line and the pages give it out in JSON. The names are fixed; what cannot be told is null,
 * an open end of an interval is null too.
 *
 * @param verdict faster, slower, level or more-laps
 * @param differenceS after minus before, s a lap
 * @param intervalS where it lies, low and high end, s a lap
 * @param confidence of the interval
 * @param spreadRatio spread after over before
 * @param spreadInterval where it lies
 * @param lapsNeeded how many more laps each way should settle it
 * @param decidedAtLap when a live verdict would first have been reached
 * @param before the laps before the change
 * @param after the laps after the change
 * @param differencePercent {@code differenceS} in % of the pace before; null where that is
 * @param consistency steadier, wilder or more-laps; null with too few laps
 * @param neededAfresh whether {@code lapsNeeded} is for a new session rather than for driving on
 * @param offs how often the car came off on either side; null with too few laps
 * @param plan the plan stated, such as ABBAAB x 10; null when the runs as driven were taken for it
 * @param caveats what to know beside the verdict, most telling first: too-few-laps, one-run-a-side, hand-timed,
 *     plan-as-driven, beyond-plan, decided-earlier, coarse-clock, after-first, uneven-exclusions, no-scatter; there may
 *     be more one day
 * @param session what the table calls the session; null where it names none
 */
@JsonPropertyOrder({
    "verdict",
    "difference_s",
    "interval_s",
    "confidence",
    "spread_ratio",
    "spread_interval",
    "laps_needed",
    "decided_at_lap",
    "before",
    "after",
    "difference_percent",
    "consistency",
    "needed_afresh",
    "offs",
    "plan",
    "caveats",
    "session"
})
public record VerdictJson(
        @JsonProperty("verdict") String verdict,
        @JsonProperty("difference_s") @Nullable Double differenceS,
        @JsonProperty("interval_s") @Nullable List<@Nullable Double> intervalS,
        @JsonProperty("confidence") double confidence,
        @JsonProperty("spread_ratio") @Nullable Double spreadRatio,
        @JsonProperty("spread_interval") @Nullable List<@Nullable Double> spreadInterval,
        @JsonProperty("laps_needed") @Nullable Integer lapsNeeded,
        @JsonProperty("decided_at_lap") @Nullable Integer decidedAtLap,
        @JsonProperty("before") StintJson before,
        @JsonProperty("after") StintJson after,
        @JsonProperty("difference_percent") @Nullable Double differencePercent,
        @JsonProperty("consistency") @Nullable String consistency,
        @JsonProperty("needed_afresh") boolean neededAfresh,
        @JsonProperty("offs") @Nullable OffsJson offs,
        @JsonProperty("plan") @Nullable String plan,
        @JsonProperty("caveats") List<String> caveats,
        @JsonProperty("session") @Nullable String session) {

    /**
     * The JSON of a verdict.
     *
     * @param verdict what was judged
     * @param settings what it was judged by
     */
    public static VerdictJson of(Verdict verdict, TrialSettings settings) {
        return of(verdict, settings, "");
    }

    /**
     * The JSON of a verdict on one session of many.
     *
     * @param verdict what was judged
     * @param settings what it was judged by
     * @param session what the table calls the session; empty where it names none
     */
    public static VerdictJson of(Verdict verdict, TrialSettings settings, String session) {
        Optional<Consistency> consistency = verdict.consistency();
        return new VerdictJson(
                verdict.decision().code(),
                verdict.difference().map(Difference::seconds).orElse(null),
                verdict.difference()
                        .map(difference -> ends(difference.intervalS()))
                        .orElse(null),
                1 - settings.alpha(),
                consistency.flatMap(Consistency::spreadRatio).orElse(null),
                consistency
                        .flatMap(Consistency::ratioInterval)
                        .map(VerdictJson::ends)
                        .orElse(null),
                orNull(verdict.needed().eachWay()),
                orNull(verdict.decidedAtLap()),
                StintJson.of(verdict.before()),
                StintJson.of(verdict.after()),
                verdict.difference().map(difference -> 100 * difference.share()).orElse(null),
                consistency.map(found -> found.decision().code()).orElse(null),
                verdict.needed().afresh(),
                consistency.map(found -> OffsJson.of(found.offs())).orElse(null),
                settings.plan().map(RunPlan::text).orElse(null),
                verdict.caveats().stream().sorted().map(VerdictJson::code).toList(),
                session.isEmpty() ? null : session);
    }

    private static String code(Caveat caveat) {
        return caveat.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static List<@Nullable Double> ends(Interval interval) {
        return Arrays.asList(finite(interval.low()), finite(interval.high()));
    }

    private static @Nullable Double finite(double value) {
        return Double.isInfinite(value) ? null : value;
    }

    private static @Nullable Integer orNull(OptionalInt value) {
        return value.isPresent() ? value.getAsInt() : null;
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    /**
     * Laps and what they amount to.
     *
     * @param laps every lap with its kind
     * @param paceS pace, s
     * @param spreadS spread, s
     * @param bestS best clean lap, s
     * @param driftSPerLap drift, s a lap
     */
    @JsonPropertyOrder({"laps", "pace_s", "spread_s", "best_s", "drift_s_per_lap"})
    public record StintJson(
            @JsonProperty("laps") List<LapJson> laps,
            @JsonProperty("pace_s") @Nullable Double paceS,
            @JsonProperty("spread_s") @Nullable Double spreadS,
            @JsonProperty("best_s") @Nullable Double bestS,
            @JsonProperty("drift_s_per_lap") @Nullable Double driftSPerLap) {

        /** The JSON of a stint. */
        public static StintJson of(Stint stint) {
            return new StintJson(
                    stint.laps().stream().map(LapJson::of).toList(),
                    orNull(stint.paceS()),
                    orNull(stint.spreadS()),
                    orNull(stint.bestS()),
                    orNull(stint.driftSPerLap()));
        }
    }

    /**
     * Laps lost to an off on either side.
     *
     * @param before before the change
     * @param after after the change
     * @param fisherP chance of rates so far apart, or farther, if both sides were alike: two-sided p of Fisher's exact test
     */
    @JsonPropertyOrder({"before", "after", "fisher_p"})
    public record OffsJson(
            @JsonProperty("before") RateJson before,
            @JsonProperty("after") RateJson after,
            @JsonProperty("fisher_p") double fisherP) {
        private static OffsJson of(OffRates offs) {
            return new OffsJson(RateJson.of(offs.before()), RateJson.of(offs.after()), offs.fisherP());
        }
    }

    /**
     * A rate of offs.
     *
     * @param offs laps lost to an off, as far as time can tell
     * @param laps laps driven
     * @param interval 95 % interval of the share of laps lost, 0 to 1
     */
    @JsonPropertyOrder({"offs", "laps", "interval"})
    public record RateJson(
            @JsonProperty("offs") int offs,
            @JsonProperty("laps") int laps,
            @JsonProperty("interval") List<@Nullable Double> interval) {
        private static RateJson of(OffRates.Rate rate) {
            return new RateJson(rate.offs(), rate.laps(), ends(rate.interval()));
        }
    }

    /**
     * One lap.
     *
     * @param lap its number in its run
     * @param lapS lap time, s
     * @param kind what it was
     */
    @JsonPropertyOrder({"lap", "lap_s", "kind"})
    public record LapJson(
            @JsonProperty("lap") int lap,
            @JsonProperty("lap_s") double lapS,
            @JsonProperty("kind") String kind) {
        private static LapJson of(Lap lap) {
            return new LapJson(lap.number(), lap.seconds(), lap.kind().code());
        }
    }
}
