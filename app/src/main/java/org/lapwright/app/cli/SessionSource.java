package org.lapwright.app.cli;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lapwright.app.files.LapReading;
import org.lapwright.app.files.ReadRun;
import org.lapwright.app.files.ReadSession;
import org.lapwright.core.trial.session.DrivenRun;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;

/** Puts runs that were read from files into the order they were driven in. */
final class SessionSource {
    private SessionSource() {}

    /**
     * A session with what was assumed about its order.
     *
     * @param session the runs in the order driven
     * @param assumption a sentence for the racer, or empty where nothing was assumed
     */
    record Ordered(Session session, String assumption) {}

    /**
     * The session that a table tells of, with its own runs and sides.
     *
     * @throws BadInput if a run has no side, or a side has no run
     */
    static Session of(ReadSession read, String file) {
        String named = LapSource.named(file);
        String where = read.name().isEmpty() ? named : named + ", session " + read.name();
        List<DrivenRun> runs = new ArrayList<>();
        for (ReadRun run : read.runs()) {
            Side side = run.side()
                    .orElseThrow(() ->
                            new BadInput(where + ": a run has no side. The column side should say before or after."));
            runs.add(new DrivenRun(side, run.run()));
        }
        return new Session(runs);
    }

    /**
     * Runs of both sides from files that hold one side each. Time stamps decide the order if every run has one; else the
     * plan does, if it has as many runs of each side; else A B B A A B … is assumed, and said.
     */
    static Ordered of(List<ReadRun> before, List<ReadRun> after, Optional<RunPlan> plan) {
        List<ReadRun> all = new ArrayList<>(before);
        all.addAll(after);
        if (all.stream().allMatch(run -> run.startedAt().isPresent())) {
            Stream<Started> started = Stream.concat(Started.all(Side.BEFORE, before), Started.all(Side.AFTER, after));
            return new Ordered(
                    new Session(started.sorted(Comparator.comparing(Started::at))
                            .map(Started::driven)
                            .toList()),
                    "");
        }
        Optional<List<Side>> planned = plan.map(RunPlan::order)
                .filter(order -> order.size() >= all.size())
                .map(order -> order.subList(0, all.size()))
                .filter(order ->
                        order.stream().filter(side -> side == Side.BEFORE).count() == before.size());
        List<Side> order = planned.orElseGet(() -> mirrored(before.size(), after.size()));
        boolean assumed = planned.isEmpty() && all.size() > 2;
        return new Ordered(
                inOrder(order, before, after),
                assumed
                        ? "The runs are taken to have been driven in the order " + letters(order)
                                + "; a column at with time stamps would tell."
                        : "");
    }

    /** A run with its time stamp; equal runs of two sides stay apart. */
    private record Started(Instant at, DrivenRun driven) {
        static Stream<Started> all(Side side, List<ReadRun> runs) {
            return runs.stream().map(run -> new Started(run.startedAt().orElseThrow(), new DrivenRun(side, run.run())));
        }
    }

    /** Says so when the runs driven are not the first ones of the plan; else empty. */
    static String besidePlan(Session session, Optional<RunPlan> plan) {
        List<Side> driven = session.runs().stream().map(DrivenRun::side).toList();
        boolean fits = plan.map(RunPlan::order)
                .map(order -> order.size() >= driven.size()
                        && order.subList(0, driven.size()).equals(driven))
                .orElse(true);
        return fits
                ? ""
                : "The runs driven do not follow the plan: %s driven, %s planned."
                        .formatted(letters(driven), letters(plan.orElseThrow().order()));
    }

    private static Session inOrder(List<Side> order, List<ReadRun> before, List<ReadRun> after) {
        List<DrivenRun> runs = new ArrayList<>();
        int b = 0;
        int a = 0;
        for (Side side : order) {
            runs.add(new DrivenRun(
                    side,
                    side == Side.BEFORE ? before.get(b++).run() : after.get(a++).run()));
        }
        return new Session(runs);
    }

    /** A B B A A B B A …, and what is left of the longer side at the end. */
    private static List<Side> mirrored(int before, int after) {
        List<Side> order = new ArrayList<>();
        int b = 0;
        int a = 0;
        while (b < before || a < after) {
            boolean wantsBefore = (order.size() + 1) / 2 % 2 == 0;
            if ((wantsBefore && b < before) || a == after) {
                order.add(Side.BEFORE);
                b++;
            } else {
                order.add(Side.AFTER);
                a++;
            }
        }
        return order;
    }

    private static String letters(List<Side> order) {
        int shown = Math.min(order.size(), RunPlan.MOST_RUNS);
        return order.subList(0, shown).stream()
                        .map(side -> String.valueOf(side.letter()))
                        .collect(Collectors.joining(" "))
                + (shown < order.size() ? " …" : "");
    }

    /**
     * All runs of a file that holds one side.
     *
     * @throws BadInput if the file itself says that its runs are of the other side, or that it holds many sessions
     */
    static List<ReadRun> runs(LapReading reading, Side given, String file) {
        boolean other = reading.runs().stream()
                .anyMatch(run -> run.side().filter(side -> side != given).isPresent());
        if (other || reading.sessions().size() > 1) {
            throw new BadInput(LapSource.named(file) + " was given with --" + given.code() + ", but "
                    + (other
                            ? "its column side names the other side as well."
                            : "its column session names more than one session.")
                    + " Give such a table with --session.");
        }
        return reading.runs();
    }
}
