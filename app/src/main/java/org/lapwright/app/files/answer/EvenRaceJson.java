package org.lapwright.app.files.answer;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What makes two cars run level, as the command line gives it out in JSON. The names are fixed.
 *
 * @param firstS lap of the first car as it is, s
 * @param secondS of the second
 * @param ways any one of them
 */
@JsonPropertyOrder({"first_s", "second_s", "ways"})
public record EvenRaceJson(
        @JsonProperty("first_s") double firstS,
        @JsonProperty("second_s") double secondS,
        List<Way> ways) {
    /** Copies the list. */
    public EvenRaceJson {
        ways = List.copyOf(ways);
    }

    /**
     * A way.
     *
     * @param on {@code first} or {@code second}
     * @param ballastG weight to add, g; null when it is done by voltage
     * @param supplyV voltage of its lane; null when it is done by weight
     * @param xMm where the weight goes, mm ahead of the rear axle
     * @param lapS lap of that car then, s
     */
    @JsonPropertyOrder({"on", "ballast_g", "supply_v", "x_mm", "lap_s"})
    public record Way(
            String on,
            @JsonProperty("ballast_g") @Nullable Double ballastG,
            @JsonProperty("supply_v") @Nullable Double supplyV,
            @JsonProperty("x_mm") @Nullable Double xMm,
            @JsonProperty("lap_s") double lapS) {}
}
