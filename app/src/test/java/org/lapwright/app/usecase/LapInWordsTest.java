package org.lapwright.app.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;

class LapInWordsTest {
    @Test
    void anOffSaysHowFarOverAndWhereTheLimitWas() {
        assertThat(LapInWords.why(lap(8.0, LapKind.OFF)))
                .isEqualTo("29 % over the pace of 6.200 s around it; the limit there was 6.572 s.");
    }

    @Test
    void aMissedGateSaysHowManyTimesThePace() {
        assertThat(LapInWords.why(lap(12.4, LapKind.MISSED)))
                .isEqualTo("2.00 times the pace of 6.200 s around it: two or more laps in one.");
    }

    @Test
    void theRacersWordStandsBesideTheRule() {
        Lap lap = lap(8.0, LapKind.OFF).overruledBy(new Overrule(14, LapKind.CLEAN, "braked for a cat"));
        assertThat(LapInWords.why(lap))
                .isEqualTo("You say clean: “braked for a cat”. The rule says came off or stopped.");
    }

    @Test
    void withoutAPaceNothingIsClaimed() {
        Lap lap = new Lap(new TimedLap(1, 6.2), LapKind.CLEAN, LapKind.CLEAN, 0, 0, Optional.empty());
        assertThat(LapInWords.why(lap)).isEqualTo("Too few laps to hold it against.");
    }

    @ParameterizedTest
    @EnumSource(LapKind.class)
    void everyKindHasAWordAndAReason(LapKind kind) {
        assertThat(LapInWords.kind(kind)).isNotBlank();
        assertThat(LapInWords.why(lap(8.0, kind))).endsWith(".").matches(".*\\d.*");
    }

    private static Lap lap(double seconds, LapKind kind) {
        return new Lap(new TimedLap(14, seconds), kind, kind, 6.2, 6.572, Optional.empty());
    }
}
