package org.lapwright.app.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.web.bench.PlanView.Kind;
import org.lapwright.core.car.Chassis;
import org.lapwright.core.car.FrontWheels;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.numbers.SetUpNumbers;

class PlanDrawingTest {
    private static SetUp setUp(String name) {
        return CarFile.read(Reference.text(name + ".car.json"))
                .accepted()
                .orElseThrow()
                .setUp();
    }

    private static PlanView drawn(SetUp car) {
        return PlanDrawing.of(car, SetUpNumbers.onBench(car));
    }

    private static SetUp withFront(SetUp car, FrontWheels wheels) {
        Chassis was = car.chassis();
        return car.withChassis(
                new Chassis(was.guideToRearAxleMm(), was.wheelbaseMm(), was.rearTrackMm(), was.frontTrackMm(), wheels));
    }

    @Test
    void frontWheelsThatHangClearAreToldThreeTimes() {
        PlanView clear = drawn(withFront(setUp("plain"), FrontWheels.CLEAR));
        PlanView touching = drawn(withFront(setUp("plain"), FrontWheels.TOUCHING));
        assertThat(clear.tyres()).extracting(PlanView.Tyre::touches).containsExactly(true, true, false, false);
        assertThat(clear.stands()).hasSize(3);
        assertThat(clear.summary()).contains("front wheels hang clear");
        assertThat(touching.tyres()).extracting(PlanView.Tyre::touches).containsOnly(true);
        assertThat(touching.stands()).hasSize(4);
        assertThat(touching.summary()).contains("front wheels touch");
    }

    /** 78 g at 36 of 98 mm: 28.65 g and 49.35 g, 37 % and 63 %. */
    @Test
    void loadsStandBesideTheirAxlesWithTheirShare() {
        assertThat(drawn(setUp("plain")).labels())
                .extracting(PlanView.Label::lines)
                .contains(List.of("nose", "28.7 g, 37 %"), List.of("rear tyres", "49.3 g, 63 %"));
    }

    @Test
    void aMagnetIsMarkedWhereThereIsOne() {
        assertThat(drawn(setUp("magnet")).marks())
                .extracting(PlanView.Mark::kind)
                .contains(Kind.MAGNET);
        assertThat(drawn(setUp("plain")).marks())
                .extracting(PlanView.Mark::kind)
                .containsExactly(Kind.CENTRE);
    }
}
