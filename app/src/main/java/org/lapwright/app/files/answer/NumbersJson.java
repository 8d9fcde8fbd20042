package org.lapwright.app.files.answer;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.numbers.Yield;

/**
 * What a set-up works out to, as the command line and the pages give it out in JSON. The names are fixed; what cannot be
 * told is null.
 *
 * @param totalG mass, g
 * @param cgAheadMm centre of gravity ahead of the rear axle, mm
 * @param cgLeftMm centre of gravity left of the centre line, mm
 * @param cgHeightMm centre of gravity above the track, mm
 * @param guideLoadG load on the guide at rest, g
 * @param rearLoadG load on the rear tyres at rest, g
 * @param ratio motor turns for one of the axle
 * @param mmPerMotorTurn way over the ground for one motor turn, mm
 * @param freeSpeedMps speed with the motor running free, m/s
 * @param tipG static tipping threshold, with the magnet on a magnetic track, g
 * @param slideG sideways g of the centre of gravity at which the rear lets go on a circle of 300 mm; null when the car is
 *     too long for it
 * @param yieldsFirst slide or tip; null without {@code slideG}
 * @param motorConstantVs motor constant, V s
 * @param motorOhm motor resistance, ohm
 * @param tipWithoutMagnetG what a tilt test shows, g
 * @param plusMinus one standard deviation of those numbers that the file leaves in doubt, by their names
 */
@JsonPropertyOrder({
    "total_g",
    "cg_ahead_of_rear_axle_mm",
    "cg_left_mm",
    "cg_height_mm",
    "guide_load_g",
    "rear_load_g",
    "ratio",
    "mm_per_motor_turn",
    "free_speed_m_s",
    "tip_g",
    "slide_g",
    "yields_first",
    "motor_constant_v_s",
    "motor_ohm",
    "tip_without_magnet_g",
    "plus_minus"
})
public record NumbersJson(
        @JsonProperty("total_g") double totalG,
        @JsonProperty("cg_ahead_of_rear_axle_mm") double cgAheadMm,
        @JsonProperty("cg_left_mm") double cgLeftMm,
        @JsonProperty("cg_height_mm") double cgHeightMm,
        @JsonProperty("guide_load_g") double guideLoadG,
        @JsonProperty("rear_load_g") double rearLoadG,
        @JsonProperty("ratio") double ratio,
        @JsonProperty("mm_per_motor_turn") double mmPerMotorTurn,
        @JsonProperty("free_speed_m_s") double freeSpeedMps,
        @JsonProperty("tip_g") double tipG,
        @JsonProperty("slide_g") @Nullable Double slideG,
        @JsonProperty("yields_first") @Nullable String yieldsFirst,
        @JsonProperty("motor_constant_v_s") double motorConstantVs,
        @JsonProperty("motor_ohm") double motorOhm,
        @JsonProperty("tip_without_magnet_g") double tipWithoutMagnetG,
        @JsonProperty("plus_minus") Map<String, Double> plusMinus) {
    /** Copies the map. */
    public NumbersJson {
        plusMinus = Collections.unmodifiableMap(new LinkedHashMap<>(plusMinus));
    }

    /** From the numbers and their doubts. */
    public static NumbersJson of(SetUpNumbers numbers, Map<String, Double> plusMinus) {
        SetUpNumbers.Standing standing = numbers.standing();
        SetUpNumbers.Gearing gearing = numbers.gearing();
        SetUpNumbers.Holding holding = numbers.holding();
        OptionalDouble slide = holding.slideG();
        return new NumbersJson(
                standing.totalG(),
                standing.cgAheadMm(),
                standing.cgLeftMm(),
                standing.cgHeightMm(),
                standing.guideLoadG(),
                standing.rearLoadG(),
                gearing.ratio(),
                gearing.mmPerMotorTurn(),
                gearing.freeSpeedMps(),
                holding.tipG(),
                slide.isPresent() ? slide.getAsDouble() : null,
                holding.yieldsFirst().map(Yield::word).orElse(null),
                numbers.motor().constantVs(),
                numbers.motor().resistanceOhm(),
                holding.tipWithoutMagnetG(),
                plusMinus);
    }
}
