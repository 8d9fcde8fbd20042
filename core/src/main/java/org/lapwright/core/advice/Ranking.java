package org.lapwright.core.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.change.ChangeKind;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Surface;
import org.lapwright.core.track.Track;

/**
 * Ranks candidates on one lane or the mean of several, all on the same cars drawn from what is known of the car (common random
 * numbers: Glasserman and Yao 1992).
 *
 * <p>All are tried on a few of the cars drawn, the best third of each kind on twice as many, and so on (successive halving: Karnin, Koren and
 * Somekh 2013), until a few are left for all of them. A lap takes microseconds, so nothing is left out before it was driven. Not
 * safe for use by several threads.
 */
public final class Ranking {
    private static final int FIRST_DRAWS = 3;
    private static final int FEWEST_DRAWS = 8;
    private static final int FINALISTS = 24;
    private static final int EACH_KIND = 2;
    private static final int PARTNERS = 5;

    /** Getting to the track and settling in, before any change is worth anything, minutes: a choice. */
    private static final double SETTLING_MIN = 10;

    private static final double MS = 1000;

    private final List<LapSolver> lanes;
    private final Surface surface;
    private final double supplyV;
    private final int draws;
    private final long seed;
    private final Consumer<List<Runnable>> together;

    /**
     * A ranking on some lanes of a track.
     *
     * @param track the track
     * @param lanes which of its lanes; the mean of their laps counts
     * @param draws how many cars the finalists are tried on, at least 8
     * @param seed where chance begins; the same seed gives the same ranking
     */
    public Ranking(Track track, List<Lane> lanes, int draws, long seed) {
        this(track, lanes, draws, seed, tasks -> tasks.forEach(Runnable::run));
    }

    /**
     * A ranking whose lanes are driven as the caller sees fit, perhaps at once; what comes out is the same to the last digit.
     *
     * @param together runs all of the tasks it is given and returns when they are done
     */
    public Ranking(Track track, List<Lane> lanes, int draws, long seed, Consumer<List<Runnable>> together) {
        if (lanes.isEmpty() || draws < FEWEST_DRAWS) {
            throw new IllegalArgumentException(
                    "%d lanes and %d draws are given; there must be a lane, and at least 8 draws"
                            .formatted(lanes.size(), draws));
        }
        this.lanes =
                lanes.stream().map(lane -> new LapSolver(track.cells(lane))).toList();
        this.surface = track.surface();
        this.supplyV = track.power().supplyV();
        this.draws = draws;
        this.seed = seed;
        this.together = together;
    }

    /** A candidate and its laps so far, on the cars drawn. */
    private static final class Entry {
        private final Candidate candidate;
        private final Build after;
        private final double[] gainS;
        private int driven;

        Entry(Candidate candidate, Build after, int draws) {
            this.candidate = candidate;
            this.after = after;
            gainS = new double[draws];
        }

        List<ChangeKind> kinds() {
            return candidate.changes().stream().map(Change::kind).toList();
        }

        /** A car that does not get round gains nothing and loses much; it must not win by what it cannot finish. */
        double mean() {
            double sum = 0;
            for (int i = 0; i < driven; i++) {
                sum += Double.isFinite(gainS[i]) ? gainS[i] : -1;
            }
            return sum / driven;
        }
    }

    /**
     * Ranks candidates, and pairs of the best of them, by what they are worth.
     *
     * @param car as it is
     * @param candidates what could be done to it
     * @return the best of each kind and of each pair of kinds, those worth most first
     * @throws IllegalArgumentException if the car does not get round, or hardly any car drawn within its doubts makes sense
     */
    public List<Suggestion> rank(Build car, List<Candidate> candidates) {
        return rank(car, candidates, DrawnCars.of(car.setUp(), surface, draws, seed));
    }

    /**
     * The same on cars that were drawn elsewhere, such as from what laps leave.
     *
     * @param car as it is written
     * @param candidates what could be done to it
     * @param cars as it may be, all alike likely; the first must get round
     * @return as above
     * @throws IllegalArgumentException as above
     */
    public List<Suggestion> rank(Build car, List<Candidate> candidates, List<SetUp> cars) {
        double[] base = laps(cars);
        if (!Double.isFinite(base[0])) {
            throw new IllegalArgumentException("the car does not get round as it is; predict says where it is stuck");
        }
        List<Entry> entries = new ArrayList<>(entries(car, candidates, cars.size()));
        halve(entries, car, cars, base);
        List<Candidate> pairs = pairs(entries);
        List<Entry> together = new ArrayList<>(entries(car, pairs, cars.size()));
        halve(together, car, cars, base);
        entries.addAll(together);
        return entries.stream()
                .map(entry -> suggestion(car, entry))
                .sorted(Comparator.comparingDouble(Suggestion::worth).reversed())
                .toList();
    }

    private static List<Entry> entries(Build car, List<Candidate> candidates, int draws) {
        List<Entry> entries = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Possible.of(() -> candidate.apply(car)).ifPresent(after -> entries.add(new Entry(candidate, after, draws)));
        }
        return entries;
    }

    /** Pairs of the best of different kinds: two of one kind are one of another size. */
    private static List<Candidate> pairs(List<Entry> entries) {
        List<Candidate> best = new ArrayList<>();
        for (Entry entry : entries) {
            boolean known = best.stream()
                    .anyMatch(other -> other.changes().get(0).kind()
                            == entry.candidate.changes().get(0).kind());
            if (!known && entry.mean() > 0 && best.size() < PARTNERS) {
                best.add(entry.candidate);
            }
        }
        List<Candidate> pairs = new ArrayList<>();
        for (int i = 0; i < best.size(); i++) {
            for (int j = i + 1; j < best.size(); j++) {
                pairs.add(best.get(i).and(best.get(j)));
            }
        }
        return pairs;
    }

    private void halve(List<Entry> entries, Build car, List<SetUp> cars, double[] base) {
        int to = Math.min(FIRST_DRAWS, cars.size());
        while (!entries.isEmpty()) {
            drive(entries, car, cars, base, to);
            entries.sort(Comparator.comparingDouble(Entry::mean).reversed());
            keepBestOfEachKind(entries);
            if (to == cars.size()) {
                return;
            }
            to = entries.size() <= FINALISTS ? cars.size() : Math.min(cars.size(), 2 * to);
        }
    }

    /** A third of each kind, so that many sizes of one change do not crowd the others out. */
    private static void keepBestOfEachKind(List<Entry> entries) {
        Map<List<ChangeKind>, Integer> all = new HashMap<>();
        entries.forEach(entry -> all.merge(entry.kinds(), 1, Integer::sum));
        Map<List<ChangeKind>, Integer> kept = new HashMap<>();
        entries.removeIf(entry -> {
            int most = Math.max(EACH_KIND, all.getOrDefault(entry.kinds(), 0) / 3);
            return kept.merge(entry.kinds(), 1, Integer::sum) > most;
        });
    }

    /** All of them in one lot, so that the lanes can be driven side by side. */
    private void drive(List<Entry> entries, Build car, List<SetUp> cars, double[] base, int to) {
        List<SetUp> changed = new ArrayList<>();
        for (Entry entry : entries) {
            for (int i = entry.driven; i < to; i++) {
                changed.add(after(entry, car, cars.get(i)));
            }
        }
        double[] lapS = laps(changed);
        int next = 0;
        for (Entry entry : entries) {
            for (int i = entry.driven; i < to; i++) {
                entry.gainS[i] = base[i] - lapS[next++];
            }
            entry.driven = Math.max(entry.driven, to);
        }
    }

    /** The drawn car with the change; where it makes no sense of that car, of the car as written. */
    private static SetUp after(Entry entry, Build car, SetUp drawn) {
        return Possible.of(() -> entry.candidate.apply(car.with(drawn)).setUp()).orElse(entry.after.setUp());
    }

    private double[] laps(List<SetUp> cars) {
        List<ResolvedCar> resolved =
                cars.stream().map(car -> ResolvedCar.of(car, surface)).toList();
        double[][] lapS = new double[lanes.size()][resolved.size()];
        List<Runnable> tasks = new ArrayList<>();
        for (int k = 0; k < lapS.length; k++) {
            LapSolver lane = lanes.get(k);
            double[] into = lapS[k];
            tasks.add(() -> lane.lapTimes(resolved, 0, into.length, into));
        }
        together.accept(tasks);
        double[] mean = new double[resolved.size()];
        for (double[] ofLane : lapS) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += ofLane[i] / lapS.length;
            }
        }
        return mean;
    }

    private Suggestion suggestion(Build car, Entry entry) {
        DrawnGains gains = DrawnGains.of(Arrays.copyOf(entry.gainS, entry.driven));
        double gain = entry.mean();
        double minutes = entry.candidate.effortMin() + SETTLING_MIN;
        return new Suggestion(
                entry.candidate,
                entry.after,
                gain,
                gains.interval(),
                gains.chance(),
                Suggestion.Margins.of(car.setUp(), entry.after.setUp(), surface, supplyV),
                MS * gain * (gain > 0 ? gains.chance() : 1) / minutes);
    }
}
