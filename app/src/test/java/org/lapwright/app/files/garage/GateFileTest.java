package org.lapwright.app.files.garage;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class GateFileTest {
    @Test
    void whatIsWrittenIsReadBack() {
        for (GateFile file : new GateFile[] {new GateFile("", 1, false), new GateFile("/dev/ttyUSB0", 7.5, true)}) {
            assertThat(GateFile.read(file.text()).accepted()).contains(file);
        }
    }

    @Test
    void aLevelAboveTheFullScaleIsRefused() {
        FileReading<GateFile> reading =
                GateFile.read("{\"format\": \"lapwright-gate/1\", \"least_level_percent\": 101}");
        assertThat(reading.accepted()).isEmpty();
        assertThat(reading.problems().get(0).sentence())
                .contains("least_level_percent")
                .contains("100");
    }
}
