package org.lapwright.app.usecase.capture;

import java.io.IOException;

/** Something that times: passes come from it until it ends. */
public interface TimingSource {
    /**
     * Hands on what it sees until it ends.
     *
     * @param sink takes the passes
     * @param news takes what there is to know beside them
     * @throws IOException if it breaks
     */
    void listen(PassSink sink, SourceNews news) throws IOException;
}
