package org.lapwright.core.trial.section;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import org.lapwright.core.laps.Lap;
import org.lapwright.core.laps.Sorting;
import org.lapwright.core.laps.TimedLap;
import org.lapwright.core.laps.TimedRun;
import org.lapwright.core.laps.pass.LapSplits;
import org.lapwright.core.trial.Verdict;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * Judges each section of the lap as a lap is judged. Only sections of clean laps count, and the chance of a wrong verdict is shared
 * among the sections (Bonferroni), so that many sections fool nobody more often than one.
 */
public final class SectionJudge {
    private static final double LEAST_ALPHA = 0.001;

    private final Session session;
    private final List<List<LapSplits>> splits;
    private final int gates;

    private SectionJudge(Session session, List<List<LapSplits>> splits) {
        this.session = session;
        this.splits = splits;
        this.gates = gates(splits);
    }

    /** Greatest number of a section gate that saw the car; 0 where there are no sections. */
    public static int gates(List<List<LapSplits>> splits) {
        return splits.stream()
                .flatMap(List::stream)
                .mapToInt(LapSplits::lastGate)
                .max()
                .orElse(0);
    }

    /**
     * The sections in their order; none where no section gate saw the car, or a side has no section times.
     *
     * @param session the runs in the order driven
     * @param splits of each lap of each run
     * @param settings what was fixed beforehand for the lap
     * @param judge of laps
     * @throws IllegalArgumentException if the runs and splits are not of the same laps
     */
    public static List<JudgedSection> judge(
            Session session,
            List<List<LapSplits>> splits,
            TrialSettings settings,
            BiFunction<Session, TrialSettings, Verdict> judge) {
        for (int run = 0; run < session.runs().size(); run++) {
            if (session.runs().get(run).run().laps().size() != splits.get(run).size()) {
                throw new IllegalArgumentException("run %d has %d laps and splits of %d"
                        .formatted(
                                run + 1,
                                session.runs().get(run).run().laps().size(),
                                splits.get(run).size()));
            }
        }
        SectionJudge sections = new SectionJudge(session, splits);
        return sections.gates == 0 ? List.of() : sections.judged(settings, judge);
    }

    private List<JudgedSection> judged(TrialSettings settings, BiFunction<Session, TrialSettings, Verdict> judge) {
        double alpha = Math.max(LEAST_ALPHA, settings.alpha() / (gates + 1));
        TrialSettings shared = new TrialSettings(
                alpha, settings.levelMargin(), settings.handTimed(), settings.plan(), settings.prior());
        List<List<Lap>> sorted = sorted();
        return IntStream.rangeClosed(1, gates + 1)
                .mapToObj(section -> new JudgedSection(section, judge.apply(times(section, sorted), shared)))
                .toList();
    }

    /** The laps of each run with their kinds, sorted with those of their side. */
    private List<List<Lap>> sorted() {
        List<List<Lap>> before = new ArrayList<>(Sorting.sort(runs(Side.BEFORE)));
        List<List<Lap>> after = new ArrayList<>(Sorting.sort(runs(Side.AFTER)));
        return session.runs().stream()
                .map(run -> (run.side() == Side.BEFORE ? before : after).remove(0))
                .toList();
    }

    private List<TimedRun> runs(Side side) {
        return session.runs().stream()
                .filter(run -> run.side() == side)
                .map(DrivenRun::run)
                .toList();
    }

    /** The session of one section's times. */
    private Session times(int section, List<List<Lap>> sorted) {
        List<DrivenRun> runs = new ArrayList<>();
        for (int run = 0; run < splits.size(); run++) {
            List<TimedLap> laps = new ArrayList<>();
            for (int lap = 0; lap < splits.get(run).size(); lap++) {
                OptionalDouble seconds = splits.get(run).get(lap).sectionS(section, gates);
                if (sorted.get(run).get(lap).counts() && seconds.orElse(0) >= TimedLap.SHORTEST_S) {
                    laps.add(new TimedLap(lap + 1, seconds.getAsDouble()));
                }
            }
            runs.add(new DrivenRun(session.runs().get(run).side(), new TimedRun(laps, List.of())));
        }
        return new Session(runs);
    }
}
