package org.lapwright.app.usecase.run;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.lapwright.core.laps.pass.LapSplits;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;

/**
 * How far a drive has come. It follows from what happened alone, so it is the same live, on another phone, and after a restart.
 *
 * @param session the runs so far, warm-up laps left out
 * @param splits of each lap of each of these runs, when it passed the section gates
 * @param run number of the run, from 0
 * @param warmUpLeft laps still to warm up in it
 * @param lapsLeft laps still to drive in it after that
 * @param lapOpen whether a lap is under way
 * @param paused whether it is held up
 * @param lastS last lap, s, a warm-up lap too; empty before the first of the run
 * @param handTimed whether a thumb timed it
 * @param presses how many buttons were pressed so far
 */
public record Progress(
        Session session,
        List<List<LapSplits>> splits,
        int run,
        int warmUpLeft,
        int lapsLeft,
        boolean lapOpen,
        boolean paused,
        OptionalDouble lastS,
        boolean handTimed,
        int presses) {
    /** Copies the lists. */
    public Progress {
        splits = splits.stream().map(each -> List.copyOf(each)).toList();
    }

    /** The runs that have laps, if there are some on both sides: what can be judged. */
    public Optional<Session> comparable() {
        Session driven = new Session(session.runs().stream()
                .filter(run -> !run.run().laps().isEmpty())
                .toList());
        boolean both = driven.runs(Side.BEFORE) > 0 && driven.runs(Side.AFTER) > 0;
        return both ? Optional.of(driven) : Optional.empty();
    }

    /** Whether the run has all its laps, so that the car can be made ready for the next one. */
    public boolean isRunDone() {
        return lapsLeft == 0;
    }

    /** Whether all runs of the plan are driven. */
    public boolean isDone(RunPlan plan) {
        return isRunDone() && run == plan.order().size() - 1;
    }

    /** The side of the run. */
    public Side side(RunPlan plan) {
        return plan.order().get(run);
    }
}
