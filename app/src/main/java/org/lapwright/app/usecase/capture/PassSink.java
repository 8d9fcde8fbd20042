package org.lapwright.app.usecase.capture;

import java.util.List;
import org.lapwright.core.laps.pass.Pass;

/** Takes passes from any timing source. */
public interface PassSink {
    /**
     * Takes passes in the order their source saw them. When it returns, they are as safe as this sink promises; a kept
     * run promises a synced commit. A pass that came before (same source, boot and sequence) is taken once.
     *
     * @param passes a batch, perhaps of one
     * @return whether more is wanted; after false the source may end
     * @throws org.lapwright.app.usecase.StoreException when they could not be kept; the source may offer them again
     */
    boolean accept(List<Pass> passes);
}
