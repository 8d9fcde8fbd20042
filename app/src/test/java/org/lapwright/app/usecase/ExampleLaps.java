package org.lapwright.app.usecase;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Side;

/**
 * Invents the laps of the example garage: the same seeds give the same file.
 *
 * <p>Log lap time is level + effect of the change + drift over the session + warm-up in the run + a level of the run +
 * autocorrelated scatter (AR(1) 0.3); now and then an off costs time, and once the gate misses a pass.
 */
final class ExampleLaps {
    private static final double AUTOCORRELATION = 0.3;
    private static final double RUN_SHARE = 0.1;
    private static final double WARM_UP = 0.006;

    /**
     * One comparison to invent.
     *
     * @param paceS pace before the change, s
     * @param effect of the change on log lap time
     * @param scatter of a lap before and after, share of the lap
     * @param drift over 60 laps, share of the lap
     * @param offRate chance of an off per lap before and after
     */
    private record Invented(
            long seed,
            String car,
            String lane,
            String change,
            Side stays,
            String plan,
            int daysBefore,
            double paceS,
            double effect,
            double[] scatter,
            double drift,
            double[] offRate,
            int missedGateInRun,
            Map<Integer, String> words) {}

    private static final List<Invented> STORY = List.of(
            new Invented(
                    1,
                    "Dunlin",
                    "red",
                    "Deeper guide, shimmed until the front wheels only just touch",
                    Side.AFTER,
                    "ABBAAB x 10",
                    26,
                    6.41,
                    -0.022,
                    new double[] {0.010, 0.010},
                    -0.004,
                    new double[] {0.04, 0.01},
                    0,
                    Map.of()),
            new Invented(
                    2,
                    "Greenshank",
                    "blue",
                    "5 g of ballast moved back, from under the motor to just ahead of the rear axle",
                    Side.BEFORE,
                    "ABBAAB x 10",
                    23,
                    6.58,
                    -0.003,
                    new double[] {0.012, 0.012},
                    0.002,
                    new double[] {0.02, 0.02},
                    0,
                    Map.of()),
            new Invented(
                    3,
                    "Dunlin",
                    "red",
                    "Rear tyres trued, 0.2 mm taken off",
                    Side.AFTER,
                    "ABBAAB x 10",
                    19,
                    6.28,
                    -0.017,
                    new double[] {0.009, 0.008},
                    -0.003,
                    new double[] {0.02, 0.01},
                    4,
                    Map.of()),
            new Invented(
                    4,
                    "Turnstone",
                    "red",
                    "Body freed to float",
                    Side.AFTER,
                    "ABBAAB x 10",
                    15,
                    6.52,
                    -0.002,
                    new double[] {0.016, 0.006},
                    -0.002,
                    new double[] {0.08, 0.0},
                    0,
                    Map.of()),
            new Invented(
                    5,
                    "Sanderling",
                    "blue",
                    "Magnet taken out",
                    Side.BEFORE,
                    "ABBA x 10",
                    12,
                    6.44,
                    0.034,
                    new double[] {0.010, 0.014},
                    0.0,
                    new double[] {0.01, 0.06},
                    0,
                    Map.of()),
            new Invented(
                    16,
                    "Greenshank",
                    "blue",
                    "Motor bedded down, it had moved in its mount",
                    Side.AFTER,
                    "ABBAAB x 10",
                    8,
                    6.57,
                    -0.021,
                    new double[] {0.010, 0.010},
                    -0.003,
                    new double[] {0.03, 0.01},
                    2,
                    Map.of()),
            new Invented(
                    27,
                    "Sanderling",
                    "blue",
                    "Rear tyres trued",
                    Side.AFTER,
                    "ABBAAB x 10",
                    5,
                    6.45,
                    -0.019,
                    new double[] {0.010, 0.009},
                    -0.005,
                    new double[] {0.02, 0.02},
                    0,
                    Map.of(25, "slow:the braid had lost a strand; brushed and driven on")),
            new Invented(
                    8,
                    "Whimbrel",
                    "red",
                    "Deeper guide, shimmed until the front wheels only just touch",
                    Side.AFTER,
                    "ABBAAB x 10",
                    1,
                    6.93,
                    -0.024,
                    new double[] {0.011, 0.010},
                    -0.004,
                    new double[] {0.04, 0.02},
                    0,
                    Map.of()));

    private ExampleLaps() {}

    /** Writes the file named by the only argument. */
    public static void main(String[] arguments) throws IOException {
        Files.writeString(Path.of(arguments[0]), json());
    }

    /** The file's text. */
    static String json() {
        String comparisons = STORY.stream().map(ExampleLaps::comparison).collect(Collectors.joining(",\n"));
        return """
                {
                  "about": "Invented: no such car, track or driver exists. Laps made by a seeded program, not timed.",
                  "track": "Shed loop",
                  "driver": "example driver",
                  "comparisons": [
                %s
                  ]
                }
                """.formatted(comparisons);
    }

    private static String comparison(Invented story) {
        RunPlan plan = RunPlan.parse(story.plan());
        Random random = new Random(story.seed());
        List<String> runs = new ArrayList<>();
        for (int run = 0; run < plan.order().size(); run++) {
            runs.add(run(story, plan, run, random));
        }
        return """
                    {
                      "car": "%s", "lane": "%s", "change": "%s",
                      "stays": "%s", "plan": "%s", "days_before": %d,
                      "runs": [
                %s
                      ]
                    }""".formatted(
                        story.car(),
                        story.lane(),
                        story.change(),
                        story.stays().code(),
                        plan.text(),
                        story.daysBefore(),
                        String.join(",\n", runs));
    }

    private static String run(Invented story, RunPlan plan, int run, Random random) {
        Side side = plan.order().get(run);
        double[] laps = laps(story, side, run * plan.lapsPerRun(), plan.lapsPerRun(), random);
        if (story.missedGateInRun() == run + 1) {
            // The gate misses the pass that ends the sixth lap: two laps come as one.
            laps[5] += laps[6];
            System.arraycopy(laps, 7, laps, 6, laps.length - 7);
            laps = Arrays.copyOf(laps, laps.length - 1);
        }
        String times = Arrays.stream(laps)
                .mapToObj(lap -> String.format(Locale.ROOT, "%.3f", lap))
                .collect(Collectors.joining(", "));
        return "        { \"side\": \"%s\", \"lap_s\": [%s], \"words\": [%s] }"
                .formatted(side.code(), times, words(story, run * plan.lapsPerRun(), plan.lapsPerRun()));
    }

    private static double[] laps(Invented story, Side side, int driven, int count, Random random) {
        int which = side == Side.BEFORE ? 0 : 1;
        double scatter = story.scatter()[which];
        double level = StrictMath.log(story.paceS())
                + which * story.effect()
                + StrictMath.sqrt(RUN_SHARE) * story.scatter()[0] * random.nextGaussian();
        double[] laps = new double[count];
        double wander = random.nextGaussian();
        for (int k = 0; k < count; k++) {
            double drift = story.drift() * (driven + k) / 60;
            double warmUp = WARM_UP * StrictMath.exp(-k / 3.0);
            laps[k] = StrictMath.exp(level + drift + warmUp + scatter * wander);
            if (random.nextDouble() < story.offRate()[which]) {
                laps[k] += 1.0 + 1.8 * random.nextDouble();
            }
            if (story.words().containsKey(driven + k + 1)) {
                laps[k] *= 1.045;
            }
            wander = AUTOCORRELATION * wander
                    + StrictMath.sqrt(1 - AUTOCORRELATION * AUTOCORRELATION) * random.nextGaussian();
        }
        return laps;
    }

    /** The racer's word on laps of this run; laps are numbered through the session in the story. */
    private static String words(Invented story, int driven, int count) {
        return story.words().entrySet().stream()
                .filter(word -> word.getKey() > driven && word.getKey() <= driven + count)
                .map(word -> {
                    String[] kindAndReason = word.getValue().split(":", 2);
                    return "{ \"lap\": %d, \"kind\": \"%s\", \"reason\": \"%s\" }"
                            .formatted(word.getKey() - driven, kindAndReason[0], kindAndReason[1]);
                })
                .collect(Collectors.joining(", "));
    }
}
