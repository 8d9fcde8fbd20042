package org.lapwright.app.usecase.run;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;
import org.lapwright.core.trial.session.RunPlan;

/** A plan of two runs of three laps, cut from passes where nobody presses anything. */
class RunCutterTest {
    private final RunCutter cutter =
            new RunCutter(new NewDrive("the car", "", "the track", "", 1, "", "", RunPlan.parse("AB x 3"), 0), 20);

    private Progress pass(String source, String boot, long sequence, double second) {
        PassStamp stamp = new PassStamp(PassClock.DEVICE, (long) (second * 1e9), 0, 0);
        return cutter.take(new Pass(source, boot, sequence, 1, 0, stamp));
    }

    private void firstRun() {
        pass("gate", "b", 0, 100);
        pass("gate", "b", 1, 106);
        pass("gate", "b", 2, 112);
        assertThat(pass("gate", "b", 3, 118).isRunDone()).isTrue();
    }

    @Test
    void aRunFollowsAfterAPause() {
        firstRun();
        assertThat(pass("gate", "b", 4, 124).run()).isZero();
        assertThat(pass("gate", "b", 5, 145).run()).isEqualTo(1);
    }

    @Test
    void clocksOfTwoSendersHaveNothingInCommonThoughTheirBootsAreNamedAlike() {
        firstRun();
        assertThat(pass("other gate", "b", 0, 119).run()).isEqualTo(1);
        assertThat(pass("other gate", "b", 1, 125).session().laps()).isEqualTo(4);
    }
}
