package org.lapwright.app.web.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.files.garage.ScreeningFile;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.trial.screening.Screening;
import org.lapwright.core.trial.screening.Screening.Effect;
import org.lapwright.core.trial.screening.Screening.Findings;

/**
 * Several tweaks at once: begun, under way, or judged.
 *
 * @param shell around it
 * @param cars names to offer
 * @param tracks names to offer
 * @param typed what was typed to begin one
 * @param on the screening that is on; empty to begin one
 * @param laps the laps of the next run, as typed
 * @param problems what is wrong with what was typed
 * @param findings what came out; empty until all runs are driven
 */
public record ScreeningPage(
        Shell shell,
        List<String> cars,
        List<String> tracks,
        Typed typed,
        Optional<ScreeningFile> on,
        String laps,
        List<String> problems,
        Optional<Findings> findings) {
    /** Copies the lists. */
    public ScreeningPage {
        cars = List.copyOf(cars);
        tracks = List.copyOf(tracks);
        problems = List.copyOf(problems);
    }

    /**
     * What was typed to begin one.
     *
     * @param car its name
     * @param track its name
     * @param tweaks one a line
     * @param runs of the plan
     * @param lapsPerRun laps of each
     */
    public record Typed(String car, String track, String tweaks, String runs, String lapsPerRun) {}

    /**
     * A run of the plan.
     *
     * @param number from 1
     * @param todo which tweaks are on, in words
     * @param pace as driven; empty before
     * @param next whether it is the one to drive now
     */
    public record Row(int number, String todo, String pace, boolean next) {}

    /** The runs of the plan, in their order. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        ScreeningFile screening = on.orElseThrow();
        for (int run = 0; run < screening.plan().runs(); run++) {
            boolean driven = run < screening.driven().size();
            rows.add(new Row(
                    run + 1,
                    words(screening.plan(), run),
                    driven ? Figures.seconds(Screening.paceS(screening.driven().get(run))) : "",
                    run == screening.driven().size()));
        }
        return rows;
    }

    /** What to do to the car for a run. */
    static String words(Screening plan, int run) {
        List<String> on = plan.on(run);
        return on.isEmpty() ? "all off" : on.size() == plan.tweaks().size() ? "all on" : "on: " + String.join(", ", on);
    }

    /** What came out for each tweak, the largest first, a sentence each. */
    public List<String> sentences() {
        return findings.orElseThrow().effects().stream()
                .sorted((one, other) -> Double.compare(Math.abs(other.seconds()), Math.abs(one.seconds())))
                .map(ScreeningPage::sentence)
                .toList();
    }

    private static String sentence(Effect effect) {
        String size = "%s: %s s a lap %s"
                .formatted(
                        effect.tweak(),
                        Figures.fixed(Math.abs(effect.seconds()), 3),
                        effect.seconds() < 0 ? "faster" : "slower");
        return size
                + switch (effect.telling()) {
                    case LIKELY -> ". Stands out of the noise.";
                    case MAYBE ->
                        ". Perhaps: one of several passes by chance more often. Prove it by before and after.";
                    case UNTOLD -> ", which this screening cannot tell from the noise.";
                };
    }

    /** What an effect has to pass to stand out. */
    public String margin() {
        return Figures.fixed(findings.orElseThrow().margins().simultaneousMargin(), 3);
    }

    /** Its picture. */
    public HalfNormalPlot plot() {
        return HalfNormalPlot.of(findings.orElseThrow());
    }

    /** What may hide behind a tweak. */
    public String caution() {
        Screening plan = on.orElseThrow().plan();
        if (plan.runs() == Screening.LONG) {
            return "Two tweaks that only help together show a little in every other tweak.";
        }
        return plan.tweaks().size() <= Screening.FEWEST + 1
                ? "Each tweak is apart from any two others together."
                : "Eight runs for so many tweaks: two tweaks that only help together look like a third. Prove what stands out.";
    }
}
