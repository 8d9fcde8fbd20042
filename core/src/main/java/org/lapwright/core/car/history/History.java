package org.lapwright.core.car.history;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All set-ups of one car, and which of them is on the car.
 *
 * <p>Undoing is no removal: the set-up before is on the car again, and the undone one stays in the tree.
 */
public final class History {
    private final Map<Long, Step> steps = new LinkedHashMap<>();
    private final Map<Long, List<Step>> children = new LinkedHashMap<>();
    private final List<Step> first = new ArrayList<>();
    private final long present;

    /**
     * A history.
     *
     * @param inOrder the set-ups in the order in which they were made, each after the one it was made from
     * @param present number of the one on the car
     * @throws IllegalArgumentException if one is made from one that is not there before it, or none has that number
     */
    public History(List<Step> inOrder, long present) {
        for (Step step : inOrder) {
            if (step.parent().isEmpty()) {
                first.add(step);
            } else {
                long parent = step.parent().getAsLong();
                if (!steps.containsKey(parent)) {
                    throw new IllegalArgumentException(
                            "set-up %d is made from %d, which does not come before it".formatted(step.id(), parent));
                }
                children.computeIfAbsent(parent, none -> new ArrayList<>()).add(step);
            }
            if (steps.put(step.id(), step) != null) {
                throw new IllegalArgumentException("two set-ups have the number " + step.id());
            }
        }
        this.present = present;
        step(present);
    }

    /** The set-up on the car. */
    public Step present() {
        return step(present);
    }

    /** All set-ups, in the order in which they were made. */
    public List<Step> steps() {
        return List.copyOf(steps.values());
    }

    /** A set-up by its number. */
    public Optional<Step> find(long id) {
        return Optional.ofNullable(steps.get(id));
    }

    /** The one it was made from. */
    public Optional<Step> before(Step step) {
        return step.parent().isPresent() ? find(step.parent().getAsLong()) : Optional.empty();
    }

    /** Those made from it, oldest first. */
    public List<Step> madeFrom(Step step) {
        return List.copyOf(Optional.ofNullable(children.get(step.id())).orElse(List.of()));
    }

    /** From the first set-up to this one, both included. */
    public List<Step> wayTo(Step step) {
        Deque<Step> way = new ArrayDeque<>();
        Optional<Step> at = Optional.of(step);
        while (at.isPresent()) {
            way.addFirst(at.get());
            at = before(at.get());
        }
        return List.copyOf(way);
    }

    /** The last set-up that both were made from; one of the two if it is. Empty when they have no beginning in common. */
    public Optional<Step> shared(Step one, Step other) {
        List<Step> wayToOther = wayTo(other);
        Optional<Step> last = Optional.empty();
        for (Step step : wayTo(one)) {
            if (wayToOther.contains(step)) {
                last = Optional.of(step);
            }
        }
        return last;
    }

    /**
     * The tree, line by line. What was made from a set-up last goes straight on in its column; what was made from it earlier
     * are branches, each one column further in, and stand between the two.
     */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        Deque<Line> waiting = new ArrayDeque<>();
        for (int k = first.size() - 1; k >= 0; k--) {
            waiting.push(new Line(first.get(k), 0));
        }
        while (!waiting.isEmpty()) {
            Line line = waiting.pop();
            lines.add(line);
            List<Step> next = madeFrom(line.step());
            int last = next.size() - 1;
            if (last >= 0) {
                waiting.push(new Line(next.get(last), line.column()));
            }
            for (int k = last - 1; k >= 0; k--) {
                waiting.push(new Line(next.get(k), line.column() + 1));
            }
        }
        return lines;
    }

    /**
     * A line of the tree.
     *
     * @param step the set-up
     * @param column how many branches it is away from the first line
     */
    public record Line(Step step, int column) {}

    private Step step(long id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("no set-up of this car has the number " + id));
    }
}
