package org.lapwright.app.usecase.run;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Passed;
import org.lapwright.app.usecase.DriveStore.DriveEvent.Pressed;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Press;
import org.lapwright.core.laps.LapKind;
import org.lapwright.core.laps.Overrule;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.laps.pass.LapSplits;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassCounter;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;

/** Goes through what happened in a drive, one by one. */
final class Reckoning {
    /** A gate, or a thumb, that goes off again so soon after saw the same car, s. */
    private static final double HOLD_OFF_S = 0.5;

    private static final String CAME_OFF = "came off";
    private static final String PASSES_LOST = "the gate's count shows passes lost";

    private final NewDrive fixed;
    private final RunPlan plan;
    private final List<DrivenRun> done = new ArrayList<>();
    private PassCounter counter;
    private List<TimedLap> laps = new ArrayList<>();
    private List<Overrule> words = new ArrayList<>();
    private final List<List<LapSplits>> doneSplits = new ArrayList<>();
    private List<LapSplits> splits = new ArrayList<>();
    private int warmUp;
    private int presses;
    private boolean cameOff;
    private boolean paused;
    private boolean handTimed;
    private OptionalDouble lastS = OptionalDouble.empty();

    Reckoning(NewDrive fixed) {
        this.fixed = fixed;
        this.plan = fixed.plan();
        this.counter = newCounter();
    }

    private PassCounter newCounter() {
        return new PassCounter(fixed.laneNumber(), HOLD_OFF_S);
    }

    void take(DriveEvent event) {
        if (event instanceof Passed passed) {
            handTimed |= passed.pass().stamp().clock() == PassClock.HAND;
            if (!paused && laps.size() < plan.lapsPerRun() && counter.add(passed.pass())) {
                lap();
            }
        } else if (event instanceof Pressed pressed) {
            press(pressed.press());
        }
    }

    private void lap() {
        double seconds = counter.lastLap().seconds();
        lastS = OptionalDouble.of(seconds);
        if (warmUp < fixed.warmUp()) {
            warmUp++;
        } else {
            laps.add(new TimedLap(laps.size() + 1, seconds));
            splits.add(counter.lastLap().splits());
            if (cameOff) {
                words.add(new Overrule(laps.size(), LapKind.OFF, CAME_OFF));
            } else if (counter.lastLap().passesLost()) {
                words.add(new Overrule(laps.size(), LapKind.MISSED, PASSES_LOST));
            }
        }
        cameOff = false;
    }

    private void press(Press press) {
        presses++;
        if (press == Press.CAME_OFF) {
            cameOff = true;
        } else if (press == Press.PAUSED || press == Press.GOES_ON) {
            // The lap under way spans the pause: it is none.
            paused = press == Press.PAUSED;
            counter = newCounter();
            cameOff = false;
        } else if (press == Press.NEXT_RUN && done.size() < plan.order().size() - 1) {
            done.add(present());
            doneSplits.add(splits);
            splits = new ArrayList<>();
            laps = new ArrayList<>();
            words = new ArrayList<>();
            counter = newCounter();
            warmUp = 0;
            cameOff = false;
            paused = false;
            lastS = OptionalDouble.empty();
        }
    }

    private DrivenRun present() {
        return new DrivenRun(plan.order().get(done.size()), new TimedRun(laps, words));
    }

    Progress progress() {
        List<DrivenRun> runs = new ArrayList<>(done);
        runs.add(present());
        List<List<LapSplits>> allSplits = new ArrayList<>(doneSplits);
        allSplits.add(splits);
        return new Progress(
                new Session(runs),
                allSplits,
                done.size(),
                fixed.warmUp() - warmUp,
                plan.lapsPerRun() - laps.size(),
                counter.isOpen(),
                paused,
                lastS,
                handTimed,
                presses);
    }
}
