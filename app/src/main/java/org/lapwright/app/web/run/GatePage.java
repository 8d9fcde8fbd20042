package org.lapwright.app.web.run;

import java.util.List;
import org.lapwright.app.usecase.Figures;
import org.lapwright.app.usecase.run.GateState;
import org.lapwright.app.web.view.Shell;

/**
 * A gate on this computer.
 *
 * @param shell around it
 * @param now how it is doing
 * @param typed what is in the form
 * @param problem what is wrong with that; empty where nothing is
 * @param lane number of the lane that the drive which is on counts; empty where none is on
 */
public record GatePage(Shell shell, Now now, Typed typed, String problem, String lane) {
    /**
     * What is in the form.
     *
     * @param kind sound or serial
     * @param port of a serial line
     * @param level least height of a pass on the sound card, percent
     */
    public record Typed(String kind, String port, String level) {}

    /**
     * How the gate is doing.
     *
     * @param seen this state, by a name
     * @param state it
     * @param levels pictures of the lanes
     */
    public record Now(String seen, GateState state, List<LevelPicture> levels) {
        /** Copies the list. */
        public Now {
            levels = List.copyOf(levels);
        }

        /** A state under a name. */
        public static Now of(String seen, GateState state) {
            return new Now(seen, state, LevelPicture.of(state.levels()));
        }

        /** Whether a gate is listened to. */
        public boolean isOn() {
            return state.choice().isPresent();
        }

        /** What it does, one line. */
        public String line() {
            if (!isOn()) {
                return "No gate is listened to.";
            }
            String name = state.choice().orElseThrow().name();
            return "Listening to %s: %s, %s of them in a drive."
                    .formatted(name, Figures.passes(state.seen()), state.taken());
        }
    }
}
