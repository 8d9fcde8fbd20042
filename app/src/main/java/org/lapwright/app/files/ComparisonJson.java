package org.lapwright.app.files;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import org.jspecify.annotations.Nullable;

/**
 * A kept comparison as it leaves the garage and comes back: the raw laps and what was fixed beforehand. The verdict follows from these.
 *
 * @param format {@value #FORMAT}
 * @param car name of the car
 * @param track name of the track
 * @param lane name of the lane; may be empty
 * @param driver who drove; may be empty
 * @param conditions of the evening; may be empty or missing
 * @param change what was changed; may be empty
 * @param stays the set-up that stays: before or after
 * @param savedAt when it was kept, RFC 3339
 * @param session the runs and what was fixed beforehand
 */
@JsonPropertyOrder({"format", "car", "track", "lane", "driver", "conditions", "change", "stays", "saved_at", "session"})
public record ComparisonJson(
        @JsonProperty("format") @Nullable String format,
        @JsonProperty("car") @Nullable String car,
        @JsonProperty("track") @Nullable String track,
        @JsonProperty("lane") @Nullable String lane,
        @JsonProperty("driver") @Nullable String driver,
        @JsonProperty("conditions") @Nullable String conditions,
        @JsonProperty("change") @Nullable String change,
        @JsonProperty("stays") @Nullable String stays,
        @JsonProperty("saved_at") @Nullable String savedAt,
        @JsonProperty("session") @Nullable SessionJson session) {
    /** Its name and version. */
    public static final String FORMAT = "lapwright-comparison/1";
}
