package org.lapwright.app.usecase.run;

import java.util.List;
import java.util.Optional;
import org.lapwright.app.usecase.capture.SoundLevel;

/**
 * How a gate on this computer is doing.
 *
 * @param choice which it is; empty where none is listened to
 * @param trouble what is wrong with it; empty where nothing is
 * @param seen passes since it was listened to
 * @param taken how many of them went into a drive
 * @param remarks what else there is to know, the newest last
 * @param levels of each lane of the sound card over the last ten seconds, the oldest first; empty for other gates
 */
public record GateState(
        Optional<GateChoice> choice,
        String trouble,
        long seen,
        long taken,
        List<String> remarks,
        List<List<SoundLevel>> levels) {
    /** None is listened to. */
    public static final GateState NONE = new GateState(Optional.empty(), "", 0, 0, List.of(), List.of());

    /** What is wrong with it, as a sentence; empty where nothing is. */
    public String troubleSentence() {
        if (trouble.isEmpty()) {
            return "";
        }
        return "The gate: " + trouble + (trouble.endsWith("?") || trouble.endsWith(".") ? "" : ".");
    }

    /** Copies the lists. */
    public GateState {
        remarks = List.copyOf(remarks);
        levels = List.copyOf(levels);
    }
}
