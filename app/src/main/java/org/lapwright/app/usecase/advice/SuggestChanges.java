package org.lapwright.app.usecase.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.advice.Candidate;
import org.lapwright.core.advice.Candidates;
import org.lapwright.core.advice.Proof;
import org.lapwright.core.advice.Ranking;
import org.lapwright.core.advice.Reason;
import org.lapwright.core.advice.Sensitivity;
import org.lapwright.core.advice.Suggestion;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.rules.ClassLimits;
import org.lapwright.core.dynamics.LapSolver;
import org.lapwright.core.dynamics.ResolvedCar;
import org.lapwright.core.numbers.SetUpNumbers;
import org.lapwright.core.prediction.LapForecaster;
import org.lapwright.core.track.Lane;
import org.lapwright.core.track.Track;

/** Which change is worth trying next, why, and how many laps would prove it? */
public final class SuggestChanges {
    private static final double WORTH_S = 0.001;
    private static final double SURE = 0.5;
    private static final double TELLING = 0.02;
    private static final double MORE = 1.1;
    private static final double LEVEL = 0.9;

    private final int draws;

    /** On so many cars drawn from what is known of the one asked about. */
    public SuggestChanges(int draws) {
        this.draws = draws;
    }

    /**
     * What is asked.
     *
     * @param car as it is
     * @param track the track
     * @param lanes which of its lanes, at least one
     * @param shelf changes that the parts on the shelf allow
     * @param bounds rules of the owner's class
     * @param proof how the driver's laps scatter
     * @param learned cars as its laps leave it, all alike likely; empty when only the numbers of its file are known
     */
    public record Question(
            Build car,
            Track track,
            List<Lane> lanes,
            List<Change> shelf,
            ClassLimits bounds,
            Proof proof,
            List<SetUp> learned) {
        /** Copies the lists. */
        public Question {
            lanes = List.copyOf(lanes);
            shelf = List.copyOf(shelf);
            learned = List.copyOf(learned);
        }

        /** The same on cars as laps leave it. */
        public Question on(List<SetUp> cars) {
            return new Question(car, track, lanes, shelf, bounds, proof, cars);
        }

        /** The same within the rules of a class. */
        public Question within(ClassLimits rules) {
            return new Question(car, track, lanes, shelf, rules, proof, learned);
        }

        /** About all lanes of a track, with nothing on the shelf and a driver of whom nothing is known. */
        public static Question of(Build car, Track track) {
            return new Question(car, track, track.lanes(), List.of(), ClassLimits.NONE, Proof.USUAL, List.of());
        }
    }

    /**
     * One piece of advice.
     *
     * @param suggestion what to do, and what it would bring
     * @param words what to do, in one line
     * @param why one sentence of physics, from the two laps compared
     * @param caution what gets harder with it; empty when nothing does
     * @param lapsToProve laps on both sides together; empty when it cannot be proved in an evening
     */
    public record Advice(
            Suggestion suggestion, String words, String why, Optional<String> caution, OptionalInt lapsToProve) {}

    /**
     * The advice.
     *
     * @param lapS the best lap of the car as it is, mean of the lanes, s
     * @param worthwhile worth trying, the best first
     * @param tried how many changes were tried
     */
    public record Answer(double lapS, List<Advice> worthwhile, int tried) {
        /** Copies the list. */
        public Answer {
            worthwhile = List.copyOf(worthwhile);
        }
    }

    /**
     * Answers.
     *
     * @throws IllegalArgumentException if the car does not get round, with what would be right
     */
    public Answer answer(Question question) {
        Build car = question.car();
        List<Candidate> candidates = Candidates.of(car, question.shelf(), question.bounds());
        Ranking ranking = new Ranking(question.track(), question.lanes(), draws, 1, SuggestChanges::atOnce);
        List<Suggestion> ranked = question.learned().isEmpty()
                ? ranking.rank(car, candidates)
                : ranking.rank(car, candidates, spread(question.learned()));
        double lapS = question.lanes().stream()
                .mapToDouble(lane -> new LapSolver(question.track().cells(lane))
                        .solve(ResolvedCar.of(car.setUp(), question.track().surface()))
                        .lapS())
                .average()
                .orElseThrow();
        List<Advice> advice = new ArrayList<>();
        for (Suggestion suggestion : ranked) {
            if (isWorthwhile(suggestion) && isNews(advice, suggestion) && isMoreThanItsParts(ranked, suggestion)) {
                advice.add(advice(question, suggestion, lapS));
            }
        }
        return new Answer(lapS, advice, candidates.size());
    }

    /**
     * What one unit more of each thing does on the first of the lanes, the most first.
     *
     * @throws IllegalArgumentException if hardly any car within the doubts makes sense
     */
    public List<Sensitivity> sensitivities(Question question) {
        LapForecaster.Settings settings = new LapForecaster.Settings(LEVEL, Math.max(2, draws / 4), 1);
        return Sensitivity.of(
                        question.car().setUp(),
                        question.track(),
                        question.lanes().get(0),
                        settings)
                .stream()
                .sorted(Comparator.comparingDouble((Sensitivity found) -> -Math.abs(found.lapS())))
                .toList();
    }

    /** As many as are asked for, evenly from all. */
    private List<SetUp> spread(List<SetUp> learned) {
        int count = Math.min(draws, learned.size());
        return IntStream.range(0, count)
                .mapToObj(i -> learned.get(i * learned.size() / count))
                .toList();
    }

    /** On all processors. */
    private static void atOnce(List<Runnable> tasks) {
        tasks.parallelStream().forEach(Runnable::run);
    }

    /** Whether it is worth the evening: likely faster, by more than nothing. */
    private static boolean isWorthwhile(Suggestion suggestion) {
        return suggestion.gainS() > WORTH_S && suggestion.chance() > SURE;
    }

    /** Of changes of the same kinds only the best is told: the next best is the same at another size. */
    private static boolean isNews(List<Advice> told, Suggestion suggestion) {
        return told.stream().noneMatch(other -> kinds(other.suggestion()).equals(kinds(suggestion)));
    }

    /** Two changes together are told only where together they bring clearly more than the better of them alone. */
    private static boolean isMoreThanItsParts(List<Suggestion> ranked, Suggestion suggestion) {
        if (suggestion.candidate().changes().size() == 1) {
            return true;
        }
        double best = ranked.stream()
                .filter(other -> other.candidate().changes().size() == 1)
                .filter(other -> suggestion.candidate().changes().stream()
                        .anyMatch(change -> change.kind()
                                == other.candidate().changes().get(0).kind()))
                .mapToDouble(Suggestion::gainS)
                .max()
                .orElse(0);
        return suggestion.gainS() > MORE * Math.max(0, best) + WORTH_S;
    }

    private static List<String> kinds(Suggestion suggestion) {
        return suggestion.candidate().changes().stream()
                .map(change -> change.kind().code())
                .sorted(Comparator.naturalOrder())
                .toList();
    }

    private static Advice advice(Question question, Suggestion suggestion, double lapS) {
        Candidate candidate = suggestion.candidate();
        return new Advice(
                suggestion,
                candidate.sentence(question.car()),
                why(question, suggestion),
                caution(question, suggestion),
                question.proof().laps(suggestion.gainS(), lapS));
    }

    private static String why(Question question, Suggestion suggestion) {
        Lane lane = question.lanes().get(0);
        Optional<Reason> reason =
                Reason.of(question.car().setUp(), suggestion.after().setUp(), question.track(), lane);
        String where = reason.flatMap(SuggestChanges::where).orElse("Over the whole lap it gains a little everywhere");
        return where + ": " + numbers(question, suggestion) + ".";
    }

    private static Optional<String> where(Reason reason) {
        return reason.most().map(limit -> {
            String gained = Figures.fixed(1000 * reason.gainS().getOrDefault(limit, 0.0), 0) + " ms";
            return switch (limit) {
                case SLIDE -> gained + " come where the rear tyres are at their limit";
                case POWER -> gained + " come where the motor gives all it has";
                case BRAKE -> gained + " come where the motor brakes as hard as it can";
                case NOSE -> gained + " come where the guide would lift";
                case TIP -> gained + " come where the car would tip";
            };
        });
    }

    /** The numbers that move most, as what the change does to the car. */
    private static String numbers(Question question, Suggestion suggestion) {
        double volts = question.track().power().supplyV();
        SetUpNumbers was =
                SetUpNumbers.of(question.car().setUp(), question.track().surface(), volts);
        SetUpNumbers is =
                SetUpNumbers.of(suggestion.after().setUp(), question.track().surface(), volts);
        List<String> said = new ArrayList<>();
        say(said, "load on the rear", was.standing().rearLoadG(), is.standing().rearLoadG(), "g", 1);
        say(
                said,
                "slides at",
                was.holding().slideG().orElse(0),
                is.holding().slideG().orElse(0),
                "g",
                2);
        say(said, "tips at", was.holding().tipG(), is.holding().tipG(), "g", 2);
        say(
                said,
                "way per motor turn",
                was.gearing().mmPerMotorTurn(),
                is.gearing().mmPerMotorTurn(),
                "mm",
                2);
        say(said, "weight", was.standing().totalG(), is.standing().totalG(), "g", 1);
        say(
                said,
                "load on the guide",
                was.standing().guideLoadG(),
                is.standing().guideLoadG(),
                "g",
                1);
        return said.isEmpty()
                ? "its numbers hardly move"
                : String.join(", ", said.subList(0, Math.min(3, said.size())));
    }

    private static void say(List<String> said, String what, double was, double is, String unit, int decimals) {
        String before = Figures.fixed(was, decimals);
        String after = Figures.fixed(is, decimals);
        if (Math.abs(is - was) > TELLING * Math.abs(was) && !before.equals(after)) {
            said.add("%s %s instead of %s %s".formatted(what, after, before, unit));
        }
    }

    /** What gets harder, and where the model is known to flatter. */
    private static Optional<String> caution(Question question, Suggestion suggestion) {
        String said = Stream.of(twitchier(suggestion), flattered(question, suggestion))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
        return said.isEmpty() ? Optional.empty() : Optional.of(said);
    }

    /** Grip that falls a little with load is left out of the model, which matters where the tyres get to carry more. */
    private static Optional<String> flattered(Question question, Suggestion suggestion) {
        double was = SetUpNumbers.onBench(question.car().setUp()).standing().rearLoadG();
        double is = SetUpNumbers.onBench(suggestion.after().setUp()).standing().rearLoadG();
        return is > (1 + TELLING) * was
                ? Optional.of("The model lets grip keep up with load; real tyres give a little less of it"
                        + " (common practice, no source), so this may bring less than it says.")
                : Optional.empty();
    }

    private static Optional<String> twitchier(Suggestion suggestion) {
        if (!suggestion.margins().twitchier()) {
            return Optional.empty();
        }
        Suggestion.Margins margins = suggestion.margins();
        boolean tips = margins.tipAfterG() < margins.tipBeforeG();
        return Optional.of(
                margins.noseAfterG() < margins.noseBeforeG() && !tips
                        ? "Faster but twitchier: the nose gets lighter."
                        : "Faster but twitchier: it tips sooner, with less warning.");
    }
}
