package org.lapwright.app.files.answer;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One suggestion, as the command line gives it out in JSON. The names are fixed; what cannot be told is null.
 *
 * @param change what to do, in words
 * @param gainS what it takes off the lap on the mean, s
 * @param intervalS where the gain lies with 90 % chance, low and high, s
 * @param chance that the car is faster with it, 0 to 1
 * @param effortMin bench work, minutes
 * @param lapsToProve laps on both sides together; null when no evening is long enough
 * @param kinds kinds of its changes
 * @param why one sentence of physics
 * @param caution what gets harder with it; null when nothing does
 * @param reversible whether the car can be put back as it was
 */
@JsonPropertyOrder({
    "change",
    "gain_s",
    "interval_s",
    "chance",
    "effort_min",
    "laps_to_prove",
    "kinds",
    "why",
    "caution",
    "reversible"
})
public record SuggestionJson(
        String change,
        @JsonProperty("gain_s") double gainS,
        @JsonProperty("interval_s") List<Double> intervalS,
        double chance,
        @JsonProperty("effort_min") double effortMin,
        @JsonProperty("laps_to_prove") @Nullable Integer lapsToProve,
        List<String> kinds,
        String why,
        @Nullable String caution,
        boolean reversible) {
    /** Copies the lists. */
    public SuggestionJson {
        intervalS = List.copyOf(intervalS);
        kinds = List.copyOf(kinds);
    }
}
