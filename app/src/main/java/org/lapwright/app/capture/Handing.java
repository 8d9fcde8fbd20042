package org.lapwright.app.capture;

import java.util.List;
import org.lapwright.app.usecase.capture.PassSink;
import org.lapwright.core.laps.pass.Pass;

/** Hands passes on, where there are some. */
final class Handing {
    private Handing() {}

    /** Says whether more is wanted. */
    static boolean on(List<Pass> passes, PassSink sink) {
        return passes.isEmpty() || sink.accept(passes);
    }
}
