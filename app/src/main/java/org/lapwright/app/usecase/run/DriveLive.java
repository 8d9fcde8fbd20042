package org.lapwright.app.usecase.run;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.lapwright.app.usecase.DriveStore;
import org.lapwright.app.usecase.DriveStore.DriveEvent;
import org.lapwright.app.usecase.DriveStore.Mark;
import org.lapwright.app.usecase.DriveStore.NewDrive;
import org.lapwright.app.usecase.DriveStore.Press;
import org.lapwright.app.usecase.DriveStore.Written;
import org.lapwright.app.usecase.JudgeChange;
import org.lapwright.app.usecase.KeepComparison;
import org.lapwright.app.usecase.KeptComparison;
import org.lapwright.app.usecase.KnownDriver;
import org.lapwright.app.usecase.SavedComparison;
import org.lapwright.core.laps.pass.LapSplits;
import org.lapwright.core.trial.Decision;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.section.JudgedSection;
import org.lapwright.core.trial.section.SectionJudge;
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
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    /** Held while the record and what is known of it are changed together. */
    private final Object lock = new Object();

    private Optional<Following> followed = Optional.empty();

    /** The last verdict: most passes of a full track are of other lanes and change nothing of it. */
    private final Last<Judged, Verdict> judged = new Last<>();

    /** The last sections, for the same reason. */
    private final Last<Sectioned, List<JudgedSection>> sectioned = new Last<>();

    /** What a verdict follows from. */
    private record Judged(Session session, TrialSettings settings) {}

    /** What the sections follow from. */
    private record Sectioned(Session session, List<List<LapSplits>> splits, TrialSettings settings) {}

    /** The answer that was worked out last; the same question again is not worked out anew. */
    private static final class Last<Q, A> {
        private final AtomicReference<@Nullable Known<Q, A>> known = new AtomicReference<>();

        private record Known<Q, A>(Q question, A answer) {}

        A of(Q question, Function<Q, A> work) {
            Known<Q, A> last = known.get();
            if (last == null || !last.question().equals(question)) {
                last = new Known<>(question, work.apply(question));
                known.set(last);
            }
            return last.answer();
        }
    }

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

    /** Has {@code listener} told, on the thread of whoever caused it, whenever a drive stands otherwise than before. */
    public void watch(Runnable listener) {
        listeners.add(listener);
    }

    /** The drive that is on, if there is one. */
    public Optional<Standing> open() {
        synchronized (lock) {
            Mark mark = store.mark();
            if (followed.filter(known -> known.mark().equals(mark)).isEmpty()) {
                followed = store.open().map(drive -> new Following(drive, mark));
            }
            return followed.map(Following::standing).filter(standing -> !standing.over());
        }
    }

    /** A drive by its number. */
    public Optional<Standing> drive(long id) {
        Optional<Standing> open = open().filter(standing -> standing.id() == id);
        if (open.isPresent()) {
            return open;
        }
        Mark mark = store.mark();
        return store.drive(id).map(drive -> new Following(drive, mark).standing());
    }

    /** The drive that a comparison was kept from, if it was. */
    public Optional<Standing> keptAs(long comparison) {
        OptionalLong drive = store.driveKeptAs(comparison);
        return drive.isPresent() ? drive(drive.getAsLong()) : Optional.empty();
    }

    /** Begins a drive; when this returns it is on disk. */
    public void begin(NewDrive drive, String requestKey) {
        store.begin(drive, requestKey, clock.instant());
        tell();
    }

    /**
     * Takes what happened; when this returns it is on disk.
     *
     * @throws IllegalArgumentException if there is no such drive, or it is over
     */
    public void happened(long drive, List<DriveEvent> events) {
        synchronized (lock) {
            Written written = store.happened(drive, events, clock.instant());
            followed =
                    followed.filter(known -> known.id() == drive && known.mark().equals(written.before()));
            followed.ifPresent(known -> known.take(written.fresh(), written.after()));
        }
        tell();
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }

    /** The verdict so far; empty until both sides have laps. */
    public Optional<Verdict> verdict(Standing drive) {
        return drive.progress()
                .comparable()
                .map(session -> judged.of(
                        new Judged(session, settings(drive)),
                        asked -> judgeChange.judge(asked.session(), asked.settings())));
    }

    /** Where on the lap the change brings or costs time; empty where no section gate saw the car, or a side has no laps. */
    public List<JudgedSection> sections(Standing drive) {
        Progress progress = drive.progress();
        if (SectionJudge.gates(progress.splits()) == 0 || progress.comparable().isEmpty()) {
            return List.of();
        }
        return sectioned.of(
                new Sectioned(progress.session(), progress.splits(), settings(drive)),
                asked -> SectionJudge.judge(asked.session(), asked.splits(), asked.settings(), judgeChange::judge));
    }

    /**
     * Keeps a drive as a comparison and ends it.
     *
     * @throws IllegalArgumentException if one side has no laps yet
     */
    public SavedComparison keep(Standing drive, String requestKey) {
        Session session = drive.progress()
                .comparable()
                .orElseThrow(
                        () -> new IllegalArgumentException("both before and after need laps before this can be kept"));
        NewDrive fixed = drive.fixed();
        TrialSettings settings = settings(drive);
        Verdict verdict = judgeChange.judge(session, settings);
        KeptComparison kept = new KeptComparison(
                fixed.car(),
                fixed.track(),
                fixed.lane(),
                fixed.driver(),
                fixed.conditions(),
                fixed.change(),
                verdict.decision() == Decision.SLOWER ? Side.BEFORE : Side.AFTER,
                session,
                settings,
                false);
        SavedComparison saved = keepComparison.keep(kept, DriveStore.requestToKeep(drive.id()));
        happened(drive.id(), List.of(new DriveEvent.Pressed(Press.KEPT, requestKey)));
        return saved;
    }

    private TrialSettings settings(Standing drive) {
        return TrialSettings.DEFAULT
                .withPlan(drive.fixed().plan())
                .withPrior(knownDriver.prior())
                .withHandTimed(drive.progress().handTimed());
    }
}
