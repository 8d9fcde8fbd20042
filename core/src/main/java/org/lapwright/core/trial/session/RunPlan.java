package org.lapwright.core.trial.session;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.lapwright.core.units.Check;

/**
 * The runs planned before the first lap: "A B B A, ten laps each".
 *
 * @param order the side of each run
 * @param lapsPerRun laps in each run
 */
public record RunPlan(List<Side> order, int lapsPerRun) {
    /** Most runs a plan may have. */
    public static final int MOST_RUNS = 40;

    /** Most laps a run of a plan may have. */
    public static final int MOST_LAPS = 500;

    private static final Pattern TEXT = Pattern.compile("([ABab][ABab ,-]*)\\s*[xX*×]\\s*(\\d{1,6})\\s*(?:laps?)?");

    /** Checks the numbers, and that both sides are planned. */
    public RunPlan {
        order = List.copyOf(order);
        Check.inRange(order.size(), 2, MOST_RUNS, "number of runs in the plan");
        Check.inRange(lapsPerRun, 3, MOST_LAPS, "laps per run in the plan");
        if (!order.contains(Side.BEFORE) || !order.contains(Side.AFTER)) {
            throw new IllegalArgumentException("the plan has runs of one side only; it needs A (before) and B (after)");
        }
    }

    /**
     * Reads a plan such as {@code ABBAAB x 10}: A is before, B is after.
     *
     * @throws IllegalArgumentException with what would be right, if the text is not a plan
     */
    public static RunPlan parse(String text) {
        Matcher plan = TEXT.matcher(text.strip());
        if (!plan.matches()) {
            throw new IllegalArgumentException(
                    "'%s' is not a run plan; write the order and the laps a run, such as ABBA x 10".formatted(text));
        }
        List<Side> order = plan.group(1)
                .chars()
                .filter(Character::isLetter)
                .mapToObj(letter -> Character.toUpperCase(letter) == 'A' ? Side.BEFORE : Side.AFTER)
                .toList();
        return new RunPlan(order, Integer.parseInt(plan.group(2)));
    }

    /** The plan as {@link #parse} reads it. */
    public String text() {
        return order.stream().map(side -> String.valueOf(side.letter())).collect(Collectors.joining()) + " x "
                + lapsPerRun;
    }
}
