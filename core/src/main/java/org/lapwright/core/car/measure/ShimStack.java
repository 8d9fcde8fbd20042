package org.lapwright.core.car.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.change.NoseChange;

/**
 * Which shims under the guide bring the front wheels to just touch.
 *
 * @param shimsMm to add, thickest first; none when it is right already
 * @param gapMm front gap after them
 * @param bladeMm depth of the blade left
 */
public record ShimStack(List<Double> shimsMm, double gapMm, double bladeMm) {
    private static final int MOST = 4;
    private static final int MOST_KINDS = 8;

    /** Copies the list. */
    public ShimStack {
        shimsMm = List.copyOf(shimsMm);
    }

    /**
     * The stack that leaves the front wheels nearest to just touching, by trying all of up to four; of two as good the one of fewer shims.
     *
     * @param car with its front gap measured
     * @param onShelfMm thicknesses at hand, any number of each
     * @return empty when the gap was not measured
     * @throws IllegalArgumentException if more than eight thicknesses are given
     */
    public static Optional<ShimStack> of(Build car, List<Double> onShelfMm) {
        if (onShelfMm.size() > MOST_KINDS) {
            throw new IllegalArgumentException(
                    "%d thicknesses are given; at most 8 are tried".formatted(onShelfMm.size()));
        }
        if (car.trim().frontGapMm().isEmpty()) {
            return Optional.empty();
        }
        List<Double> thickest =
                onShelfMm.stream().sorted(Comparator.reverseOrder()).distinct().toList();
        List<ShimStack> tried = new ArrayList<>();
        add(car, thickest, 0, new ArrayList<>(), tried);
        ShimStack best = tried.get(0);
        for (ShimStack stack : tried) {
            double nearer = Math.abs(best.gapMm) - Math.abs(stack.gapMm);
            if (nearer > 1e-9 || (nearer > -1e-9 && stack.shimsMm.size() < best.shimsMm.size())) {
                best = stack;
            }
        }
        return Optional.of(best);
    }

    private static void add(Build car, List<Double> kinds, int from, List<Double> shims, List<ShimStack> tried) {
        tried.add(new ShimStack(
                shims,
                car.trim().frontGapMm().orElseThrow(),
                car.setUp().guide().bladeDepthMm().value()));
        for (int i = from; i < kinds.size() && shims.size() < MOST; i++) {
            try {
                Build with = new NoseChange.ShimAdded(kinds.get(i)).apply(car);
                List<Double> more = new ArrayList<>(shims);
                more.add(kinds.get(i));
                add(with, kinds, i, more, tried);
            } catch (IllegalArgumentException tooMuch) {
                // Too thick a stack for this guide is no answer.
                continue;
            }
        }
    }
}
