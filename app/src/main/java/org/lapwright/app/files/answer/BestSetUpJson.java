package org.lapwright.app.files.answer;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;

/**
 * The best set-up of a car, as the command line gives it out in JSON. The names are fixed.
 *
 * @param wasS lap of the car as it is, mean of the lanes, s
 * @param lapS lap after all steps, s
 * @param steps what to do, in this order
 * @param predictions laps predicted
 */
@JsonPropertyOrder({"was_s", "lap_s", "steps", "predictions"})
public record BestSetUpJson(
        @JsonProperty("was_s") double wasS,
        @JsonProperty("lap_s") double lapS,
        List<Step> steps,
        int predictions) {
    /** Copies the list. */
    public BestSetUpJson {
        steps = List.copyOf(steps);
    }

    /**
     * One step.
     *
     * @param change what to do, in words
     * @param kind of change
     * @param gainS what this step takes off the lap, s
     * @param lapS lap after it, s
     * @param intervalS where the gain of all steps so far lies with 90 % chance, low and high, s
     * @param chance that the car is faster with all steps so far, 0 to 1
     * @param effortMin bench work for this step, minutes
     * @param reversible whether the car can be put back
     */
    @JsonPropertyOrder({"change", "kind", "gain_s", "lap_s", "interval_s", "chance", "effort_min", "reversible"})
    public record Step(
            String change,
            String kind,
            @JsonProperty("gain_s") double gainS,
            @JsonProperty("lap_s") double lapS,
            @JsonProperty("interval_s") List<Double> intervalS,
            double chance,
            @JsonProperty("effort_min") double effortMin,
            boolean reversible) {
        /** Copies the list. */
        public Step {
            intervalS = List.copyOf(intervalS);
        }
    }
}
