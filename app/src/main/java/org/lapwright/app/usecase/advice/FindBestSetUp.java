package org.lapwright.app.usecase.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.lapwright.core.advice.BestSetUp;
import org.lapwright.core.advice.BestSetUp.Found;
import org.lapwright.core.advice.BestSteps;
import org.lapwright.core.advice.Course;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.Change;
import org.lapwright.core.car.rules.ClassLimits;

/** What is the fastest set-up that can be made of this car, and what does each step to it bring? */
public final class FindBestSetUp {
    private static final int SEARCHES = 2;
    private static final int SEEDS_APART = 1000;

    private final int predictions;
    private final int draws;

    /**
     * Searches as long as that.
     *
     * @param predictions laps to predict in all
     * @param draws cars drawn from what is known of the one asked about, to say how sure the gain is
     */
    public FindBestSetUp(int predictions, int draws) {
        this.predictions = predictions;
        this.draws = draws;
    }

    /**
     * What is asked.
     *
     * @param car as it is
     * @param courses the lanes it is made for, at least one; the mean of their laps counts
     * @param shelf changes that the parts on the shelf allow
     * @param bounds rules of the owner's class
     */
    public record Question(Build car, List<Course> courses, List<Change> shelf, ClassLimits bounds) {
        /** Copies the lists. */
        public Question {
            courses = List.copyOf(courses);
            shelf = List.copyOf(shelf);
        }
    }

    /** Looks on while the search goes on, from any thread. */
    @FunctionalInterface
    public interface Progress {
        /**
         * Called for every set-up tried.
         *
         * @param share of the search that is over, 0 to 1
         * @return false to end it with what was found
         */
        boolean goesOn(double share);
    }

    /**
     * The answer.
     *
     * @param wasS lap of the car as it is, mean of the lanes, s
     * @param lapS lap after all steps, s
     * @param steps what to do, the best for its work first; none where nothing helps
     * @param words what each step is, in one line
     * @param predictions laps predicted
     */
    public record Answer(double wasS, double lapS, List<BestSteps.Step> steps, List<String> words, int predictions) {
        /** Copies the lists. */
        public Answer {
            steps = List.copyOf(steps);
            words = List.copyOf(words);
        }
    }

    /**
     * Answers. Two searches with chances of their own go on at once, each on a processor.
     *
     * @throws IllegalArgumentException if the car does not get round, with what would be right
     */
    public Answer answer(Question question, Progress progress) {
        AtomicInteger[] done = {new AtomicInteger(), new AtomicInteger()};
        List<Supplier<Found>> searches = Arrays.stream(new int[] {0, 1})
                .parallel()
                .mapToObj(k -> attempt(() -> new BestSetUp(
                                question.car(), question.courses(), question.shelf(), question.bounds())
                        .search(predictions / SEARCHES, 1 + (long) SEEDS_APART * k, (count, lapS) -> {
                            done[k].set(count);
                            int all = done[0].get() + done[1].get();
                            return progress.goesOn(Math.min(1, (double) all / predictions));
                        })))
                .toList();
        List<Found> found = searches.stream().map(Supplier::get).toList();
        Found best = found.stream()
                .min(Comparator.comparingDouble(Found::lapS)
                        .thenComparingInt(each -> each.changes().size()))
                .orElseThrow();
        List<BestSteps.Step> steps =
                BestSteps.of(question.car(), best.changes(), question.courses(), question.bounds(), draws, 1);
        double lapS =
                steps.isEmpty() ? best.wasS() : steps.get(steps.size() - 1).lapS();
        return new Answer(
                best.wasS(),
                lapS,
                steps,
                words(question.car(), steps),
                found.stream().mapToInt(Found::predictions).sum());
    }

    /** What came of a search, to be told on the thread that asked: a refusal would come from another one in other words. */
    private static Supplier<Found> attempt(Supplier<Found> search) {
        try {
            Found found = search.get();
            return () -> found;
        } catch (IllegalArgumentException refused) {
            return () -> {
                throw refused;
            };
        }
    }

    private static List<String> words(Build car, List<BestSteps.Step> steps) {
        List<String> words = new ArrayList<>();
        Build before = car;
        for (BestSteps.Step step : steps) {
            words.add(step.change().sentence(before));
            before = step.after();
        }
        return words;
    }
}
