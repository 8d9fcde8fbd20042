package org.lapwright.app.web.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.trial.session.NoisePrior;
import org.lapwright.core.trial.session.RunPlan;
import org.lapwright.core.trial.session.TrialSettings;

/**
 * The options as typed, before they are believed.
 *
 * @param plan the runs planned, such as "ABBA x 10"; may be empty
 * @param marginPercent the difference that does not matter, % of a lap
 * @param sure how sure, 95 or 90 %
 * @param handTimed whether a person pressed a button
 */
public record Options(String plan, String marginPercent, String sure, boolean handTimed) {
    /** As most racers want it. */
    public static final Options USUAL = new Options("", "0.3", "95", false);

    /** What the options amount to for a driver of whom this much is known, or what is wrong with them. */
    public Checked check(NoisePrior prior) {
        List<String> problems = new ArrayList<>();
        Optional<RunPlan> planned = Optional.empty();
        double margin = TrialSettings.DEFAULT.levelMargin();
        try {
            planned = plan.isBlank() ? Optional.empty() : Optional.of(RunPlan.parse(plan));
        } catch (IllegalArgumentException notAPlan) {
            problems.add("Plan: " + notAPlan.getMessage() + ".");
        }
        try {
            margin = Double.parseDouble(marginPercent.replace("%", "").strip().replace(',', '.')) / 100;
        } catch (NumberFormatException notANumber) {
            margin = -1;
        }
        if (!(margin >= 0 && margin <= 0.1)) {
            problems.add("Margin: '%s' is not a percentage from 0 to 10, such as 0.3.".formatted(marginPercent));
            margin = TrialSettings.DEFAULT.levelMargin();
        }
        double alpha = sure.equals("90") ? 0.10 : 0.05;
        return new Checked(new TrialSettings(alpha, margin, handTimed, planned, prior), problems);
    }

    /**
     * Checked options.
     *
     * @param settings what to judge by
     * @param problems sentences on what could not be taken; the usual value stands in for it
     */
    public record Checked(TrialSettings settings, List<String> problems) {
        /** Copies the list. */
        public Checked {
            problems = List.copyOf(problems);
        }
    }
}
