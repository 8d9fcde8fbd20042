package org.lapwright.core.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The looks that a racer who peeks after every lap would have had, on pace or on consistency.
 *
 * <p>The first crossing counts and stays: that is what the boundary's promise is about. A level verdict stays unless a
 * later look crosses.
 */
final class Watch {
    private final double margin;
    private final List<Look> looks = new ArrayList<>();
    private Decision decision = Decision.MORE_LAPS;
    private OptionalInt decidedAt = OptionalInt.empty();

    /** A watch whose level margin is in log lap time; 0 for none. */
    Watch(double margin) {
        this.margin = margin;
    }

    void see(Look look) {
        looks.add(look);
        boolean crossedBefore = decision == Decision.FASTER || decision == Decision.SLOWER;
        if (look.crossed() && !crossedBefore) {
            decide(look.delta() < 0 ? Decision.FASTER : Decision.SLOWER, look);
        } else if (decision == Decision.MORE_LAPS && look.isLevel(margin)) {
            decide(Decision.LEVEL, look);
        }
    }

    /** Puts a finer look at the same laps in the place of the latest one. */
    void seeAgain(Look finer) {
        looks.remove(looks.size() - 1);
        see(finer);
    }

    private void decide(Decision found, Look look) {
        decision = found;
        decidedAt = decidedAt.isPresent() ? decidedAt : OptionalInt.of(look.lap());
    }

    Decision decision() {
        return decision;
    }

    OptionalInt decidedAt() {
        return decidedAt;
    }

    List<Look> looks() {
        return looks;
    }

    Optional<Look> latest() {
        return looks.isEmpty() ? Optional.empty() : Optional.of(looks.get(looks.size() - 1));
    }

    /** Whether the decision was reached at an earlier look and the present interval alone would not give it. */
    boolean decidedEarlierOnly() {
        return switch (decision) {
            case FASTER, SLOWER -> !latest().orElseThrow().crossed();
            case LEVEL -> !latest().orElseThrow().isLevel(margin);
            case MORE_LAPS -> false;
        };
    }
}
