package org.lapwright.app.web.next;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.advice.BestSetUpSearches.State;
import org.lapwright.app.usecase.advice.FindBestSetUp.Answer;
import org.lapwright.app.web.bench.PlanDrawing;
import org.lapwright.app.web.bench.PlanView;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.advice.BestSteps;
import org.lapwright.core.car.SetUp;
import org.lapwright.core.numbers.SetUpNumbers;

/**
 * The best set-up of a car.
 *
 * @param shell around it
 * @param cars to choose from
 * @param tracks to choose from
 * @param typed what is asked
 * @param problems what stands in the way
 * @param search the search that was begun; empty before
 */
public record BestPage(
        Shell shell,
        List<String> cars,
        List<String> tracks,
        Typed typed,
        List<String> problems,
        Optional<Search> search) {
    private static final double WIDEST = 100;

    /** Copies the lists. */
    public BestPage {
        cars = List.copyOf(cars);
        tracks = List.copyOf(tracks);
        problems = List.copyOf(problems);
    }

    /**
     * What is asked, as typed.
     *
     * @param car its name
     * @param track its name
     * @param lane its name; empty for all lanes
     * @param leastMass of the class, g; may be empty
     * @param mostMass of the class, g; may be empty
     * @param mostWidth of the class, mm; may be empty
     * @param noMagnet whether the class allows none
     */
    public record Typed(
            String car,
            String track,
            String lane,
            String leastMass,
            String mostMass,
            String mostWidth,
            boolean noMagnet) {}

    /**
     * A search.
     *
     * @param number of it
     * @param percent of it that is over
     * @param over whether nothing more will come
     * @param ended whether somebody ended it early
     * @param problem why there is nothing; empty otherwise
     * @param found what it found, once it is over
     */
    public record Search(long number, int percent, boolean over, boolean ended, String problem, Optional<Found> found) {
        /** A search as it stands. */
        public static Search of(long number, State state, SetUp before, Typed typed) {
            return new Search(
                    number,
                    (int) (WIDEST * state.share()),
                    state.isOver(),
                    state.ended(),
                    state.problem().isEmpty()
                            ? ""
                            : state.problem().substring(0, 1).toUpperCase(Locale.ROOT)
                                    + state.problem().substring(1),
                    state.answer().map(answer -> Found.of(answer, before, typed)));
        }
    }

    /**
     * What it found.
     *
     * @param headline in a sentence
     * @param predictions laps predicted
     * @param steps what to do
     * @param before the car from above as it is
     * @param after the car from above after all steps
     */
    public record Found(String headline, String predictions, List<Step> steps, PlanView before, PlanView after) {
        /** Copies the list. */
        public Found {
            steps = List.copyOf(steps);
        }

        static Found of(Answer answer, SetUp before, Typed typed) {
            List<Step> steps = new ArrayList<>();
            double minutes = 0;
            double most = Math.max(answer.wasS() - answer.lapS(), 1e-6);
            for (int i = 0; i < answer.steps().size(); i++) {
                BestSteps.Step step = answer.steps().get(i);
                minutes += step.minutes();
                steps.add(Step.of(answer.words().get(i), step, minutes, answer.wasS(), most, typed));
            }
            SetUp after = steps.isEmpty()
                    ? before
                    : answer.steps().get(answer.steps().size() - 1).after().setUp();
            return new Found(
                    steps.isEmpty()
                            ? "%s, best lap %s: nothing that can be set on it is worth a thousandth more."
                                    .formatted(typed.car(), Figures.seconds(answer.wasS()))
                            : "%s could do %s instead of %s."
                                    .formatted(
                                            typed.car(),
                                            Figures.seconds(answer.lapS()),
                                            Figures.seconds(answer.wasS())),
                    String.valueOf(answer.predictions()),
                    steps,
                    PlanDrawing.of(before, SetUpNumbers.onBench(before)),
                    PlanDrawing.of(after, SetUpNumbers.onBench(after)));
        }
    }

    /**
     * One step.
     *
     * @param words what to do
     * @param gain what it brings by itself
     * @param soFar lap, gain and work of all steps so far
     * @param caution what to know first; empty when nothing
     * @param width of the gain so far on the scale of the page, per cent
     * @param log where it is logged
     */
    public record Step(String words, String gain, String soFar, String caution, double width, String log) {
        static Step of(String words, BestSteps.Step step, double minutes, double wasS, double most, Typed typed) {
            List<String> cautions = new ArrayList<>();
            if (!step.reversible()) {
                cautions.add("This cannot be put back.");
            }
            if (step.margins().twitchier()) {
                cautions.add("The car gives less warning from here on.");
            }
            return new Step(
                    words,
                    "%s by itself".formatted(Figures.seconds(step.gainS())),
                    "so far lap %s, %s to %s off (9 in 10), %s minutes of work"
                            .formatted(
                                    Figures.seconds(step.lapS()),
                                    Figures.fixed(step.allGainS().low(), 3),
                                    Figures.seconds(step.allGainS().high()),
                                    Figures.fixed(minutes, 0)),
                    String.join(" ", cautions),
                    Math.rint(10 * Math.max(0, WIDEST * (wasS - step.lapS()) / most)) / 10,
                    Log.address(typed.car(), typed.track(), step.change()));
        }
    }
}
