package org.lapwright.app.files;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * A session to be judged, in JSON. What is absent takes its usual value; what is impossible is an error that names the
 * key.
 *
 * @param runs the runs in the order driven
 * @param settings what was fixed beforehand
 */
public record SessionJson(
        @JsonProperty("runs") @Nullable List<@Nullable RunJson> runs,
        @JsonProperty("settings") @Nullable SettingsJson settings) {

    /**
     * The session.
     *
     * @throws IllegalArgumentException naming the key that is missing or impossible
     */
    public Session toSession() {
        List<DrivenRun> driven = new ArrayList<>();
        List<@Nullable RunJson> given = present(runs, "runs");
        for (int i = 0; i < given.size(); i++) {
            String key = "runs[" + i + "]";
            driven.add(present(given.get(i), key).toRun(key));
        }
        return new Session(driven);
    }

    /**
     * What was fixed beforehand.
     *
     * @throws IllegalArgumentException naming the key that is impossible
     */
    public TrialSettings toSettings() {
        return settings == null ? TrialSettings.DEFAULT : settings.toSettings();
    }

    private static <T> T present(@Nullable T value, String key) {
        if (value == null) {
            throw new IllegalArgumentException(key + " is missing");
        }
        return value;
    }

    private static <T> T at(String key, Supplier<T> value) {
        try {
            return value.get();
        } catch (IllegalArgumentException impossible) {
            throw new IllegalArgumentException(key + ": " + impossible.getMessage(), impossible);
        }
    }

    /**
     * One run.
     *
     * @param side before or after
     * @param lapS lap times in the order driven, s
     * @param overrules the racer's word on single laps
     */
    public record RunJson(
            @JsonProperty("side") @Nullable String side,
            @JsonProperty("lap_s") @Nullable List<@Nullable Double> lapS,
            @JsonProperty("overrules") @Nullable List<@Nullable OverruleJson> overrules) {

        private DrivenRun toRun(String key) {
            String named = present(side, key + ".side");
            Side found = Side.find(named)
                    .orElseThrow(() -> new IllegalArgumentException(
                            "%s.side is '%s'; it must be before or after".formatted(key, named)));
            return new DrivenRun(found, new TimedRun(laps(key + ".lap_s"), words(key + ".overrules")));
        }

        private List<TimedLap> laps(String key) {
            List<@Nullable Double> given = present(lapS, key);
            List<TimedLap> laps = new ArrayList<>();
            for (int i = 0; i < given.size(); i++) {
                String at = key + "[" + i + "]";
                double seconds = present(given.get(i), at);
                int number = i + 1;
                laps.add(at(at, () -> new TimedLap(number, seconds)));
            }
            return laps;
        }

        private List<Overrule> words(String key) {
            List<Overrule> words = new ArrayList<>();
            List<@Nullable OverruleJson> given = overrules == null ? List.of() : overrules;
            for (int i = 0; i < given.size(); i++) {
                String at = key + "[" + i + "]";
                OverruleJson word = present(given.get(i), at);
                words.add(at(at, word::toOverrule));
            }
            return words;
        }
    }

    /**
     * The racer's word on a lap.
     *
     * @param lap its number in the run, from 1
     * @param kind what it was
     * @param reason why
     */
    public record OverruleJson(
            @JsonProperty("lap") @Nullable Integer lap,
            @JsonProperty("kind") @Nullable String kind,
            @JsonProperty("reason") @Nullable String reason) {

        private Overrule toOverrule() {
            String named = present(kind, "kind");
            LapKind found = LapKind.find(named)
                    .orElseThrow(() -> new IllegalArgumentException(
                            "'%s' is not a kind of lap; the kinds are %s".formatted(named, kinds())));
            return new Overrule(present(lap, "lap"), found, present(reason, "reason"));
        }

        private static String kinds() {
            return String.join(
                    ", ", List.of(LapKind.values()).stream().map(LapKind::code).toList());
        }
    }

    /**
     * What was fixed beforehand.
     *
     * @param plan the runs planned, such as ABBA x 10
     * @param confidence of the interval, 0.7 to 0.999
     * @param marginPercent difference that does not matter, % of a lap, 0 to 10
     * @param handTimed whether a person pressed a button
     */
    public record SettingsJson(
            @JsonProperty("plan") @Nullable String plan,
            @JsonProperty("confidence") @Nullable Double confidence,
            @JsonProperty("margin_percent") @Nullable Double marginPercent,
            @JsonProperty("hand_timed") @Nullable Boolean handTimed) {

        private TrialSettings toSettings() {
            TrialSettings usual = TrialSettings.DEFAULT;
            double sure = confidence == null ? 1 - usual.alpha() : confidence;
            if (!(sure >= 0.7 && sure <= 0.999)) {
                throw new IllegalArgumentException(
                        "settings.confidence is %s; it must be from 0.7 to 0.999".formatted(sure));
            }
            double margin = marginPercent == null ? usual.levelMargin() * 100 : marginPercent;
            if (!(margin >= 0 && margin <= 10)) {
                throw new IllegalArgumentException(
                        "settings.margin_percent is %s; it must be from 0 to 10".formatted(margin));
            }
            Optional<RunPlan> planned =
                    plan == null ? Optional.empty() : Optional.of(at("settings.plan", () -> RunPlan.parse(plan)));
            double alpha = TrialSettings.alphaOf(sure);
            return new TrialSettings(alpha, margin / 100, handTimed != null && handTimed, planned, NoisePrior.DEFAULT);
        }
    }
}
