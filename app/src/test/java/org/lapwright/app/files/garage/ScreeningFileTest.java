package org.lapwright.app.files.garage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.Problem;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.trial.screening.Screening;

class ScreeningFileTest {
    private static final ScreeningFile FILE = new ScreeningFile(
            "Dunlin", "Shed loop", new Screening(List.of("a", "b \"c\"", "d"), 12, 7, 123_456_789), List.of());

    @Test
    void goesRoundUnchanged() {
        ScreeningFile two =
                FILE.with(Optional.of(TimedRun.of(6.123, 6.2, 6.1))).with(Optional.of(TimedRun.of(6, 7, 8)));
        assertThat(ScreeningFile.read(two.text()).accepted()).contains(two);
        assertThat(two.with(Optional.empty()).with(Optional.empty())).isEqualTo(FILE);
        assertThat(FILE.with(Optional.empty())).isEqualTo(FILE);
    }

    @Test
    void whatIsWrongIsSaid() {
        assertThat(ScreeningFile.read(FILE.text().replace(" 12,", " 9,")).problems())
                .extracting(Problem::sentence)
                .anyMatch(said -> said.contains("plans of 8 and of 12"));
        assertThat(ScreeningFile.read(FILE.text().replace("\"driven\" : [ ]", "\"driven\" : [[6.1, -2]]"))
                        .problems())
                .extracting(Problem::sentence)
                .anyMatch(said -> said.startsWith("driven[0]: "));
        assertThat(ScreeningFile.read("{\"format\":\"lapwright-screening/1\"}").problems())
                .hasSizeGreaterThan(3);
    }
}
