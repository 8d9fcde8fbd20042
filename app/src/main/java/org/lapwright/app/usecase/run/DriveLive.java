package org.lapwright.app.usecase.run;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.DriveStore;
import org.lapwright.app.usecase.DriveStore.Drive;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Press;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeepComparison;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.KnownDriver;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/** Does the change help, while the car runs, and when may I stop? */
public final class DriveLive {
    private final DriveStore store;
    private final JudgeChange judgeChange;
    private final KeepComparison keepComparison;
    private final KnownDriver knownDriver;
    private final Clock clock;

    /** Drives kept in {@code store}. */
    public DriveLive(
            DriveStore store,
            JudgeChange judgeChange,
            KeepComparison keepComparison,
            KnownDriver knownDriver,
            Clock clock) {
        this.store = store;
        this.judgeChange = judgeChange;
        this.keepComparison = keepComparison;
        this.knownDriver = knownDriver;
        this.clock = clock;
    }

    /** The drive that is on, if there is one. */
    public Optional<Drive> open() {
        return store.open();
    }

    /** A drive by its number. */
    public Optional<Drive> drive(long id) {
        return store.drive(id);
    }

    /** Begins a drive; when this returns it is on disk. */
    public Drive begin(NewDrive drive, String requestKey) {
        return store.begin(drive, requestKey, clock.instant());
    }

    /**
     * Takes what happened; when this returns it is on disk.
     *
     * @throws IllegalArgumentException if there is no such drive, or it is over
     */
    public Drive happened(long drive, List<DriveEvent> events) {
        return store.happened(drive, events, clock.instant());
    }

    /** The verdict so far; empty until both sides have laps. */
    public Optional<Verdict> verdict(Drive drive) {
        Progress progress = Progress.of(drive);
        return progress.comparable().map(session -> judgeChange.judge(session, settings(drive, progress)));
    }

    /**
     * Keeps a drive as a comparison and ends it.
     *
     * @throws IllegalArgumentException if one side has no laps yet
     */
    public SavedComparison keep(Drive drive, String requestKey) {
        Progress progress = Progress.of(drive);
        Session session = progress.comparable()
                .orElseThrow(
                        () -> new IllegalArgumentException("both before and after need laps before this can be kept"));
        NewDrive fixed = drive.fixed();
        TrialSettings settings = settings(drive, progress);
        Verdict verdict = judgeChange.judge(session, settings);
        KeptComparison kept = new KeptComparison(
                fixed.car(),
                fixed.track(),
                fixed.lane(),
                fixed.driver(),
                fixed.change(),
                verdict.decision() == Decision.SLOWER ? Side.BEFORE : Side.AFTER,
                session,
                settings,
                false);
        SavedComparison saved = keepComparison.keep(kept, "drive " + drive.id());
        happened(drive.id(), List.of(new DriveEvent.Pressed(Press.KEPT, requestKey)));
        return saved;
    }

    private TrialSettings settings(Drive drive, Progress progress) {
        return TrialSettings.DEFAULT
                .withPlan(drive.fixed().plan())
                .withPrior(knownDriver.prior())
                .withHandTimed(progress.handTimed());
    }
}
