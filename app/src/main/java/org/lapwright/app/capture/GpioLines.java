package org.lapwright.app.capture;

import java.util.Optional;
import org.lapwright.app.capture.WireLine.Edge;
import org.lapwright.app.usecase.capture.SourceNews;
import org.lapwright.core.laps.pass.Pass;
import org.lapwright.core.laps.pass.PassClock;
import org.lapwright.core.laps.pass.PassStamp;

/**
 * Passes from what {@code gpiomon} prints of one input, stamped by the kernel. The kind of edge that came first counts: both would
 * make a car that stops in the beam two. The input that came first is lane 1.
 */
final class GpioLines {
    private String input = "";
    private boolean rising;
    private long sequence;
    private long lastNs;
    private int steps;

    /** The pass of an edge; empty where it is the other kind, or of another input. */
    Optional<Pass> pass(String source, Edge edge, long arrivalNs, SourceNews news) {
        if (input.isEmpty()) {
            input = edge.input();
            rising = edge.rising();
            lastNs = edge.timeNs();
        }
        if (!input.equals(edge.input())) {
            news.unreadable("input %s; only the first one, %s, is listened to".formatted(edge.input(), input));
            return Optional.empty();
        }
        if (edge.timeNs() < lastNs) {
            steps++;
            news.stepped();
        }
        lastNs = edge.timeNs();
        return edge.rising() == rising
                ? Optional.of(new Pass(
                        source,
                        "gpio " + steps,
                        sequence++,
                        1,
                        0,
                        new PassStamp(PassClock.KERNEL, edge.timeNs(), arrivalNs, 0)))
                : Optional.empty();
    }
}
