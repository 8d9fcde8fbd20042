package org.lapwright.app.web.compare;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.lapwright.app.usecase.Figures;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.Session;
import org.lapwright.core.trial.session.Side;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * What was fixed at the first look. A verdict that is looked at again and again is only honest when the plan, the
 * margin, the certainty asked for and the belief about the driver were settled before.
 *
 * @param settings with a plan
 * @param stated whether the racer stated the plan; else it was taken from the laps at the first look
 */
public record Fixed(TrialSettings settings, boolean stated) {

    /**
     * Fixes the settings for a session looked at for the first time.
     *
     * @return empty as long as there is nothing to look at: one side only, or hardly a lap
     */
    public static Optional<Fixed> atFirstLook(Session session, TrialSettings settings) {
        if (settings.plan().isPresent()) {
            return Optional.of(new Fixed(settings, true));
        }
        return planAsDriven(session).map(plan -> new Fixed(settings.withPlan(plan), false));
    }

    private static Optional<RunPlan> planAsDriven(Session session) {
        int runs = session.runs().size();
        if (runs < 2 || runs > RunPlan.MOST_RUNS || session.runs(Side.BEFORE) == 0 || session.runs(Side.AFTER) == 0) {
            return Optional.empty();
        }
        // Rounded up: a plan of a few laps more asks for more evidence, never for less.
        int lapsPerRun = (session.laps() + runs - 1) / runs;
        if (lapsPerRun < 3) {
            return Optional.empty();
        }
        return Optional.of(new RunPlan(
                session.runs().stream().map(run -> run.side()).toList(), Math.min(lapsPerRun, RunPlan.MOST_LAPS)));
    }

    /** Reads what an earlier page fixed; empty when nothing was fixed or the fields make no sense. */
    static Optional<Fixed> from(Fields fields) {
        if (!fields.has("fixed-plan")) {
            return Optional.empty();
        }
        Options.Checked checked = new Options(
                        fields.text("fixed-plan"),
                        fields.text("fixed-margin"),
                        fields.text("fixed-sure"),
                        fields.text("fixed-hand").equals("yes"))
                .check(belief(fields.text("fixed-belief")));
        if (!checked.problems().isEmpty() || checked.settings().plan().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Fixed(checked.settings(), fields.text("fixed-stated").equals("yes")));
    }

    /** The hidden fields that carry this to the next page. */
    public List<Hidden> hidden() {
        return List.of(
                new Hidden("fixed-plan", plan().text()),
                new Hidden("fixed-stated", stated ? "yes" : "no"),
                new Hidden("fixed-margin", Figures.significant(settings.levelMargin() * 100, 6)),
                new Hidden("fixed-sure", settings.alpha() > 0.07 ? "90" : "95"),
                new Hidden("fixed-hand", settings.handTimed() ? "yes" : "no"),
                new Hidden("fixed-belief", text(settings.prior())));
    }

    private static String text(NoisePrior prior) {
        return prior.autocorrelation() + " " + prior.autocorrelationLaps() + " " + prior.runShare() + " "
                + prior.sessions();
    }

    private static NoisePrior belief(String text) {
        String[] parts = text.split(" ", -1);
        try {
            return parts.length == 4
                    ? new NoisePrior(
                            Double.parseDouble(parts[0]),
                            Double.parseDouble(parts[1]),
                            Double.parseDouble(parts[2]),
                            Integer.parseInt(parts[3]))
                    : NoisePrior.DEFAULT;
        } catch (IllegalArgumentException nonsense) {
            return NoisePrior.DEFAULT;
        }
    }

    /** The plan. */
    public RunPlan plan() {
        return settings.plan().orElseThrow();
    }

    /** The plan as people write it: {@code A B B A × 10}. */
    public String planInWords() {
        return inWords(plan());
    }

    /** A plan as people write it: {@code A B B A × 10}. */
    public static String inWords(RunPlan plan) {
        return plan.order().stream().map(side -> String.valueOf(side.letter())).collect(Collectors.joining(" "))
                + " × "
                + plan.lapsPerRun();
    }

    /**
     * A hidden field.
     *
     * @param name its name
     * @param value its value
     */
    public record Hidden(String name, String value) {}
}
