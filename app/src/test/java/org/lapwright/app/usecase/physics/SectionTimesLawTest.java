package org.lapwright.app.usecase.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.lapwright.app.files.garage.CarFile;
import org.lapwright.app.files.garage.Reference;
import org.lapwright.app.files.garage.TrackFile;
import org.lapwright.app.usecase.physics.SectionTimes.SectionTime;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.dynamics.PredictedLap;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.LaneCells;
import org.lapwright.core.track.Track;

/** What is lost in the parts is what is lost in the whole. */
class SectionTimesLawTest {
    private static final double EXACT = 1e-9;

    private static Track track(String name) {
        return TrackFile.read(Reference.text(name + ".track.json"))
                .accepted()
                .orElseThrow()
                .track();
    }

    private static PredictedLap lap(String car, Track track, Lane lane) {
        SetUp setUp = CarFile.read(Reference.text(car + ".car.json"))
                .accepted()
                .orElseThrow()
                .setUp();
        return (PredictedLap) new PredictLap().predict(setUp, track, lane).outcome();
    }

    @ParameterizedTest
    @CsvSource({"plain,magnet,loop", "magnet,plain,long", "tall,plain,hill", "soft,tall,hill", "plain,soft,long"})
    void theSectionsAddUpToTheLaps(String here, String other, String name) {
        Track track = track(name);
        for (Lane lane : track.lanes()) {
            LaneCells cells = track.cells(lane);
            PredictedLap first = lap(here, track, lane);
            PredictedLap second = lap(other, track, lane);
            SectionTimes times = SectionTimes.of(cells, first, second);
            double difference = first.lapS() - second.lapS();
            assertThat(times.sections().stream().mapToDouble(SectionTime::hereS).sum())
                    .isEqualTo(first.lapS(), within(EXACT));
            assertThat(times.sections().stream()
                            .mapToDouble(section -> section.otherS())
                            .sum())
                    .isEqualTo(second.lapS(), within(EXACT));
            assertThat(times.sections().stream()
                            .mapToDouble(section -> section.lossS())
                            .sum())
                    .isEqualTo(difference, within(EXACT));
            assertThat(times.lossS()).hasSize(cells.count() + 1);
            assertThat(times.lossS().get(0)).isZero();
            assertThat(times.lossS().get(cells.count())).isEqualTo(difference, within(EXACT));
            for (SectionTime section : times.sections()) {
                double grown = times.lossS().get(section.stretch().toCell())
                        - times.lossS().get(section.stretch().fromCell());
                assertThat(section.lossS()).isEqualTo(grown, within(EXACT));
            }
        }
    }

    @Test
    void changingSidesChangesSigns() {
        Track track = track("loop");
        Lane lane = track.lanes().get(0);
        LaneCells cells = track.cells(lane);
        SectionTimes there = SectionTimes.of(cells, lap("plain", track, lane), lap("magnet", track, lane));
        SectionTimes back = SectionTimes.of(cells, lap("magnet", track, lane), lap("plain", track, lane));
        for (int i = 0; i < there.sections().size(); i++) {
            assertThat(there.sections().get(i).lossS())
                    .isEqualTo(-back.sections().get(i).lossS(), within(EXACT));
        }
    }

    @Test
    void lapsOfAnotherLaneAreRefused() {
        Track loop = track("loop");
        Track longer = track("long");
        PredictedLap lap = lap("plain", loop, loop.lanes().get(0));
        PredictedLap other = lap("plain", longer, longer.lanes().get(0));
        LaneCells cells = loop.cells(loop.lanes().get(0));
        assertThatThrownBy(() -> SectionTimes.of(cells, lap, other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the laps were driven on another lane");
    }
}
