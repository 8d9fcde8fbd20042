package org.lapwright.app.web.bench.guided;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.web.bench.BenchPage;
import org.lapwright.app.web.view.Shell;
import org.lapwright.core.car.change.Build;
import org.lapwright.core.car.measure.GuidedMeasurement;
import org.lapwright.core.car.measure.ShimStack;

/**
 * What can be measured of a car, and which shims would do.
 *
 * @param shell around it
 * @param car name of the car
 * @param links one for each measurement
 * @param shelf thicknesses as typed
 * @param shims what is proposed, or why nothing is
 * @param log where the first of the shims is logged; empty when there is none to add
 */
public record GuidedListPage(Shell shell, String car, List<Link> links, String shelf, String shims, String log) {
    /** Copies the list. */
    public GuidedListPage {
        links = List.copyOf(links);
    }

    /**
     * A measurement.
     *
     * @param title what is measured
     * @param address where
     */
    public record Link(String title, String address) {}

    /**
     * The page.
     *
     * @param shelf thicknesses as typed
     * @param stack the proposal; empty when the gap was not measured
     * @param problem what is wrong with the thicknesses; empty otherwise
     */
    public static GuidedListPage of(
            Shell shell, String car, Build build, String shelf, Optional<ShimStack> stack, String problem) {
        List<Link> links = Arrays.stream(GuidedMeasurement.values())
                .map(what ->
                        new Link(what.title(), "/bench/guided?name=" + BenchPage.encoded(car) + "&what=" + what.code()))
                .toList();
        boolean adds = stack.filter(found -> !found.shimsMm().isEmpty()).isPresent();
        return new GuidedListPage(
                shell,
                car,
                links,
                shelf,
                problem.isEmpty() ? proposal(build, stack) : problem,
                adds
                        ? "/bench/change?name=%s&kind=shim-added&shim_mm=%s"
                                .formatted(
                                        BenchPage.encoded(car),
                                        plain(stack.orElseThrow().shimsMm().get(0)))
                        : "");
    }

    private static String proposal(Build build, Optional<ShimStack> stack) {
        if (stack.isEmpty()) {
            return "The front gap was not measured yet: log it first, with a strip of paper or a feeler under the front wheels.";
        }
        ShimStack found = stack.get();
        String now = "The front gap is %s mm now. "
                .formatted(plain(build.trim().frontGapMm().orElseThrow()));
        if (found.shimsMm().isEmpty()) {
            return now + "No stack of these brings it nearer to just touching.";
        }
        return now
                + "Add %s: the gap becomes %s mm; the blade reaches %s mm into the slot."
                        .formatted(
                                String.join(
                                        " + ",
                                        found.shimsMm().stream()
                                                .map(shim -> plain(shim) + " mm")
                                                .toList()),
                                plain(found.gapMm()),
                                plain(found.bladeMm()));
    }

    private static String plain(double number) {
        return Figures.significant(Math.round(1000 * number) / 1000.0, 4);
    }
}
